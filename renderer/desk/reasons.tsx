import { memo } from 'react'
import { PURCHASE_LINES } from '../../core/lay/purchase.ts'
import { numberFormat } from '../../core/words/formats.ts'
import { printLength } from '../../core/words/length.ts'
import { printMoney } from '../../core/words/money.ts'
import { type PhraseCode, phrase } from '../../core/words/phrase.ts'
import { say } from '../../core/words/say.ts'
import { STITCHES } from '../../core/words/stitches.ts'
import { printMinutes } from '../../core/words/time.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { Estimate } from './use-estimate.ts'

/** Where each figure comes from: price line by line, then cloth, hours and thread one step away. */
export const Reasons = memo(
  ({ estimate: { price, purchase, sewing, draft, attendance, doubts = [] } }: { estimate: Estimate }) => {
    const { reader } = useHouse()
    const tell = useTell()
    const length = (mm: number) => printLength(mm, reader.unit, reader.locale)
    const metres = numberFormat(reader.locale, { maximumFractionDigits: 1 })
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
              {PURCHASE_LINES.map((id) => (
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
              total: { minutes: (price.earning?.hours ?? sewing.total).mean },
              late: { minutes: (price.earning?.hours ?? sewing.total).p80 },
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
              {attendance === undefined ? null : (
                <tr>
                  <td>{tell('selling.around')}</td>
                  <td className="amount">{printMinutes(attendance.total.mean)}</td>
                </tr>
              )}
            </tbody>
          </table>
          <Doubts doubts={doubts} />
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
  },
)

/** How many kinds of work are named. */
const NAMED = 5

/** The kinds of work that make the hours uncertain, greatest part first. */
function Doubts({ doubts }: { doubts: NonNullable<Estimate['doubts']> }) {
  const { reader } = useHouse()
  const tell = useTell()
  if (doubts.length === 0) return null
  return (
    <>
      <h3>{tell('selling.doubts')}</h3>
      <p className="quiet">{tell('selling.doubts.about')}</p>
      <table>
        <tbody>
          {doubts.slice(0, NAMED).map(({ work, minutes, part }) => (
            <tr key={work}>
              <td>{say(nameOfWork(work), reader)}</td>
              <td className="quiet">{printMinutes(minutes)}</td>
              <td className="amount">{tell('selling.doubts.part', { percent: Math.round(100 * part) })}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}

/** Stitches are named as stitches, everything else as an operation. */
const nameOfWork = (work: string) =>
  phrase(
    ((STITCHES as readonly string[]).includes(work)
      ? `sew.stitch.${work}`
      : `sew.operation.${work}`) as PhraseCode,
  )
