import { z } from 'zod'
import { marksFrom, marksOf, nextStep, plannedSteps, stagesOf } from '../plan/steps.ts'
import { timeLeft } from '../plan/time-left.ts'
import { sameLines } from '../quote/difference.ts'
import { counterFor, numberOf } from '../quote/numbers.ts'
import { lineAsTaken, totalAsTaken } from '../quote/options.ts'
import { scheduleFor } from '../quote/schedule.ts'
import { clientNames, getClient } from '../store/clients.ts'
import {
  addGarments,
  type CommissionRow,
  commissionOfQuote,
  garmentsOf,
  garmentsOfCommission,
  getCommission,
  insertCommission,
  listCommissions,
  moveGarment,
  openStepsOf,
  stageCounts,
  stepsOfGarments,
  updateCommission,
} from '../store/commissions.ts'
import { takeNumber } from '../store/counters.ts'
import { getQuote, type QuoteStanding, quoteNumbers } from '../store/quotes.ts'
import { COMMISSION_STATES } from '../store/schema.ts'
import { findableCommission } from './finding.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { paceOf } from './pace.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'
import { releaseFor, reserveFor } from './stock.ts'
import { waitingFor } from './waiting.ts'

const byId = z.strictObject({ id: inputs.id })

/** Looking at accepted work. */
export const commissionRequests = [
  request({
    name: 'commission.get',
    kind: 'query',
    about: 'One commission: its garments, their steps and stages, and what is left in minutes.',
    input: byId,
    run: ({ id }, context) => ({ commission: followed(getCommission(context.store.db, id), context) }),
  }),
  request({
    name: 'commissions.list',
    kind: 'query',
    about:
      'The newest commissions with what is cut, sewn and hemmed and what is left, the oldest of them first.',
    input: z.strictObject({
      state: z.enum(COMMISSION_STATES).optional(),
      most: z.int().min(1).max(500).default(100),
      before: inputs.id.optional().describe('id of a commission: only older ones'),
    }),
    run: (asked, context) => ({
      commissions: atAGlance(listCommissions(context.store.db, asked), context),
    }),
  }),
]

/** Makes the commission of an accepted quote: one garment for each copy of each line, with its steps. */
export function commissionFrom(
  quote: QuoteStanding,
  { taken, ...given }: { dueDay: string | null; note: string; taken: Taken },
  context: Context,
) {
  const { db } = context.store
  const day = today(context)
  const { numbering } = settingsOf(context)
  const id = context.newId()
  const number = numberOf(
    'commission',
    day,
    takeNumber(db, counterFor('commission', day, numbering)),
    numbering,
  )
  const { garments, steps } = garmentsFor(quote.snapshot.lines, quote, taken, id, context)
  const row = {
    id,
    number,
    quoteId: quote.id,
    customerId: quote.customerId,
    day,
    ...given,
    agreedMinor: totalAsTaken(quote.snapshot, taken).minor,
    schedule: scheduleFor(quote.snapshot, totalAsTaken(quote.snapshot, taken)),
    currency: quote.snapshot.total.currency,
    state: 'open' as const,
    createdAt: context.now(),
  }
  insertCommission(db, row, garments, steps)
  for (const garment of garments) reserveFor(garment.id, context)
  findableCommission(id, context)
  recorded(context, 'quote.accept', 'commission', id, null, { number, quote: quote.number })
  return followed(getCommission(db, id), context)
}

type Taken = Readonly<Record<string, number>>

/** The garments of lines of a quote, one for each copy, each with its steps. */
function garmentsFor(
  lines: QuoteStanding['snapshot']['lines'],
  { snapshot }: QuoteStanding,
  taken: Taken,
  commissionId: string,
  context: Context,
  from = 0,
) {
  const copies = lines.flatMap(({ id: quoteGarmentId, quantity }) => {
    const option = taken[quoteGarmentId] ?? null
    const line = lineAsTaken(snapshot, { quoteGarmentId, option })
    return Array.from({ length: quantity }, (_, i) => ({ line, copy: i + 1, option }))
  })
  const garments = copies.map(({ line, copy, option }, i) => ({
    ...{ id: context.newId(), commissionId, quoteGarmentId: line.id },
    ...{ copy, option, position: from + i + 1 },
    ...{ title: line.title, wearer: line.wearer.name, clothName: line.cloth.name },
  }))
  const steps = copies.flatMap(({ line }, i) =>
    plannedSteps(line.estimate).map((step) => ({ ...step, id: context.newId(), garmentId: garments[i]!.id })),
  )
  return { garments, steps }
}

/**
 * A commission after the customer has changed her mind: garments that are the same go on as they are, what fell away is left
 * out with all that was done on it, and what is new begins.
 */
