import { z } from 'zod'
import { plausible, readMeasures } from '../measure/read-body.ts'
import { getCommission, getGarment } from '../store/commissions.ts'
import { type FittingRow, fittingsOf, getFitting, insertFitting, updateFitting } from '../store/fittings.ts'
import { getMeasurementSet, insertMeasurementSet, type MeasurementSet } from '../store/measurement-sets.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { madeNow } from './as-made.ts'
import { stepsFromFitting, uncutFromFitting } from './fitting-steps.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'
import { minutesIn } from './times.ts'

const seen = z.strictObject({ id: inputs.id, revision: inputs.revision })
const clock = z
  .string()
  .regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time of day is written 14:30')
  .or(z.literal(''))
  .default('')

/** Fittings: booking them, and what comes of them. */
export const fittingRequests = [
  request({
    name: 'fittings.list',
    kind: 'query',
    about: 'The fittings of a commission, with what was found.',
    input: z.strictObject({ commissionId: inputs.id }),
    run: ({ commissionId }, { store }) => ({ fittings: fittingsOf(store.db, commissionId) }),
  }),
  request({
    name: 'fitting.add',
    kind: 'command',
    about: 'Books a fitting.',
    input: z.strictObject({
      commissionId: inputs.id,
      garmentId: inputs.id.nullable().default(null),
      day: inputs.day,
      time: clock,
      note: inputs.line(1000).default(''),
    }),
    run: (given, context) => {
      const { db } = context.store
      getCommission(db, given.commissionId, 'commissionId')
      if (given.garmentId !== null) getGarment(db, given.garmentId, 'garmentId')
      const row = insertFitting(db, {
        ...given,
        ...{ id: context.newId(), found: '', minutesAdded: 0, recut: [], createdAt: context.now() },
      })
      recorded(context, 'fitting.add', 'fitting', row.id, null, row)
      return { fitting: row }
    },
  }),
  request({
    name: 'fitting.move',
    kind: 'command',
    about: 'Puts a fitting on another day.',
    input: seen.extend({ day: inputs.day, time: clock }),
    run: ({ id, revision, ...to }, context) => {
      const before = getFitting(context.store.db, id)
      if (before.heldAt !== null) throw new Refusal(phrase('refusal.fitting.held'), 'day')
      return changedFitting('fitting.move', id, revision, to, context)
    },
  }),
  request({
    name: 'fitting.hold',
    kind: 'command',
    about:
      'Writes down what a fitting found: the set of measures it led to, the work it added, pieces to cut again.',
    input: seen.extend({
      found: inputs.line(4000).default(''),
      measurementSetId: inputs.id.nullable().default(null),
      added: inputs.time.optional().describe('work it added'),
      recut: z.array(inputs.line(200)).max(60).default([]),
    }),
    run: ({ id, revision, added, ...found }, context) => {
      const { db } = context.store
      const before = getFitting(db, id)
      if (found.measurementSetId !== null) getMeasurementSet(db, found.measurementSetId, 'measurementSetId')
      const minutesAdded = added === undefined ? 0 : minutesIn(added)
      const heldAt = before.heldAt ?? context.now()
      const held = changedFitting('fitting.hold', id, revision, { ...found, minutesAdded, heldAt }, context)
      uncutFromFitting(held.fitting, before, context)
      return held
    },
  }),
  request({
    name: 'fitting.measure',
    kind: 'command',
    about:
      'Takes a few measures anew at a fitting: a new set of the wearer, the others carried over from the one in use.',
    input: z.strictObject({
      id: inputs.id,
      garmentId: inputs.id.describe('the garment that was tried on'),
      measures: inputs.measures,
      unit: inputs.unit.optional(),
    }),
    run: ({ id, garmentId, measures, ...given }, context) => {
      const { db } = context.store
      const unit = given.unit ?? settingsOf(context).letterhead.unit
      const fitting = getFitting(db, id)
      const { measurementSet, wearer } = madeNow(getGarment(db, garmentId, 'garmentId'), context)
      const before = lastTaken(fitting, measurementSet.id, wearer.id, context)
      const changed = refusingAt('measures', () => readMeasures(measures, unit)).measures
      if (Object.keys(changed).length === 0)
        throw new Refusal(phrase('refusal.fitting.noMeasures'), 'measures')
      const body = refusingAt('measures', () => plausible({ measures: { ...before.measures, ...changed } }))
      const set = insertMeasurementSet(db, {
        ...{ id: context.newId(), clientId: wearer.id, unit, day: today(context), measures: body.measures },
        ...{ takenBy: before.takenBy, over: before.over, note: before.note, remarks: before.remarks },
        ...{ notes: before.notes, proportionsOf: before.proportionsOf, supersedes: before.id },
        createdAt: context.now(),
      })
      recorded(context, 'fitting.measure', 'measurementSet', set.id, null, set)
      return {
        measurementSet: set,
        ...changedFitting('fitting.measure', id, fitting.revision, { measurementSetId: set.id }, context),
      }
    },
  }),
  request({
    name: 'fitting.remove',
    kind: 'command',
    about: 'Takes a fitting off. It can be put back.',
    input: seen,
    run: ({ id, revision }, context) =>
      changedFitting('fitting.remove', id, revision, { removedAt: context.now() }, context),
  }),
]

/** The set that measures are carried over from: what this fitting has led to already, if it is the same wearer's. */
function lastTaken(
  { measurementSetId }: FittingRow,
  inUse: string,
  wearerId: string,
  { store: { db } }: Context,
): MeasurementSet {
  const taken = measurementSetId === null ? undefined : getMeasurementSet(db, measurementSetId)
  return taken?.clientId === wearerId ? taken : getMeasurementSet(db, inUse)
}

function changedFitting(
  name: string,
  id: string,
  revision: number,
  changes: Parameters<typeof updateFitting>[3],
  context: Context,
) {
  const before = getFitting(context.store.db, id)
  const fitting = updateFitting(context.store.db, before, revision, changes)
  stepsFromFitting(fitting, context)
  recorded(context, name, 'fitting', id, before, fitting)
  return { fitting }
}
