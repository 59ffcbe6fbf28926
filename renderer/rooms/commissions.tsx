import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useHouse, useQuery, useTell } from '../workroom.tsx'

/** Which are cut, which sewn, which hemmed, and what is left: all work at a glance. */
export function Commissions() {
  const { reader } = useHouse()
  const tell = useTell()
  const { value, refused } = useQuery('commissions.list', {})
  const mark = (done: boolean) => (
    <td>{done ? <span className="done">✓ {tell('paper.step.done')}</span> : '–'}</td>
  )
  return (
    <div className="stack">
      <div className="between">
        <h1>{tell('screen.room.commissions')}</h1>
        <div className="row">
          <a className="button" href={addressOf('commissions', 'plan')}>
            {tell('weeks.title')}
          </a>
          <a className="button" href={addressOf('commissions', 'books')}>
            {tell('life.books')}
          </a>
          <a className="button" href={addressOf('commissions', 'accounts')}>
            {tell('times.accounts.title')}
          </a>
        </div>
      </div>
      <Refusal sentence={refused} />
      {value?.commissions.length === 0 ? <p>{tell('screen.commission.none')}</p> : null}
      {value === undefined || value.commissions.length === 0 ? null : (
        <table>
          <thead>
            <tr>
              <th scope="col">{tell('paper.fact.commission')}</th>
              <th scope="col">{tell('screen.commission.garment')}</th>
              <th scope="col">{tell('screen.mark.cut')}</th>
              <th scope="col">{tell('screen.mark.sewn')}</th>
              <th scope="col">{tell('screen.mark.hemmed')}</th>
              <th scope="col" className="amount">
                {tell('screen.commission.left')}
              </th>
            </tr>
          </thead>
          <tbody>
            {openFirst(value.commissions).flatMap(({ id, number, state, garments }) =>
              garments.map((garment) => (
                <tr key={garment.id}>
                  <td>
                    <a href={addressOf('commissions', id)}>{number}</a>
                  </td>
                  <td>
                    {tell('paper.garment.forWhom', {
                      title: say(garment.title, reader),
                      wearer: garment.wearer,
                    })}
                  </td>
                  {mark(garment.cut)}
                  {mark(garment.sewn)}
                  {mark(garment.hemmed)}
                  <td className="amount">
                    {state === 'delivered'
                      ? tell('times.commission.deliveredShort')
                      : state === 'cancelled'
                        ? tell('life.cancelled.short')
                        : printMinutes(garment.left.mean)}
                  </td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      )}
    </div>
  )
}

/** What is open stands above what is delivered; of each the newest first. */
const openFirst = <T extends { state: string }>(commissions: readonly T[]): T[] => {
  const newest = [...commissions].reverse()
  return [
    ...newest.filter(({ state }) => state === 'open'),
    ...newest.filter(({ state }) => state !== 'open'),
  ]
}
