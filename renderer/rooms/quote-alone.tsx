import { printMoney, shareOf, sumMoney } from '../../core/words/money.ts'
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
    profit: shareOf(price.profit, quantity, 1),
  }))
  const profit = sumMoney(
    rows.map((row) => row.profit),
    total.currency,
  )
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
                <td>{money(row.earned)}</td>
                <td>{money(row.profit)}</td>
              </tr>
            ))}
            {rows.length === 1 ? null : (
              <tr>
                <th scope="row">{tell('guiding.alone.together')}</th>
                <td>{printMinutes(rows.reduce((sum, row) => sum + row.hours, 0))}</td>
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
