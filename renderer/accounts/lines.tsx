import { printMoney } from '../../core/words/money.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { useHouse, useTell } from '../workroom.tsx'
import { Earned } from './earned.tsx'

/** Figures of some garments, added up. */
export type Together = OutputOf<'accounts.list'>['together']
/** A line of a list of them; `aside` and a day stand behind its name. */
export type Line = {
  id: string
  name: string
  aside?: string
  day?: string
  href?: string
  together: Together
}

const HEADS = ['price', 'left', 'hoursQuoted', 'hoursActual', 'earnedQuoted', 'earnedActual'] as const
type Head = (typeof HEADS)[number]

/** What was quoted gives way where there is little room: each commission's own account has it. */
const classOf = (head: Head) => (head.endsWith('Quoted') ? 'amount wide-only' : 'amount')

type Props = { lines: readonly Line[]; column: string; target: number; counted?: boolean }

/** Figures line by line. @param target minor units @param counted how many garments, in the place of what was quoted an hour */
export function Lines({ lines, column, target, counted = false }: Props) {
  const { reader } = useHouse()
  const tell = useTell()
  const heads = counted ? HEADS.filter((head) => head !== 'earnedQuoted') : HEADS
  return (
    <table className="lines">
      <thead>
        <tr>
          <th scope="col">{column}</th>
          {counted ? (
            <th scope="col" className="amount">
              {tell('times.accounts.count')}
            </th>
          ) : null}
          {heads.map((head) => (
            <th key={head} scope="col" className={classOf(head)}>
              {tell(`times.accounts.${head}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {lines.map(({ id, name, aside, day, href, together }) => {
          const { garments, known, net, left, minutes, perHour } = together
          const figures: Record<Exclude<Head, 'earnedActual'>, string> = {
            price: printMoney(net, reader.locale),
            left: printMoney(left, reader.locale),
            hoursQuoted: printMinutes(minutes.quoted),
            hoursActual: printMinutes(minutes.actual),
            earnedQuoted: printMoney(perHour.quoted, reader.locale),
          }
          return (
            <tr key={id}>
              <th scope="row">
                {href === undefined ? (
                  name
                ) : (
                  <a className={counted ? undefined : 'number'} href={href}>
                    {name}
                  </a>
                )}
                {aside === undefined ? null : <span className="aside"> {aside}</span>}
                {day === undefined ? null : <span className="quiet aside number"> {day}</span>}
              </th>
              {counted ? <td className="amount">{garments}</td> : null}
              {known === 0 ? (
                <>
                  <td className="amount">{figures.price}</td>
                  <td className="amount quiet" colSpan={heads.length - 1}>
                    {tell('times.account.notLogged')}
                  </td>
                </>
              ) : (
                heads.map((head) =>
                  head === 'earnedActual' ? (
                    <Earned key={head} earned={perHour.actual} target={target} />
                  ) : (
                    <td key={head} className={classOf(head)}>
                      {figures[head]}
                    </td>
                  ),
                )
              )}
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
