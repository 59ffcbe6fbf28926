import { printDayShort } from '../../core/words/dates.ts'
import { type Money, printMoney } from '../../core/words/money.ts'
import { printMonth } from '../../core/words/period.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Earned } from '../accounts/earned.tsx'
import { type Line, Lines, type Together } from '../accounts/lines.tsx'
import { OnTheTable } from '../accounts/on-the-table.tsx'
import { Owed } from '../accounts/owed.tsx'
import { WhatToChange } from '../accounts/what-to-change.tsx'
import { AccountHead } from '../commission/account-head.tsx'
import { asked, PeriodFields, usePeriod } from '../commission/period.tsx'
import { useForWhom } from '../parts/for-whom.ts'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { todayHere } from '../parts/today.ts'
import { addressOf } from '../router.ts'
import { useHouse, useKept, useQuery, useTell } from '../workroom.tsx'

type All = OutputOf<'accounts.list'>

/** What delivered work came to: what was left of it, what to change, and the figures both rest on. */
export function WhatItCameTo() {
  const tell = useTell()
  const ever = useQuery('accounts.list', {})
  return (
    <div className="stack">
      <h1>{tell('times.accounts.title')}</h1>
      <Refusal sentence={ever.refused} />
      {ever.value === undefined ? null : ever.value.commissions.length === 0 ? (
        <div className="stack narrow">
          <p>{tell('times.accounts.none')}</p>
          <p>{tell('times.accounts.none.then')}</p>
          <OnTheTable ever work={ever.value.onTheTable} />
        </div>
      ) : (
        <OfPeriod months={ever.value.months.map(({ month }) => month)} />
      )}
    </div>
  )
}

/** The figures of the time that is chosen: until another is, of the month of the last delivery. */
function OfPeriod({ months }: { months: readonly string[] }) {
  const tell = useTell()
  const [period, setPeriod] = usePeriod(months[0]!, todayHere())
  const { value, refused } = useQuery('accounts.list', asked(period, todayHere()))
  return (
    <>
      <PeriodFields {...{ period, months }} onChange={setPeriod} />
      <Refusal sentence={refused} />
      {value === undefined ? null : value.commissions.length === 0 ? (
        <>
          <p>{tell('period.none')}</p>
          <OnTheTable work={value.onTheTable} ever={period.id === 'all'} />
        </>
      ) : (
        <Figures all={value} ever={period.id === 'all'} />
      )}
    </>
  )
}

function Figures({ all, ever }: { all: All; ever: boolean }) {
  const { reader } = useHouse()
  const tell = useTell()
  const forWhom = useForWhom()
  const [worst, setWorst] = useKept('worst first', false)
  const { together, targetPerHour } = all
  const lines = (of: readonly Line[], column: string, counted = true) => (
    <Lines lines={of} {...{ column, counted }} target={targetPerHour.minor} />
  )
  const perHour = ({ together: { known, perHour } }: { together: Together }) =>
    known === 0 ? Number.POSITIVE_INFINITY : perHour.actual.minor
  const commissions = worst ? [...all.commissions].sort((a, b) => perHour(a) - perHour(b)) : all.commissions
  return (
    <>
      <section className="sheet stack">
        <h2>{tell('times.accounts.together')}</h2>
        {together.known === 0 ? null : (
          <>
            <Sums together={together} />
            <TogetherTable together={together} target={targetPerHour.minor} />
          </>
        )}
        <p className="quiet">
          <Known together={together} /> {tell('times.accounts.target', { target: targetPerHour })}
        </p>
        <Owed owed={all.owed} />
        <OnTheTable work={all.onTheTable} ever={ever} />
      </section>
      <WhatToChange all={all} />
      <section className="sheet stack">
        <div className="between">
          <h2>{tell('times.accounts.byCommission')}</h2>
          {commissions.length < 2 ? null : (
            <Tick wanted name={tell('times.accounts.worstFirst')} done={worst} onChange={setWorst} />
          )}
        </div>
        {lines(
          commissions.map(({ id, number, customer, garments, deliveredDay, together }) => ({
            ...{ id, together, name: number, href: addressOf('commissions', id) },
            aside: forWhom(garments, customer),
            ...(deliveredDay === null ? {} : { day: printDayShort(deliveredDay, reader.locale) }),
          })),
          tell('paper.fact.commission'),
          false,
        )}
      </section>
      {all.months.length < 2 ? null : (
        <section className="sheet stack">
          <h2>{tell('times.accounts.byMonth')}</h2>
          {lines(
            all.months.map(({ month, together }) => ({
              ...{ id: month, name: printMonth(month, reader.locale), together },
            })),
            tell('times.accounts.month'),
          )}
        </section>
      )}
      <section className="sheet stack">
        <h2>{tell('times.accounts.byConstruction')}</h2>
        {lines(
          all.constructions.map(({ id, title, together }) => ({ id, name: say(title, reader), together })),
          tell('screen.commission.garment'),
        )}
      </section>
      <section className="sheet stack">
        <h2>{tell('times.accounts.byClient')}</h2>
        {lines(
          [...all.clients]
            .sort((a, b) => b.together.net.minor - a.together.net.minor)
            .map(({ id, name, together }) => ({ id, name, together, href: addressOf('clients', id) })),
          tell('times.accounts.client'),
        )}
      </section>
    </>
  )
}

/** Of how many garments the hours are known. */
function Known({ together: { known, garments, inPart: part } }: { together: Together }) {
  const tell = useTell()
  if (garments === 1)
    return tell(known === 0 ? 'times.known.none' : part === 0 ? 'times.known.one' : 'times.known.onePart')
  if (part > 0) return tell('times.accounts.knownInPart', { known, garments, part })
  return tell(known === garments ? 'times.known.all' : 'times.accounts.known', { known, garments })
}

/** Where the money of it went, and what was left for how many hours. */
function Sums({ together: { knownNet, costs, left, minutes, perHour } }: { together: Together }) {
  const { reader } = useHouse()
  const tell = useTell()
  const money = (of: Money) => printMoney(of, reader.locale)
  const sums = [
    ['price', money(knownNet)],
    ['costs', money(costs)],
    ['left', money(left)],
    ['hours', printMinutes(minutes.actual)],
    ['perHour', money(perHour.actual)],
  ] as const
  return (
    <dl className="sums">
      {sums.map(([id, figure]) => (
        <div key={id}>
          <dt>{tell(`times.accounts.sums.${id}`)}</dt>
          <dd>{figure}</dd>
        </div>
      ))}
    </dl>
  )
}

function TogetherTable({ together: { minutes, perHour }, target }: { together: Together; target: number }) {
  const { reader } = useHouse()
  const tell = useTell()
  return (
    <table className="account">
      <AccountHead />
      <tbody>
        <tr>
          <th scope="row">{tell('times.accounts.hours')}</th>
          <td className="amount">{printMinutes(minutes.quoted)}</td>
          <td className="amount">{printMinutes(minutes.actual)}</td>
        </tr>
        <tr>
          <th scope="row">{tell('times.accounts.earned')}</th>
          <td className="amount">{printMoney(perHour.quoted, reader.locale)}</td>
          <Earned earned={perHour.actual} target={target} />
        </tr>
      </tbody>
    </table>
  )
}
