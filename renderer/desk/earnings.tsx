import { Button as AriaButton } from 'react-aria-components'
import { addMoney, subtractMoney } from '../../core/words/money.ts'
import { amountText } from '../parts/amount.ts'
import { TextField } from '../parts/field.tsx'
import { settingAt } from '../settings/place.ts'
import { useHouse, useTell } from '../workroom.tsx'
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
  const { reader } = useHouse()
  const tell = useTell()
  const { earning, net, earnedPerHour, materials, overhead } = reckoned
  if (earning === undefined) return null
  const { under, floor, hours, targetPerHour: target } = earning
  const below = net.minor < floor.minor
  const costs = addMoney(materials, overhead)
  const kept = subtractMoney(net, costs)
  const time = { minutes: hours.mean }
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
      <p className={below ? 'earned below' : 'earned'}>
        {kept.minor < 0
          ? tell('selling.lost', { price: net, time, lacking: subtractMoney(costs, net) })
          : tell('selling.earned', { price: net, time, kept, earned: earnedPerHour })}{' '}
        {kept.minor < 0 ? '' : tell(`selling.under.${odds}`, { odds: Math.round(100 * under), target })}{' '}
        {tell('selling.floor', { floor, target })}{' '}
        {below ? (
          <AriaButton className="log-time" onPress={() => onPrice(amountText(floor, reader.locale))}>
            {tell('selling.floor.take', { floor })}
          </AriaButton>
        ) : null}{' '}
        <a href={settingAt('target')}>{tell('times.bad.to.target')}</a>
      </p>
    </div>
  )
}
