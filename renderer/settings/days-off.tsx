import type { FormEvent } from 'react'
import { printDate } from '../../core/words/dates.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import { type Absence, isUnentered, type Person } from './person.ts'

type Props = { people: readonly Person[]; away: readonly Absence[]; onChanged: () => void }

/** Days without work, of one or of everyone: those written down, and the way to write down more. */
export function DaysOff({ people, away, onChanged }: Props) {
  const tell = useTell()
  return (
    <>
      <h3>{tell('people.away')}</h3>
      {away.length === 0 ? (
        <p className="quiet">{tell('people.away.none')}</p>
      ) : (
        <ul className="entries">
          {away.map((one) => (
            <Line key={one.id} one={one} people={people} onChanged={onChanged} />
          ))}
        </ul>
      )}
      <AwayForm people={people} onChanged={onChanged} />
    </>
  )
}

type LineProps = { one: Absence; people: readonly Person[]; onChanged: () => void }

function Line({ one, people, onChanged }: LineProps) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const { id, personId, from, to, note } = one
  const days =
    from === to
      ? printDate(from, reader.locale)
      : tell('people.away.line', { from: { date: from }, to: { date: to } })
  const who =
    personId === null ? tell('people.away.all') : people.find((person) => person.id === personId)?.name
  const remove = () =>
    doing.run(() => workroom.ask('away.remove', { id })).then((done) => done && onChanged())
  // Days off of somebody who was taken off meanwhile concern nobody.
  if (who === undefined) return null
  return (
    <li className="person">
      <p>
        <strong>{days}</strong> {[who, note].filter((text) => text !== '').join(' · ')}
      </p>
      <Button busy={doing.busy} label={tell('people.away.removeFor', { days })} onPress={() => void remove()}>
        {tell('people.away.remove')}
      </Button>
      <Refusal sentence={doing.refused?.message} />
    </li>
  )
}

/** Stands for everyone in the choice of who is off. */
const ALL = ''

function AwayForm({ people, onChanged }: Omit<Props, 'away'>) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [who, setWho] = useHalfFilled('who', ALL)
  const [from, setFrom] = useHalfFilled('from', '')
  const [to, setTo] = useHalfFilled('to', '')
  const [note, setNote] = useHalfFilled('note', '')
  const write = async (event: FormEvent) => {
    event.preventDefault()
    const written = await doing.run(() => {
      if (from === '' || to === '') throw new Error(tell('people.away.noDay'))
      return workroom.ask('away.add', { personId: who === ALL ? null : who, from, to, note })
    })
    if (!written) return
    setFrom('')
    setTo('')
    setNote('')
    onChanged()
  }
  return (
    <form className="stack" aria-label={tell('people.away.add')} onSubmit={(event) => void write(event)}>
      <div className="columns">
        <SelectField
          label={tell('people.away.who')}
          value={who}
          onChange={setWho}
          options={[
            { id: ALL, name: tell('people.away.all') },
            ...people.filter((person) => !isUnentered(person)),
          ]}
        />
        <TextField
          label={tell('people.away.from')}
          type="date"
          value={from}
          onChange={(day) => {
            setFrom(day)
            // A single day off is the same day twice.
            if (to === '' || to < day) setTo(day)
          }}
        />
        <TextField label={tell('people.away.to')} type="date" value={to} onChange={setTo} />
        <TextField label={tell('people.away.note')} value={note} onChange={setNote} />
      </div>
      <Refusal sentence={doing.refused?.message} />
      <div>
        <Button type="submit" busy={doing.busy}>
          {tell('people.away.add')}
        </Button>
      </div>
    </form>
  )
}
