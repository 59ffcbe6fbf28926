import { jobsOf } from '../plan/jobs.ts'
import { finishOdds } from '../plan/schedule/odds.ts'
import { promiseDay } from '../plan/schedule/promise.ts'
import type { Base, Job } from '../plan/schedule/types.ts'
import { plannedSteps } from '../plan/steps.ts'
import { answerBy } from '../quote/answer.ts'
import type { QuoteLine } from '../quote/types.ts'
import { addDays, type Day } from '../words/dates.ts'
import { daysToComeOf, type Whereabouts, whereaboutsOf } from './cloth-states.ts'
import { needsOn } from './needs.ts'
import { baseOf } from './open-work.ts'
import { paceOf } from './pace.ts'
import type { Context } from './request.ts'
import { settingsOf } from './settings.ts'

/** A garment that is not accepted yet, as it is reckoned. */
type New = Pick<QuoteLine, 'cloth' | 'estimate' | 'others'> & { id?: string; quantity?: number }

/** A day that can be named, and what it rests on; the day is null if the work is never done. */
type ReadyBy = {
  day: Day | null
  /** The last day on which a yes keeps it. */
  answerBy: Day
  /** When the cloth is there, ordered on that day; that day itself where the shelf has it. */
  clothThere: Day
  /** Where its cloth is now. */
  cloth: Whereabouts
}

/**
 * The same with a day for work that has none: the one by which it is done four times in five as things are. Nothing that
 * was accepted is put off by a new promise, whether a day was named for it or not.
 */
export function datedBase(context: Context): Base {
  const base = baseOf(context)
  const days = new Map(finishOdds(base, paceOf(context)).map(({ commission, p80 }) => [commission, p80]))
  return {
    ...base,
    jobs: base.jobs.map((job) => ({ ...job, due: job.due ?? days.get(job.commission) ?? null })),
  }
}

/** The jobs of garments that are not accepted yet, from the day of the yes, on which what cloth is missing is ordered. */
export function newJobs(lines: readonly New[], yes: Day, context: Context): Job[] {
  const daysToCome = daysToComeOf(context)
  const pace = paceOf(context)
  return lines.flatMap((line) => {
    const { estimate, quantity = 1, id = 'new' } = line
    const steps = plannedSteps(estimate)
    const there = addDays(yes, daysToCome(needsOn(id, line), yes))
    return Array.from({ length: quantity }, (_, copy) =>
      jobsOf(
        [
          {
            ...{ id: `${id}-${copy}`, commission: 'new', due: null, cloth: there, fitting: null },
            steps: steps.map((step) => ({ ...step, id: `${id}-${copy}-${step.key}` })),
          },
        ],
        pace,
      ),
    ).flat()
  })
}

/** The day that can be named for garments that are accepted today; null if they are never done. */
export function readyIfAccepted(lines: readonly New[], context: Context): Day | null {
  const base = datedBase(context)
  return promiseDay(base, newJobs(lines, base.today, context), paceOf(context))
}

/**
 * Names the day that can be promised for the garments of an order together, by what is known of all open work: kept though the
 * yes comes on the last day that keeps it, and cloth that is not here is ordered only then.
 */
export function promiserOf(context: Context): (lines: readonly New[]) => ReadyBy {
  const base = datedBase(context)
  const pace = paceOf(context)
  const whereabouts = whereaboutsOf(context)
  const yes = answerBy(base.today, addDays(base.today, settingsOf(context).validityDays))
  return (lines) => {
    const jobs = newJobs(lines, yes, context)
    const needs = lines.flatMap((line) => needsOn(line.id ?? 'new', line))
    const there = jobs.flatMap(({ release }) => (release === null ? [] : [release]))
    return {
      day: promiseDay(base, jobs, pace),
      ...{ answerBy: yes, clothThere: there.sort().at(-1) ?? yes, cloth: whereabouts(needs) },
    }
  }
}
