import { TextField } from '../parts/field.tsx'
import { useTell } from '../workroom.tsx'
import type { Estimate } from './use-estimate.ts'

/** Odds closer than this to nought or one are said to be as good as sure. */
const SURE = 0.01

type Props = {
  estimate: Estimate
  price: string
  onPrice: (price: string) => void
  wrong: string | undefined
}

/** Her own price, and what any price earns: an hour's pay, how sure that is, and the floor. */
export function Earnings({ estimate: { price: reckoned }, price, onPrice, wrong }: Props) {
  const tell = useTell()
  const { earning, net, earnedPerHour } = reckoned
  if (earning === undefined) return null
  const { under, floor, targetPerHour: target } = earning
  const odds = under < SURE ? 'never' : under > 1 - SURE ? 'always' : 'odds'
  return (
    <div className="earnings">
      <TextField
        label={tell('selling.price')}
        value={price}
        onChange={onPrice}
        help={tell('selling.price.help')}
        wrong={wrong}
      />
      <p className={net.minor < floor.minor ? 'earned below' : 'earned'}>
        {tell('selling.earned', { price: net, earned: earnedPerHour })}{' '}
        {tell(`selling.under.${odds}`, { odds: Math.round(100 * under), target })}{' '}
        {tell('selling.floor', { floor, target })}
      </p>
    </div>
  )
}
