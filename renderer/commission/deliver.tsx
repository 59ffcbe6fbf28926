import { printMoney } from '../../core/words/money.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { ActForm } from '../parts/acts.tsx'
import { TextField } from '../parts/field.tsx'
import { useTyped } from '../parts/typed.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { Followed } from './logged.ts'

type MoneyOf = OutputOf<'money.of'>

/** How much of a commission is not as it should be when it is handed over. */
export const notReady = ({ garments }: Followed, money: MoneyOf | undefined) => {
  const steps = garments.flatMap((one) => one.steps)
  return {
    ...{ steps: steps.length, open: steps.filter(({ doneAt }) => doneAt === null).length },
    owed: money === undefined || money.owed.minor <= 0 ? undefined : money.owed,
  }
}

type Props = {
  commission: Followed
  money: MoneyOf | undefined
  close: () => void
  onDelivered: () => Promise<void>
}

/** Asked before work goes out of the house that is not all ticked, or not all paid. */
export function Deliver({ commission, money, close, onDelivered }: Props) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { typed, field } = useTyped({ day: '' })
  const { steps, open, owed } = notReady(commission, money)
  const { id, revision } = commission
  const work = async () => {
    await workroom.ask('commission.deliver', {
      ...{ id, revision },
      ...(typed.day === '' ? {} : { day: typed.day }),
    })
    await onDelivered()
  }
  return (
    <div className="act">
      <ActForm
        label={tell('times.commission.deliver')}
        keep={tell(open > 0 || owed !== undefined ? 'life.deliver.anyway' : 'life.deliver.keep')}
        {...{ close, work }}
      >
        {open === 0 ? null : <p>{tell('life.deliver.steps', { open, steps })}</p>}
        {owed === undefined ? null : (
          <p>{tell('life.deliver.owed', { owed: printMoney(owed, reader.locale) })}</p>
        )}
        <div className="columns">
          <TextField
            label={tell('life.deliver.day')}
            type="date"
            help={tell('life.deliver.today')}
            {...field('day')}
          />
        </div>
      </ActForm>
    </div>
  )
}
