import type { Calendar } from './calendar.ts'
import { DAY, NO_TIME } from './clock.ts'
import type { Network } from './network.ts'

/** The people on one day: until when they are there, what their hands still bear, and who is at which job. */
export type Hands = {
  begin: (day: number) => void
  /** Gives the most urgent open jobs to who is there. */
  share: (now: number, open: readonly number[]) => void
  /** The job in each one's hands, -1 for none. */
  at: Int32Array
  /** Minutes until somebody at work must lay it down; ∞ when nobody is at work. */
  until: (now: number) => number
  pass: (minutes: number) => void
}

/**
 * Jobs in the order of their urgency each get a pair of hands, others changing theirs for it where they can (augmenting
 * paths, Kuhn 1955, from memory): the jobs in hand are always the most urgent that can be in hand together. A job stays
 * with whoever had it last, if she is free or can be; a new one goes to who can do the fewest kinds of work, so that
 * the others are free for theirs.
 */
export function handsOf({ jobs }: Network, { people, hours, hand, able }: Calendar): Hands {
  const all = people.map((_, p) => p).sort((a, b) => people[a]!.skills.length - people[b]!.skills.length)
  const at = new Int32Array(people.length).fill(-1)
  const end = new Float64Array(people.length)
  const bears = new Float64Array(people.length)
  const lastBy = new Int32Array(jobs.length).fill(-1)
  const asked = new Uint8Array(people.length)
  const byHand = jobs.map(({ skill }) => skill === 'handSewing')
  const there = (p: number, now: number) => end[p]! - now > NO_TIME
  const can = (p: number, job: number, now: number) =>
    there(p, now) && able(p, jobs[job]!.skill) && (!byHand[job] || bears[p]! > NO_TIME)

  function give(job: number, now: number): boolean {
    const last = lastBy[job]!
    if (last >= 0 && ask(last, job, now)) return true
    for (const p of all) if (ask(p, job, now)) return true
    return false
  }

  function ask(p: number, job: number, now: number): boolean {
    if (asked[p] === 1 || !can(p, job, now)) return false
    asked[p] = 1
    const held = at[p]!
    if (held !== -1 && !give(held, now)) return false
    at[p] = job
    return true
  }

  return {
    at,
    begin: (day) => {
      for (const p of all) {
        end[p] = day * DAY + hours[p]![day]!
        bears[p] = hand[p]!
      }
    },
    share: (now, open) => {
      at.fill(-1)
      let free = 0
      for (const p of all) if (there(p, now)) free++
      for (const job of open) {
        if (free === 0) break
        asked.fill(0)
        if (give(job, now)) free--
      }
      for (const p of all) if (at[p] !== -1) lastBy[at[p]!] = p
    },
    until: (now) => {
      let least = Number.POSITIVE_INFINITY
      for (const p of all) {
        if (at[p] === -1) continue
        least = Math.min(least, end[p]! - now, byHand[at[p]!] ? bears[p]! : least)
      }
      return least
    },
    pass: (minutes) => {
      for (const p of all) if (at[p] !== -1 && byHand[at[p]!]) bears[p] = bears[p]! - minutes
    },
  }
}
