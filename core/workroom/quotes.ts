import { z } from 'zod'
import { type Construction, titleOf } from '../draft/construction.ts'
import { describeExtras } from '../draft/extras.ts'
import type { OtherCloths } from '../lay/as-cut.ts'
import { nameOf, varied } from '../price/alternatives.ts'
import { type Habits, reckoned, type Wanted } from '../price/estimate.ts'
import { differenceOf } from '../quote/difference.ts'
import { counterFor, numberOf } from '../quote/numbers.ts'
import { sharedLays, sharesOf } from '../quote/shared.ts'
import { type LineDraft, quoteSnapshot } from '../quote/snapshot.ts'
import type { QuotedCloth, QuoteSnapshot } from '../quote/types.ts'
import { getClient } from '../store/clients.ts'
import { getCloth } from '../store/cloths.ts'
import { commissionOfQuote } from '../store/commissions.ts'
import { takeNumber } from '../store/counters.ts'
import { latestDocument } from '../store/documents.ts'
import { getMeasurementSet, markUsed } from '../store/measurement-sets.ts'
import { getQuote, insertQuote, listQuotes, type QuoteStanding, setQuoteState } from '../store/quotes.ts'
import { dayAt } from '../words/dates.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { clothOf } from './cloths.ts'
import { amended, commissionFrom } from './commissions.ts'
import { cutFor } from './cuts.ts'
import { findableQuote } from './finding.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { promiserOf, readyIfAccepted } from './ready-by.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'
import { habitsOf, onOrder, setInShort, wantedFor } from './wanted.ts'

const line = z.strictObject({
  wearerId: inputs.id.describe('client who wears it'),
  measurementSetId: inputs.id,
  construction: z.string(),
  choices: inputs.choices,
  extras: inputs.extras,
  clothId: inputs.id,
  otherClothIds: inputs.otherClothIds,
  ...onOrder,
  quantity: z.int().min(1).max(200).default(1),
  options: z
    .array(inputs.variation)
    .max(6)
    .default([])
    .describe('other ways of making it, for the client to pick from'),
})
/** A quote as it is asked for; a change to accepted work is asked for in the same way. */
export const order = z.strictObject({
  customerId: inputs.id.describe('client who pays'),
  lines: z.array(line).min(1).max(40),
  shipping: inputs.money.optional().describe('postage and packing before tax'),
  supersedes: inputs.id.optional().describe('id of a sent quote that this one replaces'),
  promise: z
    .literal('reckoned')
    .or(inputs.day)
    .optional()
    .describe('a day to name on the quote, or that which is reckoned from all accepted work'),
})
type Line = z.output<typeof line>

/** Quotes: reckoning and saving them, and what becomes of them. */
export const quoteRequests = [
  request({
    name: 'quote.save',
    kind: 'command',
    about: 'Reckons and saves a quote. From then on it is frozen; only what becomes of it changes.',
    input: order,
    run: (input, context) => ({ quote: saveQuote(input, context) }),
  }),
  request({
    name: 'quote.get',
    kind: 'query',
    about:
      'One quote with everything it was reckoned from, the day it was last printed, and in what it differs from the one it replaces.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, { store }) => {
      const quote = getQuote(store.db, id)
      const print = latestDocument(store.db, 'quote', id, null)
      const before = quote.supersedes === null ? undefined : getQuote(store.db, quote.supersedes)
      return {
        quote,
        printed: print === undefined ? null : dayAt(print.createdAt, settingsOf({ store }).timeZone),
        ...(before === undefined ? {} : { difference: differenceOf(before.snapshot, quote.snapshot) }),
      }
    },
  }),
  request({
    name: 'quotes.list',
    kind: 'query',
    about: 'The newest quotes in short, the oldest of them first.',
    input: z.strictObject({ most: z.int().min(1).max(5000).default(200) }),
    run: ({ most }, { store }) => ({
      quotes: listQuotes(store.db, most).map(({ short, ...row }) => ({ ...row, ...short })),
    }),
  }),
  request({
    name: 'quote.accept',
    kind: 'command',
    about: 'Takes a sent quote as accepted and makes its commission.',
    input: z.strictObject({
      id: inputs.id,
      dueDay: inputs.day.optional(),
      note: inputs.line(2000).default(''),
      taken: z
        .record(z.string(), z.int().min(0))
        .default({})
        .describe('by id of a line, the number of the option that is taken, from 0'),
    }),
    run: ({ id, dueDay, note, taken }, context) => {
      const quote = sentQuote(id, 'id', context)
      refuseNoOption(quote, taken)
      becomes(quote, 'accepted', 'quote.accept', context)
      const changed = quote.supersedes === null ? undefined : getQuote(context.store.db, quote.supersedes)
      if (changed?.state === 'accepted') {
        becomes(changed, 'superseded', 'quote.accept', context)
        return { commission: amended(changed, quote, taken, context) }
      }
      return {
        commission: commissionFrom(
          quote,
          { dueDay: dueDay ?? dueDayOf(quote.snapshot, context), note, taken },
          context,
        ),
      }
    },
  }),
  request({
    name: 'quote.decline',
    kind: 'command',
    about: 'Notes that the customer did not take a quote.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, context) => {
      becomes(sentQuote(id, 'id', context), 'declined', 'quote.decline', context)
      return { quote: inShort(getQuote(context.store.db, id)) }
    },
  }),
]

