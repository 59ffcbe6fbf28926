import { loggedOf, type Spent, type SpentOn, type Together } from '../plan/logged.ts'
import { type Judged, type Learnt, learn } from '../sew/pace/learn.ts'
import { paceBefore } from '../sew/pace/standards.ts'
import type { Store } from '../store/open.ts'
import { lastLesson, latestTimes, stepsById, type TimeEntry } from '../store/times.ts'
import type { Context } from './request.ts'
import { settingsOf, today } from './settings.ts'

/** What the workroom's logged times have taught. */
export type Known = {
  learnt: Learnt
  /** Every logged time that taught, with what was thought of it. */
  taught: { of: Together; judged: Judged; steps: readonly SpentOn['work'][] }[]
}

/** So many of the latest times teach: some fifty garments. What is older says little of today's hands. */
const TAUGHT_BY = 800

/** What was worked out for a store, and the last thing that had happened to it by then. */
const WORKED_OUT = new WeakMap<Store, { change: number; day: string; known: Known }>()

/** How fast the workroom works, by all the time it has logged; worked out again only when something has happened. */
export function knownPace(context: Context): Known {
  const { store } = context
  const change = lastLesson(store.db)
  const day = today(context)
  const before = WORKED_OUT.get(store)
  if (before?.change === change && before.day === day) return before.known
  const times = latestTimes(store.db, TAUGHT_BY)
  const logged = loggedOf(times.map(spentOf), stepsOf(times, context), day)
  const learnt = learn(logged, paceBefore(settingsOf(context).ways))
  const judged = new Map(learnt.judged.map((one) => [one.id, one]))
  const taught = logged.flatMap(({ id, of, steps }) => {
    const one = judged.get(id)
    return one === undefined ? [] : [{ of, judged: one, steps }]
  })
  const known = { learnt, taught }
  // What a transaction has seen may yet be undone.
  if (!store.db.$client.inTransaction) WORKED_OUT.set(store, { change, day, known })
  return known
}

/** How fast the workroom works, by which all hours are reckoned. */
export const paceOf = (context: Context) => knownPace(context).learnt.pace

/** A stored time as the learning takes it. */
export const spentOf = ({ id, day, minutes, stepIds, asideAt }: TimeEntry): Spent => ({
  ...{ id, day, minutes, stepIds, aside: asideAt !== null },
})

/** The steps that times were spent on. */
export function stepsOf(
  times: readonly TimeEntry[],
  { store }: Pick<Context, 'store'>,
): Map<string, SpentOn> {
  const rows = stepsById(store.db, [...new Set(times.flatMap(({ stepIds }) => stepIds))])
  return new Map([...rows].map(([id, { work, doneAt }]) => [id, { work, done: doneAt !== null }]))
}
