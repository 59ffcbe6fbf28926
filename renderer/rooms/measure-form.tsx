import { useState } from 'react'
import { printLengthBare } from '../../core/words/length.ts'
import { WORKROOM_UNITS, type WorkroomUnit } from '../../core/words/units.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

type Props = {
  clientId: string
  /** The latest set, from which a new one starts. */
  from: OutputOf<'client.get'>['measurementSets'][number] | undefined
  onTaken: () => void
}

/** A taking of measures: one line a measure, in the order one takes them, in whichever unit the tape has. */
export function MeasureForm({ clientId, from, onTaken }: Props) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { value } = useQuery('measures.list', {})
  const { value: construction } = useQuery('construction.describe', { id: 'goredUndertunic' })
  const [unit, setUnit] = useState<WorkroomUnit>(reader.unit)
  const [typed, setTyped] = useState<Record<string, string>>(() => written(from, reader.unit, reader.locale))
  const doing = useDoing()
  /** Needed for a tunic, by itself or as one of two. */
  const labelled = (id: string, name: string) => {
    const group = construction?.required.find((ids) => (ids as string[]).includes(id))
    if (group === undefined) return name
    const other = group.find((one) => one !== id)
    return other === undefined
      ? tell('screen.measure.needed', { name })
      : tell('screen.measure.neededOr', { name, other: tell(`measure.name.${other}`) })
  }
  const change = (to: string) => {
    const next = to as WorkroomUnit
    // What was carried over is written anew; what was typed since stays as it was typed.
    const [was, now] = [written(from, unit, reader.locale), written(from, next, reader.locale)]
    setTyped(
      Object.fromEntries(Object.entries(typed).map(([id, text]) => [id, text === was[id] ? now[id]! : text])),
    )
    setUnit(next)
  }
  const take = () =>
    doing
      .run(() =>
        workroom.ask('measurementSet.add', {
          clientId,
          unit,
          measures: Object.fromEntries(Object.entries(typed).filter(([, text]) => text.trim() !== '')),
          ...(from === undefined ? {} : { supersedes: from.id }),
        }),
      )
      .then((done) => done && onTaken())
  const wrongAt = doing.refused?.field?.replace('measures.', '')
  return (
    <form
      className="sheet stack"
      onSubmit={(event) => {
        event.preventDefault()
        void take()
      }}
    >
      <div className="between">
        <h2>{tell(from === undefined ? 'screen.measure.first' : 'screen.measure.again')}</h2>
        <SelectField
          label={tell('screen.first.unit')}
          value={unit}
          onChange={change}
          options={WORKROOM_UNITS.map((id) => ({ id, name: tell(`screen.unit.${id}`) }))}
        />
      </div>
      <p className="quiet">{tell('screen.measure.about')}</p>
      <div className="columns">
        {value?.measures.map(({ id, name, how }) => (
          <TextField
            key={id}
            label={labelled(id, name)}
            value={typed[id] ?? ''}
            onChange={(text) => setTyped((before) => ({ ...before, [id]: text }))}
            help={how}
            wrong={wrongAt === id ? doing.refused?.message : undefined}
          />
        ))}
      </div>
      <Refusal sentence={doing.refused?.message} />
      <div>
        <Button main type="submit" busy={doing.busy}>
          {tell('screen.measure.keep')}
        </Button>
      </div>
    </form>
  )
}

/** A set as it would be typed. */
const written = (from: Props['from'], unit: WorkroomUnit, locale: string): Record<string, string> =>
  Object.fromEntries(
    Object.entries(from?.measures ?? {}).map(([id, { mm }]) => [id, printLengthBare(mm, unit, locale)]),
  )
