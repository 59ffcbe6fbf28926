import type { Base, Job, Person } from '../../core/plan/schedule/types.ts'
import { type Day, dayNumber, dayOfNumber, weekdayOfNumber } from '../../core/words/dates.ts'

type Doing = { job: Job; left: number; readyDay: number; readyAt: number; done: boolean }

/**
 * The workroom at work, day by day, by a list: whoever is free takes the first job of the list that is open and that she
 * can do. A second and plainer reckoning beside the planning itself. `took`: true minutes of each job.
 *
 * @returns the day each commission is done and handed over
 */
export function workedOff(
  { jobs, people, away, today }: Base,
  list: readonly string[],
  took: ReadonlyMap<string, number>,
): Map<string, Day> {
  const start = dayNumber(today)
  const place = new Map(list.map((id, i) => [id, i]))
  const byId = new Map(jobs.map((job) => [job.id, job]))
  const doing = [...jobs]
    .sort((a, b) => place.get(a.id)! - place.get(b.id)!)
    .map(
      (job): Doing => ({
        job,
        left: took.get(job.id)!,
        readyDay: Number.POSITIVE_INFINITY,
        readyAt: 0,
        done: false,
      }),
    )
  const ended = new Map<string, { day: number; minute: number }>()
  const minutesOf = ({ id, week }: Person, day: number) =>
    away.some(
      ({ person, from, to }) =>
        (person === null || person === id) && dayNumber(from) <= day && day <= dayNumber(to),
    )
      ? 0
      : week[weekdayOfNumber(day)]!
  const ready = ({ job }: Doing) => {
    let [day, minute] = [job.release === null ? start : Math.max(start, dayNumber(job.release)), 0]
    for (const id of job.after) {
      if (!byId.has(id)) continue
      const end = ended.get(id)
      if (end === undefined) return undefined
      const then = end.day + byId.get(id)!.wait
      if (then > day || (then === day && end.minute > minute)) [day, minute] = [then, end.minute]
    }
    return { day, minute }
  }
  for (let day = start; ended.size < jobs.length && day < start + 3000; day++) {
    const hours = people.map((person) => minutesOf(person, day))
    const hand = people.map(({ handCap }) => handCap ?? 1e9)
    let minute = 0
    for (;;) {
      const open: Doing[] = []
      let next = 1e9
      for (const one of doing) {
        if (one.done) continue
        const when = ready(one)
        if (when === undefined || when.day > day) continue
        if (when.day === day && when.minute > minute + 1e-9) next = Math.min(next, when.minute)
        else open.push(one)
      }
      const mark = open.find(({ left }) => left <= 1e-9)
      if (mark !== undefined) {
        mark.done = true
        ended.set(mark.job.id, { day, minute })
        continue
      }
      const taken = new Map<number, Doing>()
      people.forEach((person, p) => {
        if (hours[p]! <= minute + 1e-9) return
        const one = open.find(
          (other) =>
            ![...taken.values()].includes(other) &&
            person.skills.includes(other.job.skill) &&
            (other.job.skill !== 'handSewing' || hand[p]! > 1e-9),
        )
        if (one !== undefined) taken.set(p, one)
      })
      const end = Math.max(...hours)
      if (taken.size === 0 && next >= end) break
      let span = next - minute
      for (const [p, { job, left }] of taken)
        span = Math.min(span, left, hours[p]! - minute, job.skill === 'handSewing' ? hand[p]! : 1e9)
      for (const [p, one] of taken) {
        one.left -= span
        if (one.job.skill === 'handSewing') hand[p]! -= span
      }
      minute += span
    }
  }
  const finished = new Map<string, number>()
  for (const { id, commission, wait } of jobs) {
    const followed = jobs.some(({ after }) => after.includes(id))
    const day = (ended.get(id)?.day ?? 1e7) + (followed ? 0 : wait)
    finished.set(commission, Math.max(finished.get(commission) ?? 0, day))
  }
  return new Map([...finished].map(([commission, day]) => [commission, dayOfNumber(day)]))
}
