import type { Base, Job } from '../../core/plan/schedule/types.ts'
import { type Day, dayNumber, dayOfNumber } from '../../core/words/dates.ts'
import { hoursOn } from './plans.ts'

type Open = { job: Job; left: number; done: { day: number; minute: number } | null }

/**
 * The workroom at work, day by day, by a list: the first jobs of it that are open and can be in hand together are in
 * hand, until one is done or somebody goes home. A second and plainer reckoning beside the planning itself.
 *
 * @param took true minutes of each job
 * @param stop the day after which to stop, what is left then of each job, and which were done
 * @returns the day each commission is done and handed over
 */
export function workedOff(
  { jobs, people, away, today }: Base,
  list: readonly string[],
  took: ReadonlyMap<string, number>,
  stop?: { until: Day; left: Map<string, number>; done: Set<string> },
): Map<string, Day> {
  const byId = new Map(
    jobs.map((job): [string, Open] => [job.id, { job, left: took.get(job.id)!, done: null }]),
  )
  const todo = list.map((id) => byId.get(id)!)
  const isOpen = ({ job }: Open, day: number) =>
    (job.release === null || dayNumber(job.release) <= day) &&
    job.after.every((id) => {
      const before = byId.get(id)
      return before === undefined || (before.done !== null && before.done.day + before.job.wait <= day)
    })
  const start = dayNumber(today)
  const last = stop === undefined ? start + 5000 : dayNumber(stop.until)
  for (let day = start; todo.length > 0 && day <= last; day++) {
    const hours = people.map((person) => hoursOn(person, away, day))
    const hand = people.map(({ handCap }) => handCap ?? 1e9)
    const can = (p: number, { job }: Open, minute: number) =>
      hours[p]! > minute + 1e-9 &&
      people[p]!.skills.includes(job.skill) &&
      (job.skill !== 'handSewing' || hand[p]! > 1e-9)
    for (let minute = 0; ; ) {
      let inHand: [p: number, one: Open][] = []
      for (const one of todo) {
        if (inHand.length === people.length) break
        if (!isOpen(one, day)) continue
        inHand =
          staffed([...inHand.map(([, other]) => other), one], (p, other) => can(p, other, minute)) ?? inHand
      }
      if (inHand.length === 0) break
      const span = Math.min(
        ...inHand.map(([p, { job, left }]) =>
          Math.min(left, hours[p]! - minute, job.skill === 'handSewing' ? hand[p]! : 1e9),
        ),
      )
      minute += span
      for (const [p, one] of inHand) {
        one.left -= span
        if (one.job.skill === 'handSewing') hand[p]! -= span
        if (one.left > 1e-9) continue
        one.done = { day, minute }
        todo.splice(todo.indexOf(one), 1)
      }
    }
  }

  /** Everybody's job when these are all in hand, by trying every way; undefined when they cannot be. */
  function staffed(
    ones: readonly Open[],
    can: (p: number, one: Open) => boolean,
    busy: readonly number[] = [],
  ): [number, Open][] | undefined {
    const [one, ...others] = ones
    if (one === undefined) return []
    for (const p of people.keys()) {
      if (busy.includes(p) || !can(p, one)) continue
      const rest = staffed(others, can, [...busy, p])
      if (rest !== undefined) return [[p, one], ...rest]
    }
    return undefined
  }

  if (stop !== undefined)
    for (const [id, { left, done }] of byId) {
      stop.left.set(id, left)
      if (done !== null) stop.done.add(id)
    }
  const followed = new Set(jobs.flatMap(({ after }) => after))
  return new Map(
    [...Map.groupBy(byId.values(), ({ job }) => job.commission)].map(([commission, own]) => [
      commission,
      dayOfNumber(
        Math.max(...own.map(({ job, done }) => (done?.day ?? 9e6) + (followed.has(job.id) ? 0 : job.wait))),
      ),
    ]),
  )
}
