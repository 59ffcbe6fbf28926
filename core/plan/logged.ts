import type { Logged } from '../sew/pace/learn.ts'
import { entriesOf, sumWork, type Work } from '../sew/work.ts'
import { type Day, daysBetween } from '../words/dates.ts'

/** A time as it was logged, and whether it is to be left out of the learning. */
export type Spent = { id: string; day: Day; minutes: number; stepIds: readonly string[]; aside: boolean }
export type SpentOn = { work: Work; done: boolean }

/** Logged times that belong together: all that was spent on some steps, and the last day of it. */
export type Together = { times: Spent[]; stepIds: string[]; minutes: number; day: Day }

/** Times that share a step, directly or by way of others: only together do they say what the steps took. */
export function togetherOf(times: readonly Spent[]): Together[] {
  const groups: Together[] = []
  for (const time of times) {
    const met = groups.filter(({ stepIds }) => time.stepIds.some((id) => stepIds.includes(id)))
    for (const group of met) groups.splice(groups.indexOf(group), 1)
    const all = [...met.flatMap((group) => group.times), time]
    groups.push({
      times: all,
      stepIds: [...new Set(all.flatMap(({ stepIds }) => stepIds))],
      minutes: all.reduce((sum, { minutes }) => sum + minutes, 0),
      day: all
        .map(({ day }) => day)
        .sort()
        .at(-1)!,
    })
  }
  return groups
}

/**
 * What logged times can teach: those of steps that are done, with nothing among them that was put aside. The id of
 * each is that of its first time.
 */
export function loggedOf(
  times: readonly Spent[],
  steps: ReadonlyMap<string, SpentOn>,
  today: Day,
): (Logged & { of: Together })[] {
  return togetherOf(times).flatMap((group) => {
    const on = group.stepIds.map((id) => steps.get(id)!)
    if (group.times.some(({ aside }) => aside) || on.some(({ done }) => !done)) return []
    const works = on.map(({ work }) => work)
    if (entriesOf(sumWork(works)).length === 0) return []
    const { minutes, day } = group
    return [{ id: group.times[0]!.id, minutes, daysAgo: daysBetween(day, today), steps: works, of: group }]
  })
}

/** What was spent on each step: a time on several of them is shared out by their standard minutes. */
export function spentByStep(
  times: readonly Spent[],
  steps: ReadonlyMap<string, Pick<SpentOn, 'work'>>,
): Map<string, number> {
  const spent = new Map<string, number>()
  for (const { minutes, stepIds } of times) {
    const standard = stepIds.map((id) =>
      entriesOf(steps.get(id)?.work ?? {}).reduce((sum, [, one]) => sum + one, 0),
    )
    const all = standard.reduce((sum, one) => sum + one, 0)
    stepIds.forEach((id, i) => {
      const part = all > 0 ? standard[i]! / all : 1 / stepIds.length
      spent.set(id, (spent.get(id) ?? 0) + minutes * part)
    })
  }
  return spent
}
