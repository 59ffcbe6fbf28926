import { Fragment } from 'react'
import { printDayShort } from '../../core/words/dates.ts'
import { useForWhom } from '../parts/for-whom.ts'
import { addressOf } from '../router.ts'
import { useHouse, useTell } from '../workroom.tsx'
import { dueOf, isLate, type Planned, useSaidDayOff, useSaidReasons } from './reasons.ts'

/** The days of every open commission, and why one is late. */
export function PlanTable({ planned }: { planned: readonly Planned[] }) {
  const { reader } = useHouse()
  const tell = useTell()
  const forWhom = useForWhom()
  const saidReasons = useSaidReasons()
  const saidDayOff = useSaidDayOff()
  const lateBy = useLateBy()
  const heads = ['due', 'finish', 'p50', 'p80', 'start', 'late'] as const
  const day = (of: string | null, otherwise = '–') => (
    <td className="figure">{of === null ? otherwise : printDayShort(of, reader.locale)}</td>
  )
  return (
    <table className="lines plan-table">
      <thead>
        <tr>
          <th scope="col">{tell('paper.fact.commission')}</th>
          {heads.map((head) => (
            <th key={head} scope="col">
              {tell(`weeks.${head}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {planned.map((one) => {
          const why = saidReasons(one)
          const more = [
            why === '' ? '' : tell('weeks.why', { why }),
            saidDayOff(one.dueDay, one.dayOff),
          ].filter((text) => text !== '')
          return (
            <Fragment key={one.id}>
              <tr className={more.length === 0 ? '' : 'explained'}>
                <th scope="row">
                  <a href={addressOf('commissions', one.id)}>{one.number}</a>{' '}
                  {forWhom(one.garments, one.customer)}
                </th>
                {day(dueOf(one), tell('weeks.due.none'))}
                {day(one.finish, tell('weeks.never'))}
                {day(one.p50)}
                {day(one.p80)}
                {day(one.latestStart)}
                <td>{isLate(one) ? <strong className="under">{lateBy(one)}</strong> : lateBy(one)}</td>
              </tr>
              {more.length === 0 ? null : (
                <tr>
                  <td colSpan={heads.length + 1}>{more.join(' ')}</td>
                </tr>
              )}
            </Fragment>
          )
        })}
      </tbody>
    </table>
  )
}

/** By how much a commission is late, or how sure it is not to be. */
function useLateBy(): (one: Planned) => string {
  const tell = useTell()
  return (one) => {
    const due = dueOf(one)
    const late = one.late ?? 0
    if (one.never.length > 0) return tell('weeks.never')
    if (isLate(one)) return tell(late === 1 ? 'weeks.late.one' : 'weeks.late.days', { days: late })
    if (due === null) return '–'
    return tell(one.p80 !== null && one.p80 > due ? 'weeks.late.perhaps' : 'weeks.late.no')
  }
}
