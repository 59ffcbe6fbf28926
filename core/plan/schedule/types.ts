import type { Skill } from '../../sew/types.ts'
import type { Work } from '../../sew/work.ts'
import type { Day } from '../../words/dates.ts'

/** Somebody who sews here. */
export type Person = {
  id: string
  name: string
  skills: readonly Skill[]
  /** Minutes at work on each day of the week, Monday first: seven. */
  week: readonly number[]
  /** Minutes a day after which hands need rest from sewing by hand; null where nothing limits them. */
  handCap: number | null
}

/** Days without work, the first and the last included; of one person, or of everyone (null). */
export type Away = { person: string | null; from: Day; to: Day }

/** One piece of work that one person at a time can do, and lay down and take up at any minute. */
export type Job = {
  id: string
  garment: string
  commission: string
  skill: Skill
  /** Expected minutes still to do. None at all is a mark in the calendar, which needs no hands. */
  minutes: number
  /** What of its work is left, by the catalogue's minutes; for the odds alone. */
  work: Work
  /** Jobs that must be done before. One that is not among the open jobs counts as done. */
  after: readonly string[]
  /** Not before this day: cloth arrives, a fitting is booked. */
  release: Day | null
  /**
   * How many days after the one it is done on what follows may begin, or the garment be handed over where nothing
   * follows: dried or hung overnight is 1. They take the calendar and no hands.
   */
  wait: number
  /** To be done by the end of this day. */
  due: Day | null
}

/** All that a plan is made from. Today counts with all its hours. */
export type Base = {
  jobs: readonly Job[]
  people: readonly Person[]
  away: readonly Away[]
  today: Day
}

/** A job that gets done. */
export type PlannedJob = {
  job: string
  commission: string
  first: Day
  last: Day
  /** Who does it, in the order of taking it up; nobody, where it needs no hands. */
  by: string[]
  /** The day by which it must be done for all that waits for it to be in time; null where nothing is due. */
  needed: Day | null
}

/** An unbroken stretch of work on one job. `from`: minutes of that day's work gone before it. */
export type Slot = { job: string; person: string; day: Day; from: number; minutes: number }

/** When a commission is done and handed over, and by how many days late; less than nothing is in hand. */
export type Finish = {
  commission: string
  /** Null when something of it can never be done. */
  finish: Day | null
  /** Its latest due day. */
  due: Day | null
  late: number | null
}

/** Why a job is never done. */
export type Never =
  /** Nobody has the skill, or nobody who has it ever has hours for it. */
  | { code: 'noSkill' | 'noHours'; skill: Skill }
  /** It waits for a job that is never done. */
  | { code: 'after'; job: string }
  /** It waits for itself by way of others, or for such a one. */
  | { code: 'circle' }
  /** Not within the years that are looked at. */
  | { code: 'horizon' }
export type Impossible = { job: string; commission: string; why: Never }

/** A week's load, minutes; the first week from today on. */
export type WeekLoad = {
  begins: Day
  hours: number
  planned: number
  /**
   * Work that can be put off to this week and no longer, be it due in it or be later weeks too full. Only the first
   * week can have more of it than hours, and then not everything can be in time.
   */
  needed: number
  people: { person: string; hours: number; planned: number }[]
}

/** What is done when by whom, from today on; of jobs that can never be done, why. */
export type Plan = {
  /** In the order in which they are done. */
  jobs: PlannedJob[]
  /** Day by day, each day by the minute. */
  slots: Slot[]
  commissions: Finish[]
  impossible: Impossible[]
  weeks: WeekLoad[]
}
