import { z } from 'zod'
import { REMARKS } from '../measure/body.ts'
import { readBody } from '../measure/read-body.ts'
import { stockBody } from '../measure/stock.ts'
import { PROPORTIONS_OF } from '../measure/survey.ts'
import { MEASURE_IDS, MEASURES } from '../measure/vocabulary.ts'
import { getClient, insertClient } from '../store/clients.ts'
import {
  getMeasurementSet,
  insertMeasurementSet,
  restoreSet,
  retireSet,
  updateMeasurementSet,
} from '../store/measurement-sets.ts'
import { readLength } from '../words/length.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { say } from '../words/say.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'
import { readerOf, settingsOf, today } from './settings.ts'

const taking = {
  day: inputs.day.optional().describe('day of the taking; today when not given'),
  takenBy: inputs.line(200).default(''),
  over: inputs.line(200).default('').describe('what was worn under the tape'),
  note: inputs.line(2000).default(''),
  unit: inputs.unit.optional(),
  measures: inputs.measures,
  proportionsOf: z
    .enum(PROPORTIONS_OF)
    .nullable()
    .default(null)
    .describe('whose proportions it is held against'),
  notes: z
    .partialRecord(z.enum(MEASURE_IDS), inputs.line(300))
    .default({})
    .describe('on single measures: why an unlikely one is right'),
  remarks: z
    .partialRecord(z.enum(REMARKS), inputs.line(500))
    .default({})
    .describe('posture, uneven shoulders, hair, what movement is needed, allergies'),
}

/** The measures of clients, and sizes to make for stock. */
export const measurementSetRequests = [
  request({
    name: 'stockSize.add',
    kind: 'command',
    about: 'Enters a size to make for stock, as a wearer in the book with the figures of that size.',
    input: z.strictObject({
      of: z.enum(PROPORTIONS_OF).default('women').describe('whose sizes'),
      chest: inputs.length.describe('bust girth of women, chest girth of men'),
      stature: inputs.length,
      unit: inputs.unit.optional(),
    }),
    run: ({ of, chest, stature, ...given }, context) => {
      const { db } = context.store
      const unit = given.unit ?? settingsOf(context).letterhead.unit
      const read = (field: 'chest' | 'stature', value: number | string) => {
        const mm = refusingAt(field, () => readLength(value, unit))
        const [least, most] = MEASURES[field === 'chest' ? 'bustGirth' : 'stature'].range
        if (mm >= least && mm <= most) return mm
        throw new Refusal(
          phrase('refusal.measure.stockRange', { least: { mm: least }, most: { mm: most } }),
          field,
        )
      }
      const size = { chest: read('chest', chest), stature: read('stature', stature) }
      const body = stockBody(of, size.chest, size.stature)
      const name = say(
        phrase(`measure.stock.${of}`, { chest: { mm: size.chest }, stature: { mm: size.stature } }),
        readerOf(context),
      )
      const client = insertClient(db, {
        ...{ id: context.newId(), name, address: [], email: '', phone: '', note: '' },
        createdAt: context.now(),
      })
      const set = insertMeasurementSet(db, {
        ...{ id: context.newId(), clientId: client.id, unit, day: today(context), measures: body.measures },
        ...{
          takenBy: '',
          over: '',
          note: say(phrase('measure.stock.note'), readerOf(context)),
          createdAt: context.now(),
        },
      })
      recorded(context, 'stockSize.add', 'client', client.id, null, client)
      return { client, measurementSet: set }
    },
  }),
  request({
    name: 'measurementSet.add',
    kind: 'command',
    about: 'Records one dated taking of a client’s measures, in place of an earlier one if it says so.',
    input: z.strictObject({ clientId: inputs.id, supersedes: inputs.id.optional(), ...taking }),
    run: ({ clientId, supersedes, measures, ...given }, context) => {
      const { db } = context.store
      getClient(db, clientId, 'clientId')
      if (supersedes !== undefined && getMeasurementSet(db, supersedes, 'supersedes').clientId !== clientId) {
        throw new Refusal(phrase('refusal.measure.otherClient'), 'supersedes')
      }
      const unit = given.unit ?? settingsOf(context).letterhead.unit
      const set = insertMeasurementSet(db, {
        ...given,
        id: context.newId(),
        clientId,
        unit,
        day: given.day ?? today(context),
        measures: refusingAt('measures', () => readBody(measures, unit)).measures,
        supersedes: supersedes ?? null,
        createdAt: context.now(),
      })
      recorded(context, 'measurementSet.add', 'measurementSet', set.id, null, set)
      return { measurementSet: set }
    },
  }),
  request({
    name: 'measurementSet.change',
    kind: 'command',
    about: 'Corrects a measurement set that no quote has used yet.',
    input: z.strictObject({ id: inputs.id, revision: inputs.revision, ...taking }),
    run: ({ id, revision, measures, ...given }, context) => {
      const { db } = context.store
      const before = getMeasurementSet(db, id)
      const unit = given.unit ?? before.unit
      const read = refusingAt('measures', () => readBody(measures, unit)).measures
      const set = updateMeasurementSet(db, id, revision, {
        ...given,
        unit,
        day: given.day ?? before.day,
        measures: read,
      })
      recorded(context, 'measurementSet.change', 'measurementSet', id, before, set)
      return { measurementSet: set }
    },
  }),
  request({
    name: 'measurementSet.get',
    kind: 'query',
    about: 'One measurement set.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, { store }) => ({ measurementSet: getMeasurementSet(store.db, id) }),
  }),
  request({
    name: 'measurementSet.retire',
    kind: 'command',
    about: 'Puts a set aside: it stays, but new garments are not drafted from it.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, context) => {
      const { db } = context.store
      getMeasurementSet(db, id)
      retireSet(db, id, context.now())
      recorded(context, 'measurementSet.retire', 'measurementSet', id, null, null)
      return { retired: true }
    },
  }),
  request({
    name: 'measurementSet.restore',
    kind: 'command',
    about: 'Takes a set that was put aside back into use.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, context) => {
      const { db } = context.store
      getMeasurementSet(db, id)
      restoreSet(db, id)
      recorded(context, 'measurementSet.restore', 'measurementSet', id, null, null)
      return { retired: false }
    },
  }),
]
