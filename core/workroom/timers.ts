import { z } from 'zod'
import { STAGES } from '../draft/types.ts'
import { getCommission, getGarment, getStep } from '../store/commissions.ts'
import { runningTimer, startTimer, stopTimer, type TimerRow } from '../store/times.ts'
import { dayAt } from '../words/dates.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf } from './settings.ts'
import { commissionOf, logged, minutesIn, stepsFor } from './times.ts'

/** Nobody sews for longer at a stretch: a timer that has run on so long was forgotten. Minutes. */
const LONG = 10 * 60

/** The timer of the workroom: one at a time, in the store, so that a restart does not stop it. */
export const timerRequests = [
  request({
    name: 'timer.get',
    kind: 'query',
    about: 'The timer that runs, for how long, and whether it looks forgotten.',
    input: z.strictObject({}),
    run: (_, context) => {
      const row = runningTimer(context.store.db)
      return { timer: row === undefined ? null : told(row, context) }
    },
  }),
  request({
    name: 'timer.start',
    kind: 'command',
    about: 'Starts the timer on steps, a stage, or a whole garment.',
    input: z.strictObject({
      stepIds: z.array(inputs.id).min(1).max(200).optional(),
      garmentId: inputs.id.optional(),
      stage: z.enum(STAGES).optional(),
    }),
    run: (on, context) => {
      const { db } = context.store
      const running = runningTimer(db)
      if (running !== undefined) {
        const { number } = commissionOfSteps(running.stepIds, context)
        throw new Refusal(phrase('refusal.timer.running', { number }), 'stepIds')
      }
      const steps = stepsFor(on, context)
      commissionOf(steps, context)
      const stepIds = steps.map(({ id }) => id)
      const row = startTimer(db, { id: context.newId(), stepIds, startedAt: context.now() })
      recorded(context, 'timer.start', 'timer', row.id, null, row)
      return { timer: told(row, context) }
    },
  }),
  request({
    name: 'timer.stop',
    kind: 'command',
    about: 'Stops the timer and logs its time, or the minutes said in their place.',
    input: z.strictObject({
      minutes: inputs.time.optional().describe('where the timer ran on too long'),
      note: inputs.line(400).default(''),
    }),
    run: ({ minutes, note }, context) => {
      const row = running(context)
      const { startedAt, stepIds } = row
      const ran = ranFor(row, context)
      stopTimer(context.store.db)
      recorded(context, 'timer.stop', 'timer', row.id, row, null)
      const steps = stepIds.map((id) => getStep(context.store.db, id))
      const day = dayAt(startedAt, settingsOf(context).timeZone)
      const spent = minutes === undefined ? Math.max(0.1, ran) : minutesIn(minutes)
      return { time: logged(steps, spent, day, note, 'timer.stop', context) }
    },
  }),
  request({
    name: 'timer.drop',
    kind: 'command',
    about: 'Stops the timer and logs nothing.',
    input: z.strictObject({}),
    run: (_, context) => {
      const row = running(context)
      stopTimer(context.store.db)
      recorded(context, 'timer.drop', 'timer', row.id, row, null)
      return {}
    },
  }),
]

/** @throws Refusal when no timer is running */
function running({ store }: Context): TimerRow {
  const row = runningTimer(store.db)
  if (row === undefined) throw new Refusal(phrase('refusal.timer.none'))
  return row
}

/** Minutes a timer has run; none when the clock was put back meanwhile. */
const ranFor = ({ startedAt }: TimerRow, context: Context): number =>
  Math.max(0, (Date.parse(context.now()) - Date.parse(startedAt)) / 60_000)

/** A running timer as screens show it. A guess is offered where it looks forgotten: what its steps are expected to take. */
export function told(row: TimerRow, context: Context) {
  const { db } = context.store
  const steps = row.stepIds.map((id) => getStep(db, id))
  const ran = ranFor(row, context)
  const expected = steps.reduce((sum, { minutes }) => sum + minutes.mean, 0)
  const overnight =
    dayAt(row.startedAt, settingsOf(context).timeZone) !== dayAt(context.now(), settingsOf(context).timeZone)
  const forgotten = ran > LONG || (overnight && ran > 2 * expected)
  const { id, number } = commissionOfSteps(row.stepIds, context)
  return {
    ...{ startedAt: row.startedAt, minutes: ran, forgotten, commissionId: id, number },
    guess: forgotten ? Math.round(expected) : null,
    stepIds: row.stepIds,
    steps: steps.map(({ name }) => name),
  }
}

/** The commission that steps of a timer belong to. */
export const commissionOfSteps = (stepIds: readonly string[], { store: { db } }: Context) =>
  getCommission(db, getGarment(db, getStep(db, stepIds[0]!).garmentId).commissionId)
