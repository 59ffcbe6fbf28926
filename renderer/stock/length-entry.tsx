import { printLength } from '../../core/words/length.ts'
import { ActForm, Acts } from '../parts/acts.tsx'
import { TextField } from '../parts/field.tsx'
import { todayHere } from '../parts/today.ts'
import { useTyped } from '../parts/typed.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { Length } from './lengths.tsx'

type Props = { length: Length; garmentOf: (id: string) => string; onChanged: () => void }

/** One length: where it is, how much of it is free, for whom the rest is, and what one does with it. */
export function LengthEntry({ length: one, garmentOf, onChanged }: Props) {
  const tell = useTell()
  const { cloth, length, width, place, washed, free, arrivedDay, expectedDay, reservedFor, usedBy } = one
  const here = arrivedDay !== null
  const size = tell('life.stock.size', { length: { mm: length }, width: { mm: width } })
  const facts = [
    ...(place === '' ? [] : [tell('life.stock.at', { place })]),
    tell(washed ? 'life.stock.washed' : 'life.stock.unwashed'),
    ...(here
      ? []
      : [
          expectedDay === null
            ? tell('life.stock.onItsWay')
            : tell('life.stock.onItsWayUntil', { day: { date: expectedDay } }),
        ]),
  ]
  const act = (id: keyof typeof FORMS) => {
    const words = tell(`life.stock.${id}`)
    const label = tell('life.doing', { doing: words, what: `${cloth}, ${size}` })
    const Form = FORMS[id]
    return {
      ...{ id, words, label },
      form: (close: () => void) => <Form {...{ length: one, label, close }} onDone={onChanged} />,
    }
  }
  return (
    <li>
      <div className="length">
        <p>
          <strong>{cloth}</strong>
          <br />
          <span className="quiet">{facts.join(' · ')}</span>
        </p>
        <p>
          {size}
          <br />
          <span className={free > 0 && here ? 'done' : 'quiet'}>
            {free > 0
              ? tell(here ? 'life.stock.free' : 'life.stock.freeOnceHere', { free: { mm: free } })
              : tell('life.stock.noneFree')}
          </span>
        </p>
        <div>
          {reservedFor.map(({ garmentId, mm }) => (
            <p key={garmentId}>
              {tell('life.stock.promised', { length: { mm }, garment: garmentOf(garmentId) })}
            </p>
          ))}
          {usedBy.map(({ garmentId, mm }) => (
            <p key={garmentId} className="quiet">
              {tell('life.stock.cut', { length: { mm }, garment: garmentOf(garmentId) })}
            </p>
          ))}
        </div>
      </div>
      <Acts
        plain
        acts={
          here ? [...(length > 0 ? [act('measure')] : []), act('count')] : [act('arrived'), act('callOff')]
        }
      />
    </li>
  )
}

type Form = { length: Length; label: string; close: () => void; onDone: () => void }

function Arrived({ length: { id, revision, place }, label, close, onDone }: Form) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { typed, field } = useTyped({ arrivedDay: todayHere(), place })
  const work = async () => {
    await workroom.ask('stock.change', { id, revision, ...typed })
    onDone()
  }
  return (
    <ActForm label={label} keep={tell('life.stock.arrivedKeep')} {...{ close, work }}>
      <div className="columns">
        <TextField label={tell('life.stock.arrivedDay')} type="date" required {...field('arrivedDay')} />
        <TextField label={tell('life.stock.place')} {...field('place')} />
      </div>
    </ActForm>
  )
}

function Measure({ length: { id }, label, close, onDone }: Form) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { typed, field } = useTyped({ length: '', width: '' })
  const work = async () => {
    await workroom.ask('stock.measure', { id, ...typed })
    onDone()
  }
  return (
    <ActForm label={label} final="stock.measure" keep={tell('life.stock.measureKeep')} {...{ close, work }}>
      <div className="columns">
        <TextField label={tell('life.wash.length')} required {...field('length')} />
        <TextField label={tell('life.wash.width')} required {...field('width')} />
      </div>
    </ActForm>
  )
}

function Count({ length: { id, length }, label, close, onDone }: Form) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { typed, field } = useTyped({ length: printLength(length, reader.unit, reader.locale) })
  const work = async () => {
    const nothing = Number.parseFloat(typed.length) === 0 && !/[1-9]/.test(typed.length)
    await workroom.ask('stock.count', { id, length: nothing ? 0 : typed.length })
    onDone()
  }
  return (
    <ActForm label={label} keep={tell('life.stock.countKeep')} {...{ close, work }}>
      <div className="columns">
        <TextField
          label={tell('life.stock.counted')}
          help={tell('life.stock.counted.help')}
          required
          {...field('length')}
        />
      </div>
    </ActForm>
  )
}

function CallOff({ length: { id }, label, close, onDone }: Form) {
  const { workroom } = useHouse()
  const tell = useTell()
  const work = async () => {
    await workroom.ask('stock.callOff', { id })
    onDone()
  }
  return (
    <ActForm label={label} final="stock.callOff" keep={tell('life.stock.callOffKeep')} {...{ close, work }}>
      <p>{tell('life.stock.callOff.what')}</p>
    </ActForm>
  )
}

const FORMS = { arrived: Arrived, callOff: CallOff, measure: Measure, count: Count }
