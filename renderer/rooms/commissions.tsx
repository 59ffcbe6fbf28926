import { printDayShort } from '../../core/words/dates.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Bygone } from '../commission/bygone.tsx'
import { Empty } from '../parts/empty.tsx'
import { useForWhom } from '../parts/for-whom.ts'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useHouse, useQuery, useTell } from '../workroom.tsx'

/** As many as can be asked for: however old, open work is never out of sight. */
const MOST_OPEN = 500

/** Which are cut, which sewn, which hemmed, and what is left: all work at a glance. */
export function Commissions() {
  const { reader } = useHouse()
  const tell = useTell()
  const forWhom = useForWhom()
  const open = useQuery('commissions.list', { state: 'open', most: MOST_OPEN })
  const commissions = open.value === undefined ? undefined : [...open.value.commissions].reverse()
  const printed = (day: string | null) => (day === null ? '–' : printDayShort(day, reader.locale))
  const mark = (done: boolean) => (
    <td>{done ? <span className="done">✓ {tell('paper.step.done')}</span> : '–'}</td>
  )
  return (
    <div className="stack">
      <h1>{tell('screen.room.commissions')}</h1>
      <Refusal sentence={open.refused} />
      {commissions?.length === 0 ? (
        <Empty
          words={tell('guiding.empty.commissions')}
          go={tell('guiding.empty.toQuotes')}
          href={addressOf('quotes')}
        />
      ) : null}
      {commissions === undefined || commissions.length === 0 ? null : (
        <table className="at-a-glance">
          <thead>
            <tr>
              <th scope="col">{tell('paper.fact.commission')}</th>
              <th scope="col">{tell('screen.commission.garment')}</th>
              <th scope="col">{tell('weeks.due')}</th>
              <th scope="col">{tell('waits.title')}</th>
              <th scope="col">{tell('screen.mark.cut')}</th>
              <th scope="col">{tell('screen.mark.sewn')}</th>
              <th scope="col">{tell('screen.mark.hemmed')}</th>
              <th scope="col" className="amount">
                {tell('screen.commission.left')}
              </th>
            </tr>
          </thead>
          <tbody>
            {commissions.flatMap(({ id, number, customer, dueDay, eventDay, garments }) =>
              garments.map((garment) => (
                <tr key={garment.id}>
                  <td>
                    <a href={addressOf('commissions', id)}>{number}</a>
                  </td>
                  <td>{forWhom([garment], customer)}</td>
                  <td>{printed(dueDay ?? eventDay)}</td>
                  <td className="waits">
                    <Waits garment={garment} />
                  </td>
                  {mark(garment.cut)}
                  {mark(garment.sewn)}
                  {mark(garment.hemmed)}
                  <td className="amount">{printMinutes(garment.left.mean)}</td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      )}
      <Bygone />
    </div>
  )
}

type Shown = OutputOf<'commissions.list'>['commissions'][number]['garments'][number]

/** What a garment waits for, or the step that can be taken. */
function Waits({ garment: { waits, next } }: { garment: Shown }) {
  const { reader } = useHouse()
  const tell = useTell()
  if (waits.length === 0)
    return (
      <span className="quiet">
        {next === null ? tell('waits.done') : tell('waits.next', { step: next.name })}
      </span>
    )
  return tell('waits.first', { what: waits.map((one) => say(one, reader)).join('; ') })
}