/** Reckons a quote from what is stored, numbers it, freezes the measures it uses and stores it. */
export function saveQuote(
  { customerId, lines, shipping, supersedes, promise }: z.output<typeof order>,
  context: Context,
) {
  const { db } = context.store
  const settings = settingsOf(context)
  const { numbering } = settings
  const customer = getClient(db, customerId, 'customerId')
  const replaced = supersedes === undefined ? undefined : replaceable(supersedes, context)
  const garments = lines.reduce((sum, { quantity }) => sum + quantity, 0)
  const alone = lines.map((asked, i) =>
    refusingAt(`lines.${i}`, () => lineOf({ ...asked, garments }, context)),
  )
  const { drafts, shared } = laidTogether(lines, alone, garments, context)
  const day = today(context)
  const snapshot = quoteSnapshot({
    number: numberOf('quote', day, takeNumber(db, counterFor('quote', day, numbering)), numbering),
    day,
    settings,
    customer: { id: customer.id, name: customer.name, address: customer.address },
    ...{ lines: drafts, shared, shipping },
    ...(replaced === undefined ? {} : { supersedes: replaced.number }),
    ...promisedBy(promise, drafts, context),
  })
  const id = context.newId()
  const { number, version } = snapshot
  const row = {
    id,
    number,
    customerId,
    day,
    snapshot,
    snapshotVersion: version,
    supersedes: supersedes ?? null,
    createdAt: context.now(),
  }
  const rests = drafts.map(({ id: lineId, wearer, measurementSet, construction, quantity, cloth }, i) => ({
    ...{ id: lineId, quoteId: id, position: i + 1, construction, quantity },
    wearerId: wearer.id,
    measurementSetId: measurementSet.id,
    clothId: cloth.id ?? null,
  }))
  for (const { measurementSetId } of lines) markUsed(db, measurementSetId, context.now())
  insertQuote(db, row, rests)
  // What was accepted stands until the customer has accepted what is to stand in its place.
  if (replaced?.state === 'sent') becomes(replaced, 'superseded', 'quote.save', context)
  findableQuote(id, context)
  recorded(context, 'quote.save', 'quote', id, null, { number, total: snapshot.total })
  return getQuote(db, id)
}

/** The day by which accepted work is due: as the quote promised it, or, where the yes comes too late for that, settled anew. */
function dueDayOf({ promised, answerBy, lines }: QuoteSnapshot, context: Context): string | null {
  if (promised === undefined) return null
  if (answerBy === undefined || today(context) <= answerBy) return promised
  const anew = readyIfAccepted(lines, context)
  return anew === null || anew < promised ? promised : anew
}

/** The day that a quote names, if it names one and the work is ever done. */
function promisedBy(
  promise: z.output<typeof order>['promise'],
  drafts: readonly LineDraft[],
  context: Context,
): { promised?: string } {
  const promised = promise === 'reckoned' ? promiserOf(context)(drafts).day : promise
  return promised === undefined || promised === null ? {} : { promised }
}

/** The lines, those of one cloth laid together where it saves some and each paying its share of that length. */
function laidTogether(
  lines: readonly Line[],
  alone: readonly LineDraft[],
  garments: number,
  context: Context,
) {
  const shared = sharedLays(
    alone.map((line, i) => ({ line, plainLay: isPlain(lines[i]!) })),
    settingsOf(context).buying,
  )
  const share = new Map(
    shared.flatMap((group) => {
      const lengths = group.lines.map((id) => alone.find((line) => line.id === id)!.estimate.purchase.toBuy)
      const shares = sharesOf(group, lengths)
      return group.lines.map((id, i) => [id, shares[i]!] as const)
    }),
  )
  const drafts = alone.map((line, i) =>
    share.has(line.id)
      ? { ...lineOf({ ...lines[i]!, garments, share: share.get(line.id) }, context), id: line.id }
      : line,
  )
  return { drafts, shared }
}

/** A lay that nobody has had a say in yet, on cloth of the workroom's, of a garment that is made in one way. */
const isPlain = ({ lay, options, brought }: Line): boolean =>
  lay.manner === 'single' &&
  lay.flaws.length === 0 &&
  lay.locked.length === 0 &&
  lay.placements === undefined &&
  options.length === 0 &&
  brought === undefined

