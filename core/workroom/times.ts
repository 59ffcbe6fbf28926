import { z } from 'zod'
import { STAGES } from '../draft/types.ts'
import { getCommission, getGarment, getStep, type StepRow, stepsOfGarments } from '../store/commissions.ts'
import { getTime, insertTime, type TimeEntry, timesOfCommission, updateTime } from '../store/times.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { readMinutes } from '../words/time.ts'
import { accountsAnew } from './deliveries.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { today } from './settings.ts'

const seen = z.strictObject({ id: inputs.id, revision: inputs.revision })

/** Time as it is spent on the steps of a commission, and as it is put right afterwards. */
export const timeRequests = [
  request({
    name: 'time.log',
    kind: 'command',
    about: 'Writes down time spent on one step or several, or on a whole stage of a garment.',
    input: z.strictObject({
      stepIds: z.array(inputs.id).min(1).max(200).optional(),
      garmentId: inputs.id.optional().describe('with a stage, in the place of stepIds'),
      stage: z.enum(STAGES).optional(),
      minutes: inputs.time,
      day: inputs.day.optional().describe('today, if not said'),
      note: inputs.line(400).default(''),
    }),
    run: ({ minutes, day, note, ...on }, context) => {
      const steps = stepsFor(on, context)
      const spent = minutesIn(minutes)
      return { time: logged(steps, spent, day ?? today(context), note, 'time.log', context) }
    },
  }),
  request({
    name: 'time.change',
    kind: 'command',
    about: 'Puts a logged time right.',
    input: seen.extend({
      minutes: inputs.time.optional(),
      day: inputs.day.optional(),
      note: inputs.line(400).optional(),
    }),
    run: ({ id, revision, minutes, day, note }, context) =>
      changed('time.change', id, revision, context, {
        ...(minutes === undefined ? {} : { minutes: minutesIn(minutes) }),
        ...(day === undefined ? {} : { day }),
        ...(note === undefined ? {} : { note }),
      }),
  }),
  request({
    name: 'time.remove',
    kind: 'command',
    about: 'Takes back a time that was logged by mistake. It can be put back.',
    input: seen,
    run: ({ id, revision }, context) =>
      changed('time.remove', id, revision, context, { removedAt: context.now() }),
  }),
  request({
    name: 'time.putBack',
    kind: 'command',
    about: 'Puts back a time that was taken back.',
    input: seen,
    run: ({ id, revision }, context) => changed('time.putBack', id, revision, context, { removedAt: null }),
  }),
  request({
    name: 'time.setAside',
    kind: 'command',
    about: 'Leaves a time out of what the workroom’s pace is learnt from. It still counts as hours.',
    input: seen,
    run: ({ id, revision }, context) =>
      changed('time.setAside', id, revision, context, { asideAt: context.now() }),
  }),
  request({
    name: 'time.takeUp',
    kind: 'command',
    about: 'Lets a time that was set aside teach again.',
    input: seen,
    run: ({ id, revision }, context) => changed('time.takeUp', id, revision, context, { asideAt: null }),
  }),
  request({
    name: 'times.list',
    kind: 'query',
    about: 'The times logged for a commission, oldest first.',
    input: z.strictObject({ commissionId: inputs.id }),
    run: ({ commissionId }, { store }) => ({ times: timesOfCommission(store.db, commissionId) }),
  }),
]

/** A time as it was given, in minutes. @throws Refusal at `minutes` when it cannot be read */
export const minutesIn = (given: z.output<typeof inputs.time>): number =>
  typeof given === 'number' ? given : refusingAt('minutes', () => readMinutes(given))

/** Writes down minutes spent on steps of one commission. */
export function logged(
  steps: readonly StepRow[],
  minutes: number,
  day: string,
  note: string,
  name: string,
  context: Context,
): TimeEntry {
  const commissionId = commissionOf(steps, context)
  const time = insertTime(
    context.store.db,
    { ...{ id: context.newId(), commissionId, note, createdAt: context.now() }, ...{ day, minutes } },
    steps.map(({ id }) => id),
  )
  accountsAnew(commissionId, context)
  recorded(context, name, 'timeEntry', time.id, null, time)
  return time
}

type On = {
  stepIds?: string[] | undefined
  garmentId?: string | undefined
  stage?: StepRow['stage'] | undefined
}

/** @throws Refusal when there is nothing to log time for */
export function stepsFor({ stepIds, garmentId, stage }: On, { store: { db } }: Context): StepRow[] {
  if (stepIds !== undefined) return [...new Set(stepIds)].map((id) => getStep(db, id, 'stepIds'))
  if (garmentId === undefined) throw new Refusal(phrase('refusal.time.nothing'), 'stepIds')
  getGarment(db, garmentId, 'garmentId')
  const steps = stepsOfGarments(db, [garmentId]).filter((step) => stage === undefined || step.stage === stage)
  if (steps.length === 0) throw new Refusal(phrase('refusal.time.nothing'), 'stage')
  return steps
}

/** @throws Refusal when the steps belong to several commissions, or theirs is not open */
export function commissionOf(steps: readonly StepRow[], { store: { db } }: Context): string {
  const ids = new Set(steps.map(({ garmentId }) => getGarment(db, garmentId).commissionId))
  if (ids.size > 1) throw new Refusal(phrase('refusal.time.several'), 'stepIds')
  const [id] = [...ids]
  const { state, number } = getCommission(db, id!)
  if (state === 'cancelled') throw new Refusal(phrase('refusal.plan.closed', { number }), 'stepIds')
  return id!
}

function changed(
  name: string,
  id: string,
  revision: number,
  context: Context,
  changes: Parameters<typeof updateTime>[3],
): { time: TimeEntry } {
  const { db } = context.store
  const before = getTime(db, id)
  const time = updateTime(db, before, revision, changes)
  accountsAnew(time.commissionId, context)
  recorded(context, name, 'timeEntry', id, before, time)
  return { time }
}
