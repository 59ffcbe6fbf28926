import { type Money, printMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { useHouse, useTell } from '../workroom.tsx'
import { AccountHead } from './account-head.tsx'
import { type Followed, stepsWithoutTime, type Time, useGarmentNames } from './logged.ts'
import { Took } from './took.tsx'

/** Quoted against actual of a commission, and of one garment: money in minor units, cloth mm, times minutes. */
export type Accounts = OutputOf<'commission.account'>
export type GarmentAccount = Accounts['garments'][number]
type Figure<T> = { quoted: T; actual: T | null }

type Props = {
  commission: Followed
  accounts: Accounts
  times: readonly Time[]
  onWritten: () => void
}

/** Quoted against actual, garment by garment, with fields for what only the maker knows. */
export function Account({ commission, accounts, times, onWritten }: Props) {
  const tell = useTell()
  const nameOf = useGarmentNames(commission)
  const { garments, together, sums } = accounts
  return (
    <div className="stack">
      <AskedFor {...accounts} />
      {garments.map((one, i) => {
        const garment = commission.garments[i]!
        const { steps } = garment
        const missing = stepsWithoutTime(times, garment)
        return (
          <section key={one.id} className="stack">
            {garments.length === 1 ? null : <h3>{nameOf(garment)}</h3>}
            <MoneyTable
              of={{ ...one.account, costs: one.costs }}
              minutes={one.account.minutes}
              perHour={one.account.perHour}
            />
            <MaterialsTable one={one} />
            <StepTable one={one} />
            {missing === 0 || missing === steps.length ? null : (
              <p>{tell('times.account.missing', { all: steps.length, count: missing })}</p>
            )}
            <Took one={one} name={nameOf(garment)} onWritten={onWritten} />
          </section>
        )
      })}
      {garments.length === 1 || together.known === 0 ? null : (
        <section className="stack">
          <h3>{tell('times.account.together')}</h3>
          <MoneyTable of={sums} minutes={together.minutes} perHour={together.perHour} />
        </section>
      )}
      <p className="quiet">{tell('times.account.around')}</p>
    </div>
  )
}

/** Where the money was lost or won is seen by these at once: what was asked, what was reckoned, the floor, and an hour of it. */
function AskedFor({ asked, together }: Pick<Accounts, 'asked' | 'together'>) {
  const { reader } = useHouse()
  const tell = useTell()
  const { net, reckoned, floor } = asked
  const below = floor !== null && net.minor < floor.minor
  const figures = [
    { id: 'asked', amount: net, under: below },
    { id: 'reckoned', amount: reckoned, under: false },
    ...(floor === null ? [] : [{ id: 'floor', amount: floor, under: false } as const]),
  ] as const
  return (
    <dl className="sums">
      {figures.map(({ id, amount, under }) => (
        <div key={id}>
          <dt>{tell(`times.bad.${id}`)}</dt>
          <dd>{printMoney(amount, reader.locale)}</dd>
          {under ? <dd className="aside under">{tell('times.asked.below')}</dd> : null}
        </div>
      ))}
      {together.known === 0 ? null : (
        <div>
          <dt>{tell('times.accounts.earned')}</dt>
          <dd>{printMoney(together.perHour.actual, reader.locale)}</dd>
        </div>
      )}
    </dl>
  )
}

type MoneyProps = {
  of: Pick<Accounts['sums'], 'net' | 'costs'> & { left: Figure<Money> }
  minutes: Figure<number>
  perHour: Figure<Money>
}

/** From the price down to what an hour earned, each cost in its line. */
function MoneyTable({ of: { net, costs, left }, minutes, perHour }: MoneyProps) {
  const { reader } = useHouse()
  const money = (of: Money) => printMoney(of, reader.locale)
  return (
    <Rows
      rows={[
        { ...moneyRow('net', { quoted: net, actual: net }, money), more: null },
        ...costs.map((cost) => moneyRow(cost.id, cost, money)),
        moneyRow('left', left, money),
        row('hours', minutes, printMinutes, 'notLogged'),
        moneyRow('perHour', perHour, money),
      ]}
    />
  )
}

function MaterialsTable({ one: { account } }: { one: GarmentAccount }) {
  const { reader } = useHouse()
  const tell = useTell()
  const length = (mm: number) => say({ code: 'paper.plain', params: { text: { mm } } }, reader)
  const metres = (of: number) => tell('times.account.metres', { metres: Math.round(of) })
  const threads = (['handThread', 'machineThread'] as const).filter((id) => isUsed(account[id]))
  return (
    <Rows
      title={tell('times.cost.measured')}
      rows={[
        row('ownCloth', account.cloth, length, 'notWritten'),
        ...threads.map((id) => row(id, account[id], metres, 'notWritten')),
      ]}
    />
  )
}

/** Each step as it was quoted and as it came out, the one that ran over most marked. */
function StepTable({ one: { steps, account } }: { one: GarmentAccount }) {
  const { reader } = useHouse()
  const tell = useTell()
  if (steps.every(({ actual }) => actual === null)) return null
  const most = over(account) ?? 0
  // What ran over by less than a quarter of an hour is no reason for anything.
  const worst =
    most < NOTABLE
      ? undefined
      : steps.find(({ quoted, actual }) => actual !== null && actual - quoted === most)
  return (
    <details>
      <summary>{tell('times.account.steps')}</summary>
      <table className="lines">
        <thead>
          <tr>
            <th scope="col">{tell('times.account.step')}</th>
            <th scope="col" className="amount">
              {tell('times.account.quoted')}
            </th>
            <th scope="col" className="amount">
              {tell('times.account.actual')}
            </th>
            <td />
          </tr>
        </thead>
        <tbody>
          {steps.map((step) => (
            <tr key={step.id}>
              <th scope="row">{say(step.name, reader)}</th>
              <td className="amount">{printMinutes(step.quoted)}</td>
              <td className="amount">
                {step.actual === null ? (
                  <span className="quiet">{tell('times.account.notLogged')}</span>
                ) : (
                  printMinutes(step.actual)
                )}
              </td>
              <td>
                {step === worst ? <span className="under">▾ {tell('times.account.worst')}</span> : null}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  )
}

/** A step that ran over by less is not marked, minutes. */
const NOTABLE = 15

/** By how much the step ran over that did most, minutes. */
const over = ({ overrun }: GarmentAccount['account']): number | undefined =>
  overrun === undefined || overrun === null ? undefined : overrun.actual - overrun.quoted

/** Thread of a kind that a garment has nothing of is not spoken of. */
export const isUsed = ({ quoted, actual }: Figure<number>): boolean => quoted > 0 || actual !== null

const SUBJECTS = {
  net: 'times.cost.net',
  cloth: 'times.cost.cloth',
  thread: 'times.cost.thread',
  notion: 'times.cost.notion',
  workroom: 'times.cost.workroom',
  left: 'times.cost.left',
  hours: 'times.account.hours',
  perHour: 'times.account.perHour',
  ownCloth: 'times.account.cloth',
  handThread: 'times.account.handThread',
  machineThread: 'times.account.machineThread',
} as const
type Subject = keyof typeof SUBJECTS
/** Lines that stand under a sum. */
const SUMS: readonly Subject[] = ['left', 'perHour']

type Row = {
  subject: Subject
  quoted: string
  actual: string | null
  more: number | null
  none: 'notWritten' | 'notLogged'
}

function row(
  subject: Subject,
  { quoted, actual }: Figure<number>,
  print: (of: number) => string,
  none: Row['none'],
): Row {
  const more = actual === null || quoted === 0 ? null : actual / quoted - 1
  return { subject, quoted: print(quoted), actual: actual === null ? null : print(actual), more, none }
}

function moneyRow(
  subject: Subject,
  { quoted, actual }: Figure<Money>,
  print: (of: Money) => string,
  none: Row['none'] = 'notLogged',
): Row {
  const more = actual === null || quoted.minor <= 0 ? null : actual.minor / quoted.minor - 1
  return { subject, quoted: print(quoted), actual: actual === null ? null : print(actual), more, none }
}

function Rows({ rows, title }: { rows: readonly Row[]; title?: string }) {
  const tell = useTell()
  const difference = (more: number) => {
    const percent = Math.round(Math.abs(100 * more))
    return percent === 0
      ? tell('times.account.same')
      : tell(more > 0 ? 'times.account.more' : 'times.account.less', { percent })
  }
  return (
    <table className="account">
      <AccountHead difference title={title} />
      <tbody>
        {rows.map(({ subject, quoted, actual, more, none }) => (
          <tr key={subject} className={SUMS.includes(subject) ? 'account-end' : ''}>
            <th scope="row">{tell(SUBJECTS[subject])}</th>
            <td className="amount">{quoted}</td>
            <td className="amount">
              {actual ?? <span className="quiet">{tell(`times.account.${none}`)}</span>}
            </td>
            <td className="amount quiet">{more === null ? '' : difference(more)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
