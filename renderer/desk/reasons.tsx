import { printLength } from '../../core/words/length.ts'
import { printMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { Estimate } from './use-estimate.ts'

/** Where each figure comes from: price line by line, then cloth, hours and thread one step away. */
export function Reasons({ estimate: { price, purchase, sewing, draft } }: { estimate: Estimate }) {
  const { reader } = useHouse()
  const tell = useTell()
  const length = (mm: number) => printLength(mm, reader.unit, reader.locale)
  const bought = [
    'layLength',
    'endAllowance',
    'squaring',
    'testStrip',
    'shrinkage',
    'margin',
    'needed',
  ] as const
  const metres = new Intl.NumberFormat(reader.locale, { maximumFractionDigits: 1 })
  const names = new Map(draft.steps.map(({ id, name }) => [id, say(name, reader)]))
  return (
    <section className="stack">
      <h2>{tell('screen.reasons.price')}</h2>
      <table>
        <tbody>
          {price.lines.map((line) => (
            <tr key={say(line.name, reader)}>
              <td>{say(line.name, reader)}</td>
              <td className="quiet">{say(line.how, reader)}</td>
              <td className="amount">{printMoney(line.amount, reader.locale)}</td>
            </tr>
          ))}
          <tr>
            <td>
              <strong>{tell('paper.quote.total')}</strong>
            </td>
            <td className="quiet">{tell('screen.reasons.earned', { earned: price.earnedPerHour })}</td>
            <td className="amount">
              <strong>{printMoney(price.total, reader.locale)}</strong>
            </td>
          </tr>
        </tbody>
      </table>
      <details>
        <summary>{tell('screen.reasons.cloth')}</summary>
        <table>
          <tbody>
            {bought.map((id) => (
              <tr key={id}>
                <td>{tell(`paper.cloth.line.${id}`)}</td>
                <td className="amount">{length(purchase[id])}</td>
              </tr>
            ))}
            <tr>
              <td>
                <strong>{tell('paper.cloth.toBuy')}</strong>
              </td>
              <td className="amount">
                <strong>{length(purchase.toBuy)}</strong>
              </td>
            </tr>
          </tbody>
        </table>
      </details>
      <details>
        <summary>{tell('screen.reasons.hours')}</summary>
        <p className="quiet">
          {tell('paper.order.total', {
            total: { minutes: sewing.total.mean },
            late: { minutes: sewing.total.p80 },
          })}
        </p>
        <table>
          <tbody>
            {sewing.steps.map(({ step, total }) => (
              <tr key={step}>
                <td>{names.get(step)}</td>
                <td className="amount">{printMinutes(total.mean)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
      <details>
        <summary>{tell('screen.reasons.thread')}</summary>
        <table>
          <tbody>
            {sewing.threads.map(({ work, sewn, wasted, metres: all }) => (
              <tr key={work}>
                <td>{tell(`paper.thread.${work}`)}</td>
                <td className="quiet">
                  {tell('screen.reasons.threadOf', {
                    sewn: metres.format(sewn),
                    wasted: metres.format(wasted),
                  })}
                </td>
                <td className="amount">{metres.format(all)} m</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </section>
  )
}
