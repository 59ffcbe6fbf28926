import { useRef, useState } from 'react'
import { base64Of } from '../parts/base64.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'

/** Bytes that are sent at once: a million letters of base64, which any shell takes. */
const AT_ONCE = 786_432

/** Brings a workroom that was taken along into this one, which holds nothing yet. */
export function BringAlong({ onBrought }: { onBrought: () => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [said, setSaid] = useState('')
  const file = useRef<HTMLInputElement>(null)
  const percent = (done: number) => ({ percent: Math.round(100 * done) })
  const bring = (chosen: File) =>
    doing
      .run(async () => {
        for (let at = 0; at < chosen.size; at += AT_ONCE) {
          setSaid(tell('take.bring.sending', percent(at / chosen.size)))
          await workroom.ask('store.send', { at, data: await base64Of(chosen.slice(at, at + AT_ONCE)) })
        }
        await workroom.ask('store.import', {}, ({ done }) =>
          setSaid(tell('take.bring.taking', percent(done))),
        )
      })
      .then((done) => {
        setSaid(done ? tell('take.bring.done') : '')
        if (done) onBrought()
      })
  return (
    <section className="sheet stack">
      <h2>{tell('take.bring')}</h2>
      <p>{tell('take.bring.about')}</p>
      <input
        ref={file}
        type="file"
        hidden
        accept=".zip,application/zip"
        onChange={(event) => {
          const [chosen] = event.target.files ?? []
          event.target.value = ''
          if (chosen !== undefined) void bring(chosen)
        }}
      />
      <div>
        <Button busy={doing.busy} onPress={() => file.current?.click()}>
          {tell('take.bring.choose')}
        </Button>
      </div>
      <p role="status">{said}</p>
      <Refusal sentence={doing.refused?.message} />
    </section>
  )
}
