import { type Money, printMoney } from '../../core/words/money.ts'
import { useHouse, useTell } from '../workroom.tsx'

/** What an hour earned; marked where it is less than was meant. @param target minor units */
export function Earned({ earned, target }: { earned: Money; target: number }) {
  const { reader } = useHouse()
  const tell = useTell()
  const sum = printMoney(earned, reader.locale)
  return earned.minor < target ? (
    <td className="amount under">
      {sum} <span aria-hidden="true">▾</span>
      <span className="unseen"> {tell('times.accounts.low')}</span>
    </td>
  ) : (
    <td className="amount">{sum}</td>
  )
}
