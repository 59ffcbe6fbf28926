import { useState } from 'react'
import { Button } from '../parts/button.tsx'
import { TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { saved } from '../parts/saved.ts'
import { goTo } from '../router.ts'
import { useDoing, useHouse, useTell } from '../workroom.tsx'

type Props = { id: string; name: string }

/** The measuring sheet to send her, what is kept of her to give out, and the way out of the book. */
export function ClientPapers({ id, name }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [again, setAgain] = useState('')
  const print = () =>
    doing.run(async () => {
      const { document } = await workroom.ask('measuringSheet.print', { clientId: id })
      const shown = await workroom.bridge.paper(document.id)
      if (!shown.ok) throw new Error(shown.error.message)
    })
  const form = () =>
    doing.run(async () => {
      const { name: file, text } = await workroom.ask('measuringForm.write', {})
      // Spreadsheets take it for UTF-8 by its mark alone.
      saved(file, `\uFEFF${text}`, 'text/csv')
    })
  const giveOut = () =>
    doing.run(async () => {
      const kept = await workroom.ask('client.export', { id })
      saved(`${name}.json`, JSON.stringify(kept, null, 2), 'application/json')
    })
  const forget = () =>
    doing.run(async () => {
      await workroom.ask('client.forget', { id, name: again })
      goTo('clients')
    })
  return (
    <section className="sheet stack">
      <div className="lay-tools">
        <Button onPress={() => void print()} busy={doing.busy}>
          {tell('screen.client.sheet')}
        </Button>
        <Button onPress={() => void form()} busy={doing.busy}>
          {tell('screen.client.form')}
        </Button>
        <Button onPress={() => void giveOut()} busy={doing.busy}>
          {tell('screen.client.export')}
        </Button>
      </div>
      <Refusal sentence={doing.refused?.message} />
      <details>
        <summary>{tell('screen.client.forget')}</summary>
        <div className="stack">
          <p>{tell('screen.client.forget.about')}</p>
          <TextField label={tell('screen.client.forget.name')} value={again} onChange={setAgain} />
          <div>
            <Button onPress={() => void forget()} busy={doing.busy || again.trim() !== name}>
              {tell('screen.client.forget.now')}
            </Button>
          </div>
        </div>
      </details>
    </section>
  )
}
