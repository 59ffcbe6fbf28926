import { printDate } from '../../core/words/dates.ts'
import { printMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import { Empty } from '../parts/empty.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useHouse, useQuery, useTell } from '../workroom.tsx'

/** Every quote, newest first, with what has become of it. */
export function Quotes() {
  const { reader } = useHouse()
  const tell = useTell()
  const { value, refused } = useQuery('quotes.list', {})
  return (
    <div className="stack">
      <h1>{tell('screen.room.quotes')}</h1>
      <Refusal sentence={refused} />
      {value?.quotes.length === 0 ? (
        <Empty
          words={tell('guiding.empty.quotes')}
          go={tell('guiding.empty.toDesk')}
          href={addressOf('desk')}
        />
      ) : null}
      <ul className="entries">
        {[...(value?.quotes ?? [])].reverse().map((quote) => (
          <li key={quote.id}>
            <a className="entry" href={addressOf('quotes', quote.id)}>
              <strong>
                {quote.number} · {quote.customer}
              </strong>
              <span className="quiet">
                {quote.garments
                  .map(({ title, wearer }) =>
                    tell('paper.garment.forWhom', { title: say(title, reader), wearer }),
                  )
                  .join('; ')}
                {' · '}
                {printDate(quote.day, reader.locale)} · {tell(`quote.state.${quote.state}`)}
              </span>
              <span className="amount">{printMoney(quote.total, reader.locale)}</span>
            </a>
          </li>
        ))}
      </ul>
    </div>
  )
}
