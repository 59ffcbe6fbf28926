import { ActForm } from '../parts/acts.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import type { Followed } from './logged.ts'
import type { MoneyOf } from './money.tsx'

type Props = {
  commission: Followed
  money: MoneyOf
  close: () => void
  onDone: (commission: Followed) => void
}

/** Asks once before a commission is called off, and says what becomes of the money. */
export function CallOff({ commission: { id, revision, number }, money, close, onDone }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  return (
    <ActForm
      label={tell('life.cancel')}
      keep={tell('life.cancel.yes')}
      close={close}
      work={async () => onDone((await workroom.ask('commission.cancel', { id, revision })).commission)}
    >
      <p>{tell('life.cancel.sure', { number })}</p>
      <p>{useSettled()(money.ifCancelled)}</p>
    </ActForm>
  )
}

/** Says what of the money is kept and what goes back. */
export function useSettled(): (settled: MoneyOf['ifCancelled']) => string {
  const tell = useTell()
  return ({ keep, refund, owed }) => {
    const paid = keep.minor + refund.minor > 0 ? [tell('life.cancel.keep', { keep, refund })] : []
    const missing = owed.minor > 0 ? [tell('life.cancel.owed', { owed })] : []
    const said = [...paid, ...missing]
    return said.length === 0 ? tell('life.cancel.nothing') : said.join(' ')
  }
}
