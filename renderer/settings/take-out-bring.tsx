import { useRef, useState } from 'react'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { sendFile } from '../parts/send-file.ts'
import { useDoing, useHouse, useTell } from '../workroom.tsx'

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
        await sendFile(workroom, chosen, (done) => setSaid(tell('take.bring.sending', percent(done))))
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
