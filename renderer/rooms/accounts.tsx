import { printMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { AccountHead } from '../commission/account-head.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useHouse, useQuery, useTell } from '../workroom.tsx'

type All = OutputOf<'accounts.list'>
type Together = All['together']
type Line = { id: string; name: string; href?: string; together: Together }

/** Advice comes with so many garments whose hours are known. */
const ENOUGH = 2

/** What delivered work came to: what to change first, then the figures it rests on. */
export function WhatItCameTo() {
  const tell = useTell()
  const { value, refused } = useQuery('accounts.list', {})
  return (
    <div className="stack">
      <h1>{tell('times.accounts.title')}</h1>
      <Refusal sentence={refused} />
      {value === undefined ? null : value.commissions.length === 0 ? (
        <div className="stack narrow">
          <p>{tell('times.accounts.none')}</p>
          <p>{tell('times.accounts.none.then')}</p>
        </div>
      ) : (
        <Figures all={value} />
      )}
    </div>
  )
}

function Figures({ all }: { all: All }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { together, targetPerHour, advice } = all
  const lines = (of: readonly Line[], heading: string, column: string) => (
    <section className="sheet stack">
      <h2>{heading}</h2>
      <Lines lines={of} column={column} target={targetPerHour.minor} />
    </section>
  )
  return (
    <>
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
        <h2>{tell('times.accounts.together')}</h2>
        {together.known === 0 ? null : <TogetherTable together={together} target={targetPerHour.minor} />}
        <p className="quiet">
          {tell('times.accounts.known', { known: together.known, garments: together.garments })}{' '}
          {tell('times.accounts.target', { target: targetPerHour })}
        </p>
      </section>
      {lines(
        all.constructions.map(({ id, title, together }) => ({ id, name: say(title, reader), together })),
        tell('times.accounts.byConstruction'),
        tell('screen.commission.garment'),
      )}
      {lines(
        all.clients.map(({ id, name, together }) => ({
          ...{ id, name, together, href: addressOf('clients', id) },
        })),
        tell('times.accounts.byClient'),
        tell('times.accounts.client'),
      )}
      {lines(
        [...all.commissions].reverse().map(({ id, number, customer, together }) => ({
          ...{ id, together, href: addressOf('commissions', id) },
          name: tell('times.accounts.commissionFor', { number, customer }),
        })),
        tell('times.accounts.byCommission'),
        tell('paper.fact.commission'),
      )}
    </>
  )
}

type Under = { target: number }

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
          <td className={perHour.actual.minor < target ? 'amount under' : 'amount'}>
            {printMoney(perHour.actual, reader.locale)}
          </td>
        </tr>
      </tbody>
    </table>
  )
}

function Lines({ lines, column, target }: { lines: readonly Line[]; column: string } & Under) {
  const { reader } = useHouse()
  const tell = useTell()
  const heads = ['count', 'price', 'hoursQuoted', 'hoursActual', 'earnedQuoted', 'earnedActual'] as const
  return (
    <table className="lines">
      <thead>
        <tr>
          <th scope="col">{column}</th>
          {heads.map((head) => (
            <th key={head} scope="col" className="amount">
              {tell(`times.accounts.${head}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {lines.map(({ id, name, href, together: { garments, known, net, minutes, perHour } }) => {
          const figures =
            known === 0
              ? null
              : [
                  printMinutes(minutes.quoted),
                  printMinutes(minutes.actual),
                  printMoney(perHour.quoted, reader.locale),
                ]
          return (
            <tr key={id}>
              <th scope="row">{href === undefined ? name : <a href={href}>{name}</a>}</th>
              <td className="amount">{garments}</td>
              <td className="amount">{printMoney(net, reader.locale)}</td>
              {figures === null ? (
                <td className="amount quiet" colSpan={4}>
                  {tell('times.account.notLogged')}
                </td>
              ) : (
                <>
                  {figures.map((figure, i) => (
                    <td key={heads[i + 2]} className="amount">
                      {figure}
                    </td>
                  ))}
                  <td className={perHour.actual.minor < target ? 'amount under' : 'amount'}>
                    {printMoney(perHour.actual, reader.locale)}
                  </td>
                </>
              )}
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
