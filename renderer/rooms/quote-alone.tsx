import { type Asked, askedFor, askedTogether } from '../../core/plan/asked.ts'
import { printMoney, shareOf, subtractMoney, sumMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { useHouse, useTell } from '../workroom.tsx'

type Snapshot = OutputOf<'quote.get'>['quote']['snapshot']

/** What the workroom reckoned with, which stands on no paper that the client sees. */
export function ForHerAlone({ lines, total }: Pick<Snapshot, 'lines' | 'total'>) {
  const { reader } = useHouse()
  const tell = useTell()
  const money = (amount: Snapshot['total']) => printMoney(amount, reader.locale)
  const rows = lines.map(({ id, title, quantity, estimate: { price, sewing } }) => ({
    ...{ id, quantity, earned: price.earnedPerHour },
    name: say(title, reader),
    hours: (price.earning?.hours ?? sewing.total).mean * quantity,
    ...askedTimes(askedFor(price), quantity),
    // What is reckoned as profit is not what is left of it once she asks less, or more.
    profit: shareOf(subtractMoney(price.net, price.cost), quantity, 1),
  }))
  const profit = sumMoney(
    rows.map((row) => row.profit),
    total.currency,
  )
  const asked = askedTogether(rows, total.currency)
  return (
    <section className="stack">
      <h2>{tell('guiding.alone')}</h2>
      <p className="quiet">{tell('guiding.alone.about')}</p>
      <div className="wide">
        <table>
          <thead>
            <tr>
              <th scope="col">{tell('screen.desk.garment')}</th>
              <th scope="col">{tell('screen.bill.hours')}</th>
              {(['asked', 'reckoned', 'floor'] as const).map((id) => (
                <th key={id} scope="col">
                  {tell(`times.bad.${id}`)}
                </th>
              ))}
              <th scope="col">{tell('screen.bill.earned')}</th>
              <th scope="col">{tell('guiding.alone.profit')}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.id}>
                <th scope="row">
                  {row.quantity === 1 ? '' : `${row.quantity} × `}
                  {row.name}
                </th>
                <td>{printMinutes(row.hours)}</td>
                <td className={row.floor !== null && row.net.minor < row.floor.minor ? 'under' : ''}>
                  {money(row.net)}
                </td>
                <td>{money(row.reckoned)}</td>
                <td>{row.floor === null ? '–' : money(row.floor)}</td>
                <td>{money(row.earned)}</td>
                <td>{money(row.profit)}</td>
              </tr>
            ))}
            {rows.length === 1 ? null : (
              <tr>
                <th scope="row">{tell('guiding.alone.together')}</th>
                <td>{printMinutes(rows.reduce((sum, row) => sum + row.hours, 0))}</td>
                <td>{money(asked.net)}</td>
                <td>{money(asked.reckoned)}</td>
                <td>{asked.floor === null ? '–' : money(asked.floor)}</td>
                <td />
                <td>{money(profit)}</td>
              </tr>
            )}
          </tbody>
        </table>
      </div>
    </section>
  )
}

/** The same for so many garments that are alike. */
const askedTimes = ({ net, reckoned, floor, target }: Asked, quantity: number): Asked => ({
  ...{ net: shareOf(net, quantity, 1), reckoned: shareOf(reckoned, quantity, 1), target },
  floor: floor === null ? null : shareOf(floor, quantity, 1),
})
