import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { useHouse, useTell } from '../workroom.tsx'

/** A commission in the plan: when it will be done by what odds, and why not sooner. */
export type Planned = OutputOf<'plan.show'>['commissions'][number]

/** By when a commission is to be done, if anybody has said. */
export const dueOf = ({ dueDay, eventDay }: Planned): string | null => dueDay ?? eventDay

/** Whether it misses its day by plan, or can never be done at all. */
export const isLate = ({ late, never }: Planned): boolean => (late !== null && late > 0) || never.length > 0

/** Why a commission is late, in one clause; days stand with each reason only where there are several. */
export function useSaidReasons(): (one: Planned) => string {
  const { reader } = useHouse()
  const tell = useTell()
  return ({ reasons, never }) => {
    if (never.length > 0) return never.map((why) => say(why, reader)).join('; ')
    return reasons
      .map(({ why, days }) =>
        reasons.length === 1
          ? say(why, reader)
          : tell(days === 1 ? 'weeks.reason.one' : 'weeks.reason.days', { why, days }),
      )
      .join('; ')
  }
}

/** Says of a day that was promised that nobody is there on it, with the word for it; nothing of any other. */
export function useSaidDayOff(): (day: string | null, dayOff: string | null) => string {
  const tell = useTell()
  return (day, dayOff) => {
    if (day === null || dayOff === null) return ''
    return dayOff === ''
      ? tell('weeks.dayOff', { day: { date: day } })
      : tell('weeks.dayOff.note', { day: { date: day }, note: dayOff })
  }
}
