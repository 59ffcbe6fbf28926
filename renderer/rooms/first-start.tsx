import { useState } from 'react'
import { WORKROOM_UNITS, type WorkroomUnit } from '../../core/words/units.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { BringAlong } from '../settings/take-out-bring.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'

/** The first start: a workroom of her own, or a look round the sample, which is another file altogether. */
export function FirstStart({ onBegun }: { onBegun: () => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { busy, refused, run } = useDoing()
  const [name, setName] = useState('')
  const [unit, setUnit] = useState<string>('cm')
  const begin = () =>
    run(() =>
      workroom.ask('settings.set', {
        revision: 0,
        changes: { letterhead: { name, unit: unit as WorkroomUnit } },
      }),
    ).then((done) => done && onBegun())
  const look = () => run(() => workroom.bridge.enter('sample')).then((done) => done && onBegun())
  return (
    <main className="narrow stack">
      <h1>{tell('screen.first.title')}</h1>
      <p>{tell('screen.first.about')}</p>
      <form
        className="sheet stack"
        onSubmit={(event) => {
          event.preventDefault()
          void begin()
        }}
      >
        <h2>{tell('screen.first.own')}</h2>
        <TextField
          label={tell('screen.first.name')}
          value={name}
          onChange={setName}
          required
          wrong={refused?.message}
        />
        <SelectField
          label={tell('screen.first.unit')}
          value={unit}
          onChange={setUnit}
          options={WORKROOM_UNITS.map((id) => ({ id, name: tell(`screen.unit.${id}`) }))}
        />
        <div>
          <Button main type="submit" busy={busy}>
            {tell('screen.first.begin')}
          </Button>
        </div>
      </form>
      <section className="sheet stack">
        <h2>{tell('screen.first.sample')}</h2>
        <p>{tell('screen.first.sampleAbout')}</p>
        <div>
          <Button busy={busy} onPress={() => void look()}>
            {tell('screen.first.look')}
          </Button>
        </div>
      </section>
      <BringAlong onBrought={onBegun} />
      <Refusal sentence={refused?.field === undefined ? refused?.message : undefined} />
    </main>
  )
}
