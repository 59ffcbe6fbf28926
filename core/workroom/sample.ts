import { readBody } from '../measure/read-body.ts'
import { entriesOf } from '../sew/work.ts'
import { insertClient } from '../store/clients.ts'
import { insertCloth } from '../store/cloths.ts'
import {
  getCommission,
  getGarment,
  getStep,
  type StepRow,
  setActual,
  updateCommission,
} from '../store/commissions.ts'
import { insertMeasurementSet } from '../store/measurement-sets.ts'
import { setQuoteState } from '../store/quotes.ts'
import { insertTime } from '../store/times.ts'
import { findWorkroom, insertWorkroom, isEmpty } from '../store/workrooms.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { commissionFrom } from './commissions.ts'
import { DEFAULT_SETTINGS } from './default-settings.ts'
import { accountsAnew } from './deliveries.ts'
import { findableClient, findableCloth } from './finding.ts'
import { recorded } from './history.ts'
import { saveQuote } from './quotes.ts'
import type { Context } from './request.ts'
import { CLIENTS, CLOTHS, LETTERHEAD } from './sample-people.ts'
import { stockUp } from './sample-stock.ts'
import { today } from './settings.ts'
import { tickStep } from './ticks.ts'

/** Steps of the sample's open garment that are already done. */
const DONE = ['wash', 'cut', 'shoulders', 'gores', 'gussets']

/** Tenter Lane takes its time: so many times the standard; and a step whose timer ran on over dinner. */
const PACE = 1.25
const FORGOTTEN = 'pressSeams'

/**
 * Four clients, three cloths and some of each in the house, a quote that waits for its answer, a commission half done and one delivered.
 * @throws Refusal when the store is not new: the sample is never mixed with a workroom's own work
 */
export function makeSample(context: Context) {
  const { db } = context.store
  if (findWorkroom(db) !== undefined || !isEmpty(db)) throw new Refusal(phrase('refusal.workroom.notNew'))
  const made = { createdAt: context.now() }
  const settings = { ...DEFAULT_SETTINGS, letterhead: LETTERHEAD }
  const workroom = insertWorkroom(db, { ...made, id: context.newId(), kind: 'sample', settings })
  const day = today(context)
  const people = CLIENTS.map(({ measures, ...client }) => {
    const row = insertClient(db, {
      ...made,
      ...client,
      address: [...client.address],
      phone: '',
      id: context.newId(),
    })
    findableClient(row, context)
    if (measures === undefined) return { id: row.id, set: '' }
    const set = insertMeasurementSet(db, {
      ...{
        ...made,
        id: context.newId(),
        clientId: row.id,
        day,
        takenBy: 'the workroom',
        over: 'shift',
        note: '',
        unit: 'cm',
      },
      measures: readBody(measures, 'cm').measures,
    })
    return { id: row.id, set: set.id }
  })
  const cloths = CLOTHS.map((cloth) => {
    const row = insertCloth(db, { ...made, ...cloth, id: context.newId() })
    findableCloth(row, context)
    return row.id
  })
  const [thorunn, lucja, thordur, museum] = people as [Person, Person, Person, Person]
  const flat = { manner: 'single' as const, flaws: [], locked: [] }
  const tunic = {
    ...{ construction: 'goredUndertunic', quantity: 1, lay: flat, otherClothIds: {}, extras: {} },
    ...{ options: [], threadIds: {}, price: {} },
  }

  const taken = saveQuote(
    {
      customerId: thorunn.id,
      lines: [
        {
          ...tunic,
          wearerId: thorunn.id,
          measurementSetId: thorunn.set,
          clothId: cloths[0]!,
          choices: {},
          finishPlan: 'machineWhereHidden',
        },
      ],
    },
    context,
  )
  setQuoteState(db, taken.id, 'accepted', context.now())
  const commission = commissionFrom(taken, { dueDay: null, note: '', taken: {} }, context)
  for (const step of commission.garments[0]!.steps)
    if (DONE.includes(step.key)) {
      tickStep(step, context)
      logStep(step, PACE, context)
    }

  const delivered = finished(tunic, { wearer: thordur, cloth: cloths[2]! }, context)
  const waiting = saveQuote(
    {
      customerId: museum.id,
      lines: [
        {
          ...{ ...tunic, wearerId: lucja.id, measurementSetId: lucja.set, clothId: cloths[1]! },
          choices: { hemLevel: 'ankle', gores: 6, neck: 'round' },
          finishPlan: 'allByHand',
        },
      ],
    },
    context,
  )
  stockUp(cloths, context)
  recorded(context, 'workroom.sample', 'workroom', workroom.id, null, { kind: 'sample' })
  return {
    clients: people.map(({ id }) => id),
    measurementSets: people.map(({ set }) => set).filter((id) => id !== ''),
    cloths,
    quotes: [taken.id, waiting.id],
    commission: commission.id,
    delivered,
    garment: commission.garments[0]!.id,
  }
}

type Person = { id: string; set: string }
type Line = Parameters<typeof saveQuote>[0]['lines'][number]
type Made = Omit<Line, 'wearerId' | 'measurementSetId' | 'clothId' | 'choices' | 'finishPlan'>

/** An overtunic of last month, delivered, with the hours it took and one timer that was left running. */
function finished(
  made: Made,
  { wearer, cloth }: { wearer: Person; cloth: string },
  context: Context,
): string {
  const { db } = context.store
  const quote = saveQuote(
    {
      customerId: wearer.id,
      lines: [
        {
          ...{ ...made, construction: 'overtunic', wearerId: wearer.id, measurementSetId: wearer.set },
          ...{ clothId: cloth, choices: {}, finishPlan: 'machineWhereHidden' as const },
        },
      ],
    },
    context,
  )
  setQuoteState(db, quote.id, 'accepted', context.now())
  const { id, garments } = commissionFrom(quote, { dueDay: null, note: '', taken: {} }, context)
  const [garment] = garments
  for (const step of garment!.steps) {
    tickStep(step, context)
    logStep(step, step.key === FORGOTTEN ? 8 : PACE, context)
  }
  setActual(db, { garmentId: garment!.id, cloth: 2600, handThread: 23, machineThread: 108 })
  const row = getCommission(db, id)
  updateCommission(db, row, row.revision, { state: 'delivered', deliveredDay: today(context) })
  accountsAnew(id, context)
  return id
}

/** Logs a step at so many times its standard minutes. */
function logStep({ id, work }: StepRow, factor: number, context: Context): void {
  const minutes = Math.round(factor * entriesOf(work).reduce((sum, [, standard]) => sum + standard, 0))
  const { commissionId } = getGarment(context.store.db, getStep(context.store.db, id).garmentId)
  const row = {
    id: context.newId(),
    commissionId,
    day: today(context),
    minutes: Math.max(1, minutes),
    note: '',
  }
  insertTime(context.store.db, { ...row, createdAt: context.now() }, [id])
}
