import { z } from 'zod'
import { STAGES } from '../draft/types.ts'
import { getCommission, getGarment, getStep, type StepRow, stepsOfGarments } from '../store/commissions.ts'
import { getTime, insertTime, type TimeEntry, timesOfCommission, updateTime } from '../store/times.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { readMinutes } from '../words/time.ts'
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
      const commissionId = commissionOf(steps, context)
      const row = {
        ...{ id: context.newId(), commissionId, note, createdAt: context.now() },
        ...{ day: day ?? today(context), minutes: minutesIn(minutes) },
      }
      const time = insertTime(
        context.store.db,
        row,
        steps.map(({ id }) => id),
      )
      recorded(context, 'time.log', 'timeEntry', time.id, null, time)
      return { time }
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

const minutesIn = (given: z.output<typeof inputs.time>): number =>
  typeof given === 'number' ? given : refusingAt('minutes', () => readMinutes(given))

type On = {
  stepIds?: string[] | undefined
  garmentId?: string | undefined
  stage?: StepRow['stage'] | undefined
}

/** @throws Refusal when there is nothing to log time for */
function stepsFor({ stepIds, garmentId, stage }: On, { store: { db } }: Context): StepRow[] {
  if (stepIds !== undefined) return [...new Set(stepIds)].map((id) => getStep(db, id, 'stepIds'))
  if (garmentId === undefined) throw new Refusal(phrase('refusal.time.nothing'), 'stepIds')
  getGarment(db, garmentId, 'garmentId')
  const steps = stepsOfGarments(db, [garmentId]).filter((step) => stage === undefined || step.stage === stage)
  if (steps.length === 0) throw new Refusal(phrase('refusal.time.nothing'), 'stage')
  return steps
}

/** @throws Refusal when the steps belong to several commissions, or theirs is not open */
function commissionOf(steps: readonly StepRow[], { store: { db } }: Context): string {
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
  recorded(context, name, 'timeEntry', id, before, time)
  return { time }
}
