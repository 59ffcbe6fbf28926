import { asc, eq, isNull } from 'drizzle-orm'
import type { Db } from '../open.ts'
import {
  client,
  commission,
  garment,
  invoice,
  measurementSet,
  payment,
  quote,
  quoteState,
  remnant,
  step,
  timeEntry,
  timeEntryStep,
} from '../schema.ts'

/*
 * Rows of whole lists, oldest first. What was removed by mistake is left out; what is retired, dropped or called off is
 * there and says so.
 */

/** Sets of measures, also those put aside, with the name of whose they are. */
export const everyMeasurementSet = (db: Db) =>
  db
    .select({ set: measurementSet, client: client.name })
    .from(measurementSet)
    .innerJoin(client, eq(client.id, measurementSet.clientId))
    .orderBy(asc(measurementSet.id))
    .all()

/** Quotes in every state, without what they were reckoned from. */
export const everyQuote = (db: Db) =>
  db
    .select({
      ...{ number: quote.number, day: quote.day, customer: client.name },
      ...{ state: quoteState.state, short: quoteState.short },
    })
    .from(quote)
    .innerJoin(quoteState, eq(quoteState.quoteId, quote.id))
    .innerJoin(client, eq(client.id, quote.customerId))
    .orderBy(asc(quote.id))
    .all()

/** Commissions in every state, with the number of the quote that each rests on. */
export const everyCommission = (db: Db) =>
  db
    .select({ commission, quote: quote.number, customer: client.name })
    .from(commission)
    .innerJoin(quote, eq(quote.id, commission.quoteId))
    .innerJoin(client, eq(client.id, commission.customerId))
    .orderBy(asc(commission.id))
    .all()

/** Steps in the order of the work, commission by commission and garment by garment; minutes as they were quoted. */
export const everyStep = (db: Db) =>
  db
    .select({
      ...{ commission: commission.number, title: garment.title, wearer: garment.wearer },
      ...{
        name: step.name,
        stage: step.stage,
        minutes: step.minutes,
        doneAt: step.doneAt,
        doneBy: step.doneBy,
      },
      droppedAt: garment.droppedAt,
    })
    .from(step)
    .innerJoin(garment, eq(garment.id, step.garmentId))
    .innerJoin(commission, eq(commission.id, garment.commissionId))
    .orderBy(asc(commission.id), asc(garment.position), asc(garment.copy), asc(step.position))
    .all()

/** Times, and the names of the steps that each was spent on. */
export const everyTime = (db: Db) => ({
  times: db
    .select({ time: timeEntry, commission: commission.number })
    .from(timeEntry)
    .innerJoin(commission, eq(commission.id, timeEntry.commissionId))
    .where(isNull(timeEntry.removedAt))
    .orderBy(asc(timeEntry.day), asc(timeEntry.id))
    .all(),
  steps: Map.groupBy(
    db
      .select({ id: timeEntryStep.timeEntryId, name: step.name })
      .from(timeEntryStep)
      .innerJoin(step, eq(step.id, timeEntryStep.stepId))
      .orderBy(asc(step.position))
      .all(),
    ({ id }) => id,
  ),
})

/** Payments and refunds by their day; amounts in minor units. */
export const everyPayment = (db: Db) =>
  db
    .select({ payment, commission: commission.number, customer: client.name })
    .from(payment)
    .innerJoin(commission, eq(commission.id, payment.commissionId))
    .innerJoin(client, eq(client.id, commission.customerId))
    .orderBy(asc(payment.day), asc(payment.id))
    .all()

/** Invoices and credit notes by their day, each with all that was printed on it. */
export const everyInvoice = (db: Db) =>
  db
    .select({ invoice, commission: commission.number })
    .from(invoice)
    .innerJoin(commission, eq(commission.id, invoice.commissionId))
    .orderBy(asc(invoice.day), asc(invoice.id))
    .all()

/** Remnants, also those used up, with the number of the commission they are left from; mm. */
export const everyRemnant = (db: Db) =>
  db
    .select({ remnant, commission: commission.number })
    .from(remnant)
    .innerJoin(garment, eq(garment.id, remnant.garmentId))
    .innerJoin(commission, eq(commission.id, garment.commissionId))
    .orderBy(asc(remnant.id))
    .all()
