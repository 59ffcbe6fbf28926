import { useState } from 'react'
import { printLength } from '../../core/words/length.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useHouse, useQuery, useTell } from '../workroom.tsx'
import { MeasureForm } from './measure-form.tsx'

type Set = OutputOf<'client.get'>['measurementSets'][number]

/** One client: the measurement sets, newest first, and a form for a new one. */
export function Client({ id }: { id: string }) {
  const tell = useTell()
  const { value, refused, reload } = useQuery('client.get', { id })
  const [measuring, setMeasuring] = useState(false)
  if (value === undefined) return <Refusal sentence={refused} />
  const { client } = value
  const sets = [...value.measurementSets].reverse()
  const taken = () => {
    setMeasuring(false)
    reload()
  }
  return (
    <div className="stack">
      <div className="between">
        <div>
          <h1>{client.name}</h1>
          <p className="quiet">
            {[...client.address, client.email].filter((part) => part !== '').join(', ')}
          </p>
        </div>
        <div className="row">
          {sets.length === 0 ? null : (
            <a className="button main" href={addressOf('desk', undefined, { wearer: id })}>
              {tell('screen.client.quote')}
            </a>
          )}
          {measuring || sets.length === 0 ? null : (
            <Button onPress={() => setMeasuring(true)}>{tell('screen.measure.new')}</Button>
          )}
        </div>
      </div>
      {client.note === '' ? null : <p>{client.note}</p>}
      {measuring || sets.length === 0 ? <MeasureForm clientId={id} from={sets[0]} onTaken={taken} /> : null}
      {sets.map((set) => (
        <MeasureSet key={set.id} set={set} />
      ))}
    </div>
  )
}

function MeasureSet({ set }: { set: Set }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { value } = useQuery('measures.list', {})
  const taken = value?.measures.flatMap((measure) => {
    const found = set.measures[measure.id]
    return found === undefined ? [] : [{ ...measure, found }]
  })
  return (
    <section className="sheet stack">
      <div className="between">
        <h2>{tell('screen.measure.of', { day: { date: set.day } })}</h2>
        <span className="quiet">
          {tell(set.usedAt === null ? 'screen.measure.free' : 'screen.measure.used')}
        </span>
      </div>
      <dl className="columns measures">
        {taken?.map(({ id, name, found }) => (
          <div key={id} className="between">
            <dt className="quiet">{name}</dt>
            <dd>{printLength(found.mm, reader.unit, reader.locale)}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}
