import { useId, useState } from 'react'
import { Button } from '../parts/button.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'

/** Reads a measuring form that came back by letter, and hands over the sizes in it. */
export function FormReader({ onRead }: { onRead: (measures: Record<string, string>) => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const field = useId()
  const [text, setText] = useHalfFilled('form', '')
  const [unread, setUnread] = useState<string[]>([])
  const doing = useDoing()
  const read = () =>
    doing.run(async () => {
      const found = await workroom.ask('measuringForm.read', { text })
      setUnread(found.unread)
      onRead(found.measures)
    })
  return (
    <details>
      <summary>{tell('screen.client.read')}</summary>
      <div className="stack">
        <div className="field">
          <label htmlFor={field}>{tell('screen.client.read.paste')}</label>
          <textarea id={field} rows={6} value={text} onChange={(event) => setText(event.target.value)} />
        </div>
        <Refusal sentence={doing.refused?.message} />
        {unread.length === 0 ? null : (
          <p className="refusal">{tell('screen.client.read.unread', { lines: unread.join(' · ') })}</p>
        )}
        <div>
          <Button onPress={() => void read()} busy={doing.busy}>
            {tell('screen.client.read.take')}
          </Button>
        </div>
      </div>
    </details>
  )
}