type Counted = Line & { garments: number; share?: number | undefined }

function lineOf(asked: Counted, context: Context): LineDraft {
  const { db } = context.store
  const wearer = getClient(db, asked.wearerId, 'wearerId')
  const set = getMeasurementSet(db, asked.measurementSetId, 'measurementSetId')
  if (set.clientId !== wearer.id)
    throw new Refusal(phrase('refusal.quote.otherBody', { wearer: wearer.name }), 'measurementSetId')
  const wanted = wantedFor(asked, context)
  const habits = habitsOf(settingsOf(context), context, asked)
  const { construction, body } = wanted
  return {
    ...made(wanted, habits),
    id: context.newId(),
    wearer: { id: wearer.id, name: wearer.name },
    measurementSet: setInShort(set),
    body,
    quantity: asked.quantity,
    construction: construction.id,
    title: titleOf(construction),
    ...(Object.keys(asked.extras).length === 0 ? {} : { extras: asked.extras }),
    ...(asked.price.tax === undefined ? {} : { taxBasisPoints: asked.price.tax }),
    options: asked.options.map((given, i) =>
      refusingAt(`options.${i}`, () => {
        const cloth =
          given.clothId === undefined ? undefined : clothOf(getCloth(db, given.clothId, 'clothId'))
        return { ...made(varied(wanted, given, cloth), habits), name: nameOf(given, cloth?.name) }
      }),
    ),
  }
}

type Made = Omit<Wanted, 'construction' | 'cloth' | 'others'> & {
  construction: Construction
  cloth: QuotedCloth
  others: OtherCloths<QuotedCloth>
}

/** A garment reckoned, and what a quote says of it. */
function made(wanted: Made, habits: Habits) {
  const { construction, cloth, others, choices, extras = {}, finishPlan } = wanted
  const found = reckoned(cutFor(wanted, habits), wanted, habits)
  const { draft, lay, brought, purchase } = found
  const clothLine =
    brought === undefined
      ? phrase('quote.describe.cloth', { cloth: cloth.name })
      : phrase('quote.describe.brought', { cloth: cloth.name, needed: { mm: Math.ceil(purchase.needed) } })
  return {
    description: [
      ...construction.describe(draft),
      ...describeExtras(extras, draft),
      ...(lay.placements.length === 0 ? [] : [clothLine]),
      ...(found.others ?? []).map((other) => phrase(`quote.describe.${other.role}`, { cloth: other.cloth })),
      phrase('quote.describe.sewn', { plan: phrase(`sew.finishPlan.${finishPlan}`) }),
    ],
    asked: choices,
    cloth,
    ...(found.others === undefined ? {} : { others }),
    estimate: found,
  }
}

/** @throws Refusal at `taken` when an option is taken that the quote does not offer */
function refuseNoOption({ snapshot }: QuoteStanding, taken: Readonly<Record<string, number>>): void {
  for (const [id, option] of Object.entries(taken)) {
    const line = snapshot.lines.find((one) => one.id === id)
    if (line?.options?.[option] === undefined) throw new Refusal(phrase('refusal.quote.noOption'), 'taken')
  }
}

/** @throws Refusal when the quote is not one that still waits for an answer */
function sentQuote(id: string, field: string, { store }: Context): QuoteStanding {
  const quote = getQuote(store.db, id, field)
  if (quote.state === 'sent') return quote
  const state = phrase(`quote.state.${quote.state}`)
  throw new Refusal(phrase('refusal.quote.notSent', { number: quote.number, state }), field)
}

/** @throws Refusal when the quote neither waits for an answer nor stands behind an open commission */
function replaceable(id: string, context: Context): QuoteStanding {
  const quote = getQuote(context.store.db, id, 'supersedes')
  if (quote.state === 'sent') return quote
  const commission = commissionOfQuote(context.store.db, id)
  if (quote.state === 'accepted' && commission?.state === 'open') return quote
  const state = phrase(`quote.state.${quote.state}`)
  throw new Refusal(phrase('refusal.quote.notAmendable', { number: quote.number, state }), 'supersedes')
}

function becomes(quote: QuoteStanding, state: QuoteStanding['state'], name: string, context: Context): void {
  setQuoteState(context.store.db, quote.id, state, context.now())
  recorded(context, name, 'quote', quote.id, { state: quote.state }, { state })
}

const inShort = ({ id, number, customerId, day, state, snapshot }: QuoteStanding) => ({
  ...{ id, number, customerId, day, state },
  customer: snapshot.customer.name,
  garments: snapshot.lines.map(({ title, wearer, quantity }) => ({ title, wearer: wearer.name, quantity })),
  validUntil: snapshot.validUntil,
  total: snapshot.total,
  supersedes: snapshot.supersedes ?? null,
})
