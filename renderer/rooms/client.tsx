import { printLength } from '../../core/words/length.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { MeasureHelp } from '../help/help.tsx'
import { Button } from '../parts/button.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'
import { ClientChange } from './client-change.tsx'
import { ClientMade } from './client-made.tsx'
import { ClientPapers } from './client-papers.tsx'
import { MeasureForm } from './measure-form.tsx'

type Set = OutputOf<'client.get'>['measurementSets'][number]

/** One client: the measurement sets, newest first, and a form for a new one. */
export function Client({ id }: { id: string }) {
  const tell = useTell()
  const { value, refused, reload } = useQuery('client.get', { id })
  const [measuring, setMeasuring] = useHalfFilled('measuring', false)
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
            {[...client.address, client.email, client.phone].filter((part) => part !== '').join(', ')}
          </p>
          <ClientChange key={client.revision} client={client} onChanged={reload} />
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
      {client.note === '' ? null : <p className="noted">{client.note}</p>}
      <ClientMade id={id} />
      {measuring || sets.length === 0 ? <MeasureForm client={client} from={sets[0]} onTaken={taken} /> : null}
      {sets.map((set, i) => (
        <MeasureSet key={set.id} set={set} before={sets[i + 1]} onChanged={reload} />
      ))}
      <ClientPapers id={id} name={client.name} />
    </div>
  )
}

/** One taking: what was measured, what was estimated, and what has changed since the one before. */
function MeasureSet({
  set,
  before,
  onChanged,
}: {
  set: Set
  before: Set | undefined
  onChanged: () => void
}) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const { value } = useQuery('measures.list', {})
  const length = (mm: number) => printLength(mm, reader.unit, reader.locale)
  const print = () =>
    doing.run(async () => {
      const { document } = await workroom.ask('measuringSheet.print', { measurementSetId: set.id })
      const shown = await workroom.bridge.paper(document.id)
      if (!shown.ok) throw new Error(shown.error.message)
    })
  const putAside = () =>
    doing
      .run(() =>
        workroom.ask(set.retired ? 'measurementSet.restore' : 'measurementSet.retire', { id: set.id }),
      )
      .then(onChanged)
  const taken = value?.measures.flatMap((measure) => {
    const found = set.measures[measure.id]
    return found === undefined ? [] : [{ ...measure, found, note: set.notes[measure.id] }]
  })
  const standing = set.retired
    ? 'screen.measure.aside'
    : set.usedAt === null
      ? 'screen.measure.free'
      : 'screen.measure.used'
  const told = [
    ...(set.takenBy === '' ? [] : [tell('client.takenBy', { by: set.takenBy })]),
    ...(set.over === '' ? [] : [tell('client.over', { over: set.over })]),
    ...[set.note, ...Object.values(set.remarks)].filter((text) => text !== ''),
  ]
  return (
    <section className="sheet stack">
      <div className="between">
        <h2>{tell('screen.measure.of', { day: { date: set.day } })}</h2>
        <div className="row">
          <span className="quiet">{tell(standing)}</span>
          <Button onPress={() => void print()} busy={doing.busy}>
            {tell('screen.measure.print')}
          </Button>
          <Button onPress={() => void putAside()} busy={doing.busy}>
            {tell(set.retired ? 'screen.measure.takeBack' : 'screen.measure.putAside')}
          </Button>
        </div>
      </div>
      {told.length === 0 ? null : <p className="quiet">{told.join(' · ')}</p>}
      <dl className="columns measures">
        {taken?.map(({ id, name, found, note }) => (
          <div key={id} className="between">
            <dt className="quiet with-help">
              <span>
                {name}
                {note === undefined ? null : ` (${note})`}
              </span>
              <MeasureHelp measure={id} />
            </dt>
            <dd>
              {found.source === 'estimated'
                ? tell('screen.measure.estimated', { text: `${length(found.mm)} ± ${length(found.sd ?? 0)}` })
                : found.sides === undefined
                  ? length(found.mm)
                  : `L ${length(found.sides.left)} R ${length(found.sides.right)}`}
            </dd>
          </div>
        ))}
      </dl>
      {before === undefined ? null : <Changes before={before} after={set} />}
      <Refusal sentence={doing.refused?.message} />
    </section>
  )
}

function Changes({ before, after }: { before: Set; after: Set }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { value } = useQuery('measurementSets.compare', { before: before.id, after: after.id })
  if (value === undefined || value.differences.length === 0) return null
  const length = (mm: number) => printLength(mm, reader.unit, reader.locale)
  return (
    <div>
      <h3>{tell('screen.measure.changes', { day: { date: before.day } })}</h3>
      <ul className="changes">
        {value.differences.map(({ measure, before: was, after: is, by }) => (
          <li key={measure}>
            {is === undefined
              ? tell('screen.measure.change.left', { measure: tell(`measure.name.${measure}`) })
              : was === undefined
                ? tell('screen.measure.change.added', {
                    ...{ measure: tell(`measure.name.${measure}`), after: length(is) },
                  })
                : tell('screen.measure.change', {
                    ...{ measure: tell(`measure.name.${measure}`), before: length(was), after: length(is) },
                    by: `${by! > 0 ? '+' : '−'}${length(Math.abs(by!))}`,
                  })}
          </li>
        ))}
      </ul>
    </div>
  )
}
