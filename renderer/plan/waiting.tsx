import type { OutputOf } from '../../core/workroom.ts'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useQuery, useTell } from '../workroom.tsx'
import { useSaidDayOff } from './reasons.ts'
import { WouldDo } from './what-if.tsx'

type Quoted = OutputOf<'plan.waiting'>['quotes'][number]

/** Quotes that wait for an answer, each with what it would do to the weeks if it were accepted. */
export function Waiting() {
  const tell = useTell()
  const { value, refused } = useQuery('plan.waiting', {})
  const quotes = value?.quotes ?? []
  if (quotes.length === 0) return <Refusal sentence={refused} />
  return (
    <section className="sheet stack">
      <h2>{tell('weeks.waiting')}</h2>
      {quotes.length === 1 ? null : <p className="quiet">{tell('weeks.waiting.each')}</p>}
      <ul className="entries">
        {quotes.map((quote) => (
          <One key={quote.id} quote={quote} />
        ))}
      </ul>
    </section>
  )
}

function One({ quote }: { quote: Quoted }) {
  const tell = useTell()
  const saidDayOff = useSaidDayOff()
  const { id, number, customer, total, validUntil, promised, dayOff, would } = quote
  return (
    <li className="waiting-quote">
      <p>
        <a href={addressOf('quotes', id)}>{number}</a>{' '}
        {tell('weeks.waiting.one', { customer, total, day: { date: validUntil } })}
      </p>
      {would === null ? (
        <p>{tell('weeks.waiting.change')}</p>
      ) : (
        <>
          <p>
            {tell('weeks.waiting.takes', { time: { minutes: would.minutes } })}{' '}
            {would.cloth === null ? '' : tell('weeks.waiting.cloth', { day: { date: would.cloth } })}{' '}
            {saidDayOff(promised, dayOff)}
          </p>
          <WouldDo {...would} promised={promised ?? undefined} />
        </>
      )}
    </li>
  )
}
