import { printDayShort } from '../../core/words/dates.ts'
import { printMoney } from '../../core/words/money.ts'
import type { PhraseCode } from '../../core/words/phrase.ts'
import type { InputOf } from '../../core/workroom.ts'
import { ActForm, Acts } from '../parts/acts.tsx'
import { amountOf, amountText } from '../parts/amount.ts'
import { SelectField, TextField } from '../parts/field.tsx'
import { todayHere } from '../parts/today.ts'
import { useTyped } from '../parts/typed.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { MoneyOf } from './money.tsx'
import { PrintIt } from './print-it.tsx'

type Entry = InputOf<'payment.add'>
type Kind = NonNullable<Entry['kind']>
const METHODS = ['cash', 'transfer', 'card', 'cheque', 'other'] as const
const EVENTS = ['acceptance', 'cutting', 'fitting', 'delivery'] as const

type Props = { commissionId: string; money: MoneyOf; onChanged: () => void }

/** Receipts, each with its number, and the way to write down another. */
export function Payments({ commissionId, money, onChanged }: Props) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { payments } = money
  const form = (kind: Kind) => (close: () => void) => (
    <Write {...{ commissionId, money, kind, close }} onDone={onChanged} />
  )
  return (
    <>
      {payments.length === 0 ? null : (
        <table className="ledger">
          <caption>{tell('life.money.receipts')}</caption>
          <thead>
            <tr>
              {(['number', 'day', 'kind'] as const).map((id) => (
                <th key={id} scope="col">
                  {tell(`money.column.${id}`)}
                </th>
              ))}
              <th scope="col" className="amount">
                {tell('life.money.amount')}
              </th>
              <th scope="col">{tell('money.column.method')}</th>
              <th scope="col">{tell('life.money.for')}</th>
              <td />
            </tr>
          </thead>
          <tbody>
            {payments.map(({ id, number, day, kind, amountMinor, currency, method, due, note }) => (
              <tr key={id}>
                <td className="figure">{number}</td>
                <td className="figure">{printDayShort(day, reader.locale)}</td>
                <td>{tell(kind === 'refund' ? 'money.kind.refund' : 'money.kind.receipt')}</td>
                <td className="amount">{printMoney({ minor: amountMinor, currency }, reader.locale)}</td>
                <td>{tell(`money.method.${method}` as PhraseCode)}</td>
                <td>
                  {[
                    ...(due === null ? [] : [tell(`life.event.${due}`)]),
                    ...(note === '' ? [] : [note]),
                  ].join(', ')}
                </td>
                <td>
                  <PrintIt number={number} ask={() => workroom.ask('receipt.print', { id })} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <Acts
        acts={[
          { id: 'pay', words: tell('life.payment.add'), form: form('payment') },
          ...(money.paid.minor > 0
            ? [{ id: 'refund', words: tell('life.payment.refund'), form: form('refund') }]
            : []),
        ]}
      />
    </>
  )
}

function Write({
  commissionId,
  money,
  kind,
  close,
  onDone,
}: Omit<Props, 'onChanged'> & {
  kind: Kind
  close: () => void
  onDone: () => void
}) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { currency } = money.agreed
  const { due, since, over } = money
  const likely = kind === 'refund' ? over : due
  const { typed, field } = useTyped({
    ...{
      amount: likely.minor > 0 ? amountText(likely, reader.locale) : '',
      day: todayHere(),
      method: 'transfer',
      note: '',
    },
    for: kind === 'payment' && since !== null ? since.when : '',
  })
  const work = async () => {
    await workroom.ask('payment.add', {
      ...{ commissionId, kind, day: typed.day, note: typed.note },
      amount: amountOf(typed.amount, currency),
      method: typed.method as NonNullable<Entry['method']>,
      for: typed.for === '' ? null : (typed.for as NonNullable<Entry['for']>),
    })
    onDone()
  }
  return (
    <ActForm
      label={tell(kind === 'refund' ? 'life.payment.refund' : 'life.payment.add')}
      final="payment.add"
      keep={tell('life.payment.keep')}
      {...{ close, work }}
    >
      <div className="columns">
        <TextField label={tell('life.payment.amount', { currency })} required {...field('amount')} />
        <TextField label={tell('life.payment.day')} type="date" required {...field('day')} />
        <SelectField
          label={tell('life.payment.method')}
          options={METHODS.map((id) => ({ id, name: tell(`money.method.${id}`) }))}
          {...field('method')}
        />
        <SelectField
          label={tell('life.payment.for')}
          options={[
            { id: '', name: tell('life.money.forNothing') },
            ...EVENTS.map((id) => ({ id, name: tell(`life.event.${id}`) })),
          ]}
          {...field('for')}
        />
        <TextField label={tell('life.payment.note')} {...field('note')} />
      </div>
    </ActForm>
  )
}
