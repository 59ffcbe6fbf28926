import { printDayShort } from '../../core/words/dates.ts'
import { printMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { addressOf } from '../router.ts'
import { useHouse, useQuery, useTell } from '../workroom.tsx'

type Quoted = OutputOf<'client.made'>['quotes'][number]

/** What was quoted and made for a client, the newest first; nothing, as long as that is nothing. */
export function ClientMade({ id }: { id: string }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { value } = useQuery('client.made', { id })
  if (value === undefined || value.quotes.length === 0) return null
  return (
    <section className="sheet stack">
      <h2>{tell('client.made')}</h2>
      <table className="at-a-glance">
        <thead>
          <tr>
            <th scope="col">{tell('paper.quote.title')}</th>
            <th scope="col">{tell('screen.commission.garment')}</th>
            <th scope="col">{tell('paper.quote.day')}</th>
            <th scope="col">{tell('client.made.state')}</th>
            <th scope="col" className="amount">
              {tell('life.money.agreed')}
            </th>
          </tr>
        </thead>
        <tbody>
          {value.quotes.map((quote) => (
            <tr key={quote.id}>
              <td>
                <a href={addressOf('quotes', quote.id)}>{quote.number}</a>
              </td>
              <td>
                {quote.garments
                  .map(({ title, wearer }) =>
                    tell('paper.garment.forWhom', { title: say(title, reader), wearer }),
                  )
                  .join(', ')}
                {quote.garments.every(({ wearer }) => wearer === quote.customer) ? null : (
                  <>
                    <br />
                    <span className="quiet">{tell('client.made.paidBy', { customer: quote.customer })}</span>
                  </>
                )}
              </td>
              <td>{printDayShort(quote.day, reader.locale)}</td>
              <td>
                <Became quote={quote} />
              </td>
              <td className="amount">{printMoney(quote.total, reader.locale)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

function Became({ quote: { state, commission } }: { quote: Quoted }) {
  const { reader } = useHouse()
  const tell = useTell()
  if (commission === null) return tell(`quote.state.${state}`)
  const { id, number, state: standing, deliveredDay } = commission
  return (
    <>
      <a href={addressOf('commissions', id)}>{number}</a>{' '}
      {standing === 'cancelled'
        ? tell('life.cancelled.short')
        : deliveredDay === null
          ? tell('client.made.open')
          : `${tell('times.commission.deliveredShort')} ${printDayShort(deliveredDay, reader.locale)}`}
    </>
  )
}
