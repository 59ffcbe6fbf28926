import { printDayShort } from '../../core/words/dates.ts'
import { type Money, printMoney } from '../../core/words/money.ts'
import { printMonth } from '../../core/words/period.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { AccountHead } from '../commission/account-head.tsx'
import { asked, PeriodFields, usePeriod } from '../commission/period.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { todayHere } from '../parts/today.ts'
import { addressOf } from '../router.ts'
import { useHouse, useKept, useQuery, useTell } from '../workroom.tsx'

type All = OutputOf<'accounts.list'>
type Together = All['together']
type Line = { id: string; name: string; aside?: string; href?: string; together: Together }

/** Advice comes with so many garments whose hours are known. */
const ENOUGH = 2

/** What delivered work came to: what was left of it, what to change, and the figures both rest on. */
export function WhatItCameTo() {
  const tell = useTell()
  const [period, setPeriod] = usePeriod()
  const ever = useQuery('accounts.list', {})
  const chosen = useQuery('accounts.list', asked(period, todayHere()))
  const refused = ever.refused ?? chosen.refused
  return (
    <div className="stack">
      <h1>{tell('times.accounts.title')}</h1>
      {ever.value === undefined ? null : ever.value.commissions.length === 0 ? (
        <div className="stack narrow">
          <p>{tell('times.accounts.none')}</p>
          <p>{tell('times.accounts.none.then')}</p>
        </div>
      ) : (
        <PeriodFields
          {...{ period }}
          months={ever.value.months.map(({ month }) => month)}
          onChange={setPeriod}
        />
      )}
      <Refusal sentence={refused} />
      {chosen.value === undefined || ever.value?.commissions.length === 0 ? null : chosen.value.commissions
          .length === 0 ? (
        <p>{tell('period.none')}</p>
      ) : (
        <Figures all={chosen.value} />
      )}
    </div>
  )
}

function Figures({ all }: { all: All }) {
  const { reader } = useHouse()
  const tell = useTell()
  const [worst, setWorst] = useKept('worst first', false)
  const { together, targetPerHour, advice } = all
  const lines = (of: readonly Line[], column: string) => (
    <Lines lines={of} column={column} target={targetPerHour.minor} />
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
          {tell(together.inPart === 0 ? 'times.accounts.known' : 'times.accounts.knownInPart', {
            ...{ known: together.known, garments: together.garments, part: together.inPart },
          })}{' '}
          {tell('times.accounts.target', { target: targetPerHour })}
        </p>
      </section>
      <section className="sheet stack">
        <h2>{tell('times.accounts.advice')}</h2>
        {advice.map((one) => (
          <p key={one.code}>{say(one, reader)}</p>
        ))}
        {together.known < ENOUGH ? (
          <p className="quiet">{tell('times.accounts.adviceLater')}</p>
        ) : advice.length === 0 ? (
          <p>{tell('times.accounts.noAdvice')}</p>
        ) : null}
      </section>
      <section className="sheet stack">
        <div className="between">
          <h2>{tell('times.accounts.byCommission')}</h2>
          <Tick wanted name={tell('times.accounts.worstFirst')} done={worst} onChange={setWorst} />
        </div>
        {lines(
          commissions.map(({ id, number, customer, deliveredDay, together }) => ({
            ...{ id, together, href: addressOf('commissions', id) },
            name: tell('times.accounts.commissionFor', { number, customer }),
            aside: deliveredDay === null ? '' : printDayShort(deliveredDay, reader.locale),
          })),
          tell('paper.fact.commission'),
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

type Under = { target: number }

/** What an hour earned; marked where it is less than was meant. */
function Earned({ earned, target }: { earned: Money } & Under) {
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

function TogetherTable({ together: { minutes, perHour }, target }: { together: Together } & Under) {
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

/** What was quoted gives way where there is little room: each commission's own account has it. */
const classOf = (head: string) => (head.endsWith('Quoted') ? 'amount wide-only' : 'amount')

function Lines({ lines, column, target }: { lines: readonly Line[]; column: string } & Under) {
  const { reader } = useHouse()
  const tell = useTell()
  const heads = [
    'count',
    'price',
    'left',
    'hoursQuoted',
    'hoursActual',
    'earnedQuoted',
    'earnedActual',
  ] as const
  return (
    <table className="lines">
      <thead>
        <tr>
          <th scope="col">{column}</th>
          {heads.map((head) => (
            <th key={head} scope="col" className={classOf(head)}>
              {tell(`times.accounts.${head}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {lines.map(
          ({ id, name, aside = '', href, together: { garments, known, net, left, minutes, perHour } }) => {
            const figures =
              known === 0
                ? null
                : [
                    printMoney(left, reader.locale),
                    printMinutes(minutes.quoted),
                    printMinutes(minutes.actual),
                    printMoney(perHour.quoted, reader.locale),
                  ]
            return (
              <tr key={id}>
                <th scope="row">
                  {href === undefined ? name : <a href={href}>{name}</a>}
                  {aside === '' ? null : <span className="quiet aside"> {aside}</span>}
                </th>
                <td className="amount">{garments}</td>
                <td className="amount">{printMoney(net, reader.locale)}</td>
                {figures === null ? (
                  <td className="amount quiet" colSpan={5}>
                    {tell('times.account.notLogged')}
                  </td>
                ) : (
                  <>
                    {figures.map((figure, i) => (
                      <td key={heads[i + 2]} className={classOf(heads[i + 2]!)}>
                        {figure}
                      </td>
                    ))}
                    <Earned earned={perHour.actual} target={target} />
                  </>
                )}
              </tr>
            )
          },
        )}
      </tbody>
    </table>
  )
}
