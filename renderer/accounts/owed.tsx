import { printMoney, sumMoney } from '../../core/words/money.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { addressOf } from '../router.ts'
import { useHouse, useTell } from '../workroom.tsx'

/** What of the prices is not paid yet, and by whom: it is counted in what is left, though it has not come in. */
export function Owed({ owed }: { owed: OutputOf<'accounts.list'>['owed'] }) {
  const { reader } = useHouse()
  const tell = useTell()
  if (owed.length === 0) return null
  const total = sumMoney(
    owed.map(({ amount }) => amount),
    owed[0]!.amount.currency,
  )
  return (
    <p>
      <strong>{tell('times.owed')}:</strong> {tell('times.owed.about', { owed: total })}{' '}
      {owed.map(({ id, number, customer, amount }, i) => (
        <span key={id}>
          {i === 0 ? '' : '; '}
          {customer}, {printMoney(amount, reader.locale)},{' '}
          <a className="number" href={addressOf('commissions', id)}>
            {number}
          </a>
        </span>
      ))}
    </p>
  )
}
