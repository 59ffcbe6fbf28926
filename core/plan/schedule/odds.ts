import type { Pace } from '../../sew/pace/pace.ts'
import type { Day } from '../../words/dates.ts'
import { calendarOf } from './calendar.ts'
import { bestCourse } from './course.ts'
import { commissionsOf, networkOf } from './network.ts'
import { finishAt, timeUntil } from './stretch.ts'
import type { Base } from './types.ts'

/** The days by which a commission is done as likely as not, and four times in five; null when it never is. */
export type FinishOdds = { commission: string; p50: Day | null; p80: Day | null }

/** When each commission is done, by the odds of the hours. All work keeps the order of the plan. */
export function finishOdds({ jobs, people, away, today }: Base, pace: Pace): FinishOdds[] {
  const calendar = calendarOf(people, away, today)
  const network = networkOf(jobs, calendar)
  const best = bestCourse(network, calendar)
  const number = new Map(jobs.map((job, i) => [job, i]))
  return [...commissionsOf(jobs)].map(([commission, own]) => {
    const numbers = own.map((job) => number.get(job)!)
    const time = timeUntil(network, best, numbers, pace)
    const at = (minutes: number) =>
      finishAt(network, calendar, best, numbers, time!.mean > 0 ? minutes / time!.mean : 1)
    const p50 = time === null ? null : at(time.p50)
    const p80 = p50 === null ? null : at(time!.p80)
    return {
      commission,
      p50: p50 === null ? null : calendar.dayOf(p50),
      // With several people more work for all can bring one thing forward (Graham 1966, from memory); its odds cannot.
      p80: p80 === null ? null : calendar.dayOf(Math.max(p50!, p80)),
    }
  })
}
