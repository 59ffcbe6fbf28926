import { printDate } from '../../core/words/dates.ts'
import { type Money as Amount, printMoney } from '../../core/words/money.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { useShown } from '../parts/printing.ts'
import { Refusal } from '../parts/refusal.tsx'
import { todayHere } from '../parts/today.ts'
import { type Loaded, useDoing, useHouse, useTell } from '../workroom.tsx'
import { useSettled } from './call-off.tsx'
import { MONEY } from './holds.tsx'
import { Invoices } from './invoices.tsx'
import type { Followed } from './logged.ts'
import { Payments } from './payments.tsx'

/** How the money of a commission stands: minor units, with what is due by when. */
export type MoneyOf = OutputOf<'money.of'>

type Props = { commission: Followed; money: Loaded<MoneyOf> }

/** What is agreed, paid and due, part by part, with receipts and invoices. */
export function Money({ commission, money: { value, refused, reload } }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const show = useShown()
  return (
    <section className="sheet stack">
      <h2 id={MONEY} tabIndex={-1}>
        {tell('life.money')}
      </h2>
      <Refusal sentence={refused} />
      {value === undefined ? null : (
        <>
          <Standing money={value} cancelled={commission.state === 'cancelled'} />
          {value.parts.length === 0 ? null : <Parts parts={value.parts} />}
          <Payments commissionId={commission.id} money={value} onChanged={reload} />
          {value.due.minor > 0 ? (
            <div className="row">
              <Button
                busy={doing.busy}
                onPress={() =>
                  void doing.run(() => show(workroom.ask('reminder.print', { commissionId: commission.id })))
                }
              >
                {tell('papers.remind')}
              </Button>
              <Refusal sentence={doing.refused?.message} />
            </div>
          ) : null}
          <Invoices
            commissionId={commission.id}
            cancelled={commission.state === 'cancelled'}
            invoices={value.invoices}
            onChanged={reload}
          />
        </>
      )}
    </section>
  )
}

function Standing({ money, cancelled }: { money: MoneyOf; cancelled: boolean }) {
  const { reader } = useHouse()
  const tell = useTell()
  const settled = useSettled()
  const { agreed, paid, due, since, owed, over, ifCancelled } = money
  const figure = (id: 'agreed' | 'paid' | 'due' | 'owed' | 'over', amount: Amount, aside = '') => (
    <div>
      <dt>{tell(`life.money.${id}`)}</dt>
      <dd>{printMoney(amount, reader.locale)}</dd>
      {aside === '' ? null : <dd className="aside">{aside}</dd>}
    </div>
  )
  const sinceWhen =
    since === null
      ? ''
      : tell('life.money.since', {
          ...{ event: tell(`life.event.${since.when}`), day: printDate(since.day, reader.locale) },
        })
  return (
    <>
      <dl className="sums">
        {figure('agreed', agreed)}
        {figure('paid', paid)}
        {cancelled && due.minor === 0 ? null : figure('due', due, sinceWhen)}
        {cancelled ? null : figure('owed', owed)}
        {over.minor > 0 ? figure('over', over) : null}
      </dl>
      {cancelled ? <p>{settled(ifCancelled)}</p> : null}
    </>
  )
}

function Parts({ parts }: { parts: MoneyOf['parts'] }) {
  const { reader } = useHouse()
  const tell = useTell()
  const money = (amount: Amount) => printMoney(amount, reader.locale)
  return (
    <table className="lines ledger">
      <caption>{tell('life.money.parts')}</caption>
      <thead>
        <tr>
          <th scope="col">{tell('life.money.part')}</th>
          <th scope="col" className="amount">
            {tell('life.money.amount')}
          </th>
          <th scope="col" className="amount">
            {tell('life.money.paid')}
          </th>
          <th scope="col" className="amount">
            {tell('life.money.left')}
          </th>
          <td />
        </tr>
      </thead>
      <tbody>
        {parts.map(({ when, amount, paid, left, since }) => (
          <tr key={when}>
            <th scope="row">{tell(`life.event.${when}`)}</th>
            <td className="amount">{money(amount)}</td>
            <td className="amount">{money(paid)}</td>
            <td className="amount">{money(left)}</td>
            <td className={since === null || left.minor <= 0 ? 'quiet' : since < todayHere() ? 'under' : ''}>
              {left.minor <= 0
                ? tell('life.money.settled')
                : since === null
                  ? tell('life.money.notDue')
                  : since < todayHere()
                    ? tell('life.money.dueSince', { day: { date: since } })
                    : tell('life.money.dueNow')}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