export function amended(before: QuoteStanding, quote: QuoteStanding, taken: Taken, context: Context) {
  const { db } = context.store
  const row = commissionOfQuote(db, before.id)!
  const same = sameLines(before.snapshot.lines, quote.snapshot.lines)
  const newLine = new Map([...same].map(([after, old]) => [old, after]))
  const garments = garmentsOf(db, [row.id])
  const dropped = garments.filter(({ quoteGarmentId }) => !newLine.has(quoteGarmentId))
  releaseFor(
    dropped.map(({ id }) => id),
    context,
  )
  for (const { id } of dropped) moveGarment(db, id, { droppedAt: context.now() })
  for (const { id, quoteGarmentId } of garments) {
    const line = newLine.get(quoteGarmentId)
    if (line !== undefined) moveGarment(db, id, { quoteGarmentId: line, option: taken[line] ?? null })
  }
  const fresh = quote.snapshot.lines.filter(({ id }) => !same.has(id))
  const added = garmentsFor(fresh, quote, taken, row.id, context, garments.length)
  addGarments(db, added.garments, added.steps)
  const agreed = totalAsTaken(quote.snapshot, taken)
  const changes = {
    ...{ quoteId: quote.id, agreedMinor: agreed.minor, schedule: scheduleFor(quote.snapshot, agreed) },
  }
  const after = updateCommission(db, row, row.revision, changes)
  for (const { id } of added.garments) reserveFor(id, context)
  findableCommission(row.id, context)
  recorded(context, 'quote.accept', 'commission', row.id, { quote: before.number }, { quote: quote.number })
  return followed(after, context)
}

/** Commissions as lists show them, without opening their quotes. */
export function atAGlance(rows: readonly CommissionRow[], context: Context) {
  const { db } = context.store
  const pace = paceOf(context)
  const garments = garmentsOf(
    db,
    rows.map(({ id }) => id),
  )
  const ids = garments.map(({ id }) => id)
  const stages = Map.groupBy(stageCounts(db, ids), ({ garmentId }) => garmentId)
  const open = Map.groupBy(openStepsOf(db, ids), ({ garmentId }) => garmentId)
  const numbers = quoteNumbers(
    db,
    rows.map(({ quoteId }) => quoteId),
  )
  const names = clientNames(
    db,
    rows.map(({ customerId }) => customerId),
  )
  const waiting = waitingFor({ rows, garments, open, stages }, context)
  const byCommission = Map.groupBy(garments, ({ commissionId }) => commissionId)
  return rows.map((row) => {
    const own = byCommission.get(row.id) ?? []
    return {
      ...row,
      quoteNumber: numbers.get(row.quoteId) ?? '',
      customer: names.get(row.customerId) ?? '',
      agreed: { minor: row.agreedMinor, currency: row.currency },
      garments: own.map(({ id, copy, title, wearer, clothName }) => {
        const left = open.get(id) ?? []
        return {
          ...{ id, copy, title, wearer, cloth: clothName },
          ...marksFrom(stages.get(id) ?? []),
          next: left[0] === undefined ? null : { id: left[0].id, name: left[0].name, stage: left[0].stage },
          waits: waiting.get(id) ?? [],
          left: timeLeft(left, pace),
        }
      }),
      left: timeLeft(
        own.flatMap(({ id }) => open.get(id) ?? []),
        pace,
      ),
    }
  })
}

/** A commission as the workroom follows it. */
export function followed(row: CommissionRow, context: Context) {
  const { db } = context.store
  const pace = paceOf(context)
  const { snapshot, number: quoteNumber } = getQuote(db, row.quoteId)
  const garments = garmentsOfCommission(db, row.id)
  const steps = stepsOfGarments(
    db,
    garments.map(({ id }) => id),
  )
  const stages = new Map(
    garments.map(({ id }) => [id, stagesOf(steps.filter(({ garmentId }) => garmentId === id))]),
  )
  const left = Map.groupBy(
    steps.filter(({ doneAt }) => doneAt === null),
    ({ garmentId }) => garmentId,
  )
  const waiting = waitingFor({ rows: [row], garments, open: left, stages }, context)
  return {
    ...row,
    quoteNumber,
    customer: snapshot.customer.name,
    noted: notedOf(
      snapshot.lines.map(({ wearer }) => wearer.id),
      context,
    ),
    agreed: { minor: row.agreedMinor, currency: row.currency },
    garments: garments.map((garment) => {
      const { id, copy } = garment
      const line = lineAsTaken(snapshot, garment)
      const own = steps.filter(({ garmentId }) => garmentId === id)
      return {
        ...{ id, copy, title: line.title, wearer: line.wearer.name, cloth: line.cloth.name },
        ...marksOf(own),
        stages: stages.get(id)!,
        waits: waiting.get(id) ?? [],
        steps: own,
        next: nextStep(own)?.id ?? null,
        left: timeLeft(own, pace),
      }
    }),
    left: timeLeft(steps, pace),
  }
}

/** What is noted of each wearer, for whoever makes it. */
const notedOf = (wearers: readonly string[], { store }: Context) =>
  [...new Set(wearers)]
    .map((id) => getClient(store.db, id))
    .flatMap(({ name, note }) => (note.trim() === '' ? [] : [{ name, note: note.trim() }]))
