import { Fragment } from 'react'
import { printMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { useForWhom } from '../parts/for-whom.ts'
import { addressOf } from '../router.ts'
import { settingAt } from '../settings/place.ts'
import { useHouse, useTell } from '../workroom.tsx'
import { Earned } from './earned.tsx'

type All = OutputOf<'accounts.list'>
type Bad = All['badlyPaid']['worst'][number]
type Advice = All['advice'][number]

/** What was badly paid and why, and what all of it says should be changed, each with the way to it. */
export function WhatToChange({ all }: { all: All }) {
  const tell = useTell()
  const { together, badlyPaid, advice } = all
  return (
    <section className="sheet stack">
      <h2>{tell('times.accounts.advice')}</h2>
      {badlyPaid.worst.length === 0 ? null : <BadlyPaid all={all} />}
      {advice.map((one) => (
        <Advised key={one.code} one={one} />
      ))}
      {together.known === 0 ? (
        <p>{tell('times.advice.nothing')}</p>
      ) : advice.length + badlyPaid.all > 0 ? null : (
        <p>
          {tell('times.accounts.noAdvice')} {together.known === 1 ? tell('times.advice.little') : ''}
        </p>
      )}
    </section>
  )
}

/** Where that is changed which advice speaks of. */
function wayOf({ code }: Advice) {
  switch (code) {
    case 'plan.advice.moreCloth':
    case 'plan.advice.lessCloth':
      return { words: 'times.bad.to.cloth', href: settingAt('clothMargin') } as const
    case 'plan.advice.raise':
      return { words: 'times.bad.to.rates', href: settingAt('money') } as const
    default:
      return { words: 'times.advice.to.hours', href: addressOf('workroom', 'times') } as const
  }
}

function Advised({ one }: { one: Advice }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { words, href } = wayOf(one)
  return (
    <p>
      {say(one, reader)}{' '}
      {one.code === 'plan.advice.step' ? null : (
        <span className="quiet">
          {tell(one.restsOn === 1 ? 'times.advice.one' : 'times.advice.several', { count: one.restsOn })}
        </span>
      )}{' '}
      <a href={href}>{tell(words)}</a>
      {one.commissionId === undefined ? null : (
        <>
          {' · '}
          <a href={addressOf('commissions', one.commissionId)}>{tell('times.bad.to.hours')}</a>
        </>
      )}
    </p>
  )
}

const HEADS = ['asked', 'reckoned', 'floor', 'hoursQuoted', 'hoursActual'] as const

/** What was reckoned gives way in the narrowest window: the commission's own account has it. */
const classOf = (head: (typeof HEADS)[number]) =>
  head === 'reckoned' || head === 'hoursQuoted' ? 'amount not-narrow' : 'amount'

/** The worst paid, each with its figures in a line and the reasons beneath. */
function BadlyPaid({ all: { badlyPaid, targetPerHour } }: { all: All }) {
  const tell = useTell()
  const more = badlyPaid.all - badlyPaid.worst.length
  return (
    <>
      <table className="lines bad">
        <thead>
          <tr>
            <th scope="col">{tell('times.bad.title')}</th>
            {HEADS.map((head) => (
              <th key={head} scope="col" className={classOf(head)}>
                {tell(`times.bad.${head}`)}
              </th>
            ))}
            <th scope="col" className="amount">
              {tell('times.accounts.earnedActual')}
            </th>
          </tr>
        </thead>
        <tbody>
          {badlyPaid.worst.map((one) => (
            <Fragment key={one.id}>
              <Figures one={one} target={targetPerHour.minor} />
              <tr>
                <td colSpan={HEADS.length + 2}>
                  <Why one={one} />
                </td>
              </tr>
            </Fragment>
          ))}
        </tbody>
      </table>
      <p className="quiet">
        {tell('times.bad.floorAbout')} {more === 0 ? '' : tell('times.bad.more', { count: more })}
      </p>
    </>
  )
}

function Figures({ one, target }: { one: Bad; target: number }) {
  const { reader } = useHouse()
  const forWhom = useForWhom()
  const { asked, minutes } = one
  const figures = {
    asked: printMoney(asked.net, reader.locale),
    reckoned: printMoney(asked.reckoned, reader.locale),
    floor: asked.floor === null ? '–' : printMoney(asked.floor, reader.locale),
    hoursQuoted: printMinutes(minutes.quoted),
    hoursActual: printMinutes(minutes.actual),
  }
  return (
    <tr className="explained">
      <th scope="row">
        <a className="number" href={addressOf('commissions', one.id)}>
          {one.number}
        </a>{' '}
        <span className="aside">{forWhom(one.garments, one.customer)}</span>
      </th>
      {HEADS.map((head) => (
        <td key={head} className={classOf(head)}>
          {figures[head]}
        </td>
      ))}
      <Earned earned={one.earned} target={target} />
    </tr>
  )
}

/** Where that is changed, or looked at, which made a commission badly paid. */
function whereOf({ id, quoteId }: Bad, code: Bad['why'][number]['code']) {
  switch (code) {
    case 'plan.why.asked':
    case 'plan.why.set':
      return { words: 'times.bad.to.asked', href: addressOf('quotes', quoteId) } as const
    case 'plan.why.hours':
      return { words: 'times.bad.to.hours', href: addressOf('commissions', id) } as const
    case 'plan.why.cloth':
      return { words: 'times.bad.to.cloth', href: settingAt('clothMargin') } as const
    case 'plan.why.target':
      return { words: 'times.bad.to.target', href: settingAt('target') } as const
    default:
      return { words: 'times.bad.to.rates', href: settingAt('money') } as const
  }
}

function Why({ one }: { one: Bad }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { overrun } = one
  return (
    <>
      {one.why.map((why) => {
        const { words, href } = whereOf(one, why.code)
        return (
          <p key={why.code}>
            {say(why, reader)} <a href={href}>{tell(words)}</a>
          </p>
        )
      })}
      <p>
        {overrun === null
          ? tell('times.bad.noStep')
          : tell('times.bad.step', {
              step: overrun.step,
              ...{ quoted: { minutes: overrun.quoted }, actual: { minutes: overrun.actual } },
            })}
      </p>
    </>
  )
}
