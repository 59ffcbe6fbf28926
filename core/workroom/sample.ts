import { readBody } from '../measure/read-body.ts'
import { insertClient } from '../store/clients.ts'
import { insertCloth } from '../store/cloths.ts'
import { insertMeasurementSet } from '../store/measurement-sets.ts'
import { setQuoteState } from '../store/quotes.ts'
import { findWorkroom, insertWorkroom, isEmpty } from '../store/workrooms.ts'
import { addDays } from '../words/dates.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { commissionFrom } from './commissions.ts'
import { DEFAULT_SETTINGS } from './default-settings.ts'
import { findableClient, findableCloth } from './finding.ts'
import { recorded } from './history.ts'
import { saveQuote } from './quotes.ts'
import type { Context } from './request.ts'
import { logStep, pastWork } from './sample-past.ts'
import { CLIENTS, CLOTHS, LETTERHEAD } from './sample-people.ts'
import { stockUp } from './sample-stock.ts'
import { today } from './settings.ts'
import { tickStep } from './ticks.ts'

/** Steps of the sample's open garment that are already done. */
const DONE = ['wash', 'cut', 'shoulders', 'gores', 'gussets']

/** So many days ago everybody was measured, before the first of their garments. */
const MEASURED = 155

/** Tenter Lane takes its time: so many times the standard. */
const PACE = 1.25

/**
 * Four clients, three cloths and some of each in the house, the work of the last months, a commission half done, and a quote
 * that waits for its answer.
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
      id: context.newId(),
    })
    findableClient(row, context)
    if (measures === undefined) return { id: row.id, set: '' }
    const set = insertMeasurementSet(db, {
      ...{
        ...made,
        id: context.newId(),
        clientId: row.id,
        day: addDays(day, -MEASURED),
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
  const [thorunn, lucja, , museum] = people as [Person, Person, Person, Person]
  const flat = { manner: 'single' as const, flaws: [], locked: [] }
  const garment = {
    ...{ quantity: 1, lay: flat, otherClothIds: {}, extras: {} },
    ...{ options: [], threadIds: {}, price: {} },
  }
  const tunic = { ...garment, construction: 'goredUndertunic' }

  const delivered = pastWork(garment, people, cloths, context)
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
    delivered: delivered.at(-1)!,
    garment: commission.garments[0]!.id,
  }
}

type Person = { id: string; set: string }
