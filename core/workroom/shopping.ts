import { z } from 'zod'
import { latestStarts } from '../plan/schedule/latest-start.ts'
import { reserve } from '../plan/stock/acts.ts'
import { type Article, type DatedSmall, shoppingList } from '../plan/stock/shopping.ts'
import { smallBalanceOf } from '../plan/stock/small-things.ts'
import { getCloth, listCloths } from '../store/cloths.ts'
import { garmentsOf, openCommissions, stageCounts } from '../store/commissions.ts'
import { getQuote } from '../store/quotes.ts'
import { addDays } from '../words/dates.ts'
import { readLength } from '../words/length.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { lineAsMade } from './as-made.ts'
import { ledgersIn, smallsOf, thingsOf } from './drawer.ts'
import * as inputs from './inputs.ts'
import { needsOn } from './needs.ts'
import { baseOf } from './open-work.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'
import { lineStillToCut } from './still-to-cut.ts'
import { entered, ledgerOf, lengthAt, lengthsIn, shown, wrote } from './stock.ts'

/** What must be bought for all open work, and what of it is ordered. */
export const shoppingRequests = [
  request({
    name: 'shopping.list',
    kind: 'query',
    about:
      'What must be bought for all open work, by supplier, each with the day to order it by. What is on its way is not bought again.',
    input: z.strictObject({}),
    run: (_, context) => shownFor(context),
  }),
  request({
    name: 'shopping.order',
    kind: 'command',
    about:
      'Notes that cloth of the shopping list is ordered: one length on its way, promised to the garments it is bought for.',
    input: z.strictObject({
      clothId: inputs.id,
      length: inputs.length.optional().describe('as listed, if not said'),
      orderedDay: inputs.day.optional().describe('today, if not said'),
      expectedDay: inputs.day.optional().describe('after the days it takes to come, if not said'),
    }),
    run: ({ clothId, length, ...days }, context) => {
      const cloth = getCloth(context.store.db, clothId, 'clothId')
      const { unit } = settingsOf(context).letterhead
      const item = listFor(context)
        .list.suppliers.flatMap(({ items }) => items)
        .find(({ article }) => article.id === clothId)
      if (item === undefined) throw new Refusal(phrase('refusal.shopping.notListed', { cloth: cloth.name }))
      const mm = length === undefined ? item.buy : refusingAt('length', () => readLength(length, unit))
      const { orderedDay = today(context), expectedDay = addDays(orderedDay, cloth.leadDays) } = days
      if (expectedDay < orderedDay)
        throw new Refusal(phrase('refusal.shopping.before', { day: { date: orderedDay } }), 'expectedDay')
      const { id } = entered(
        cloth,
        { mm, width: cloth.width, washed: false },
        { place: '', note: '', supplier: '', orderedDay, expectedDay },
        'shopping.order',
        context,
      )
      // Who needs it first has it first; whoever would have only a part of it stays on the list.
      for (const { garmentId, missing } of item.garments)
        if (missing <= lengthAt(id, context).free) {
          const act = { day: today(context), garmentId, mm: missing }
          wrote({ id }, reserve(ledgerOf(id, context), act), 'stock.reserve', context)
        }
      return { length: shown(id, context) }
    },
  }),
]

/** The list of all open work: garments that are cut need no cloth any more, and what is sewn no thread. */
function listFor(context: Context) {
  const { db } = context.store
  const commissions = new Map(openCommissions(db).map((row) => [row.id, row]))
  const garments = garmentsOf(db, [...commissions.keys()])
  const stages = Map.groupBy(
    stageCounts(
      db,
      garments.map(({ id }) => id),
    ),
    ({ garmentId }) => garmentId,
  )
  const isDone = (id: string, stage: string) =>
    (stages.get(id) ?? []).every((one) => one.stage !== stage || one.done === one.steps)
  const starts = latestStarts(baseOf(context))
  // Work that should have been begun already needs its things today; work that is never due has no day.
  const dayOf = (id: string) => (starts.has(id) ? (starts.get(id) ?? today(context)) : null)
  const snapshots = new Map([...commissions].map(([id, { quoteId }]) => [id, getQuote(db, quoteId).snapshot]))
  const wanted = garments.map((garment) => ({
    ...{ garment, day: dayOf(garment.commissionId) },
    line: lineAsMade(snapshots.get(garment.commissionId)!, garment, context),
  }))
  const needs = wanted
    .filter(({ garment }) => !isDone(garment.id, 'cut'))
    .flatMap(({ garment, line, day }) =>
      needsOn(garment.id, lineStillToCut(line, garment.id, context)).map((need) => ({ need, day })),
    )
  const smalls = wanted
    .filter(({ garment }) => !isDone(garment.id, 'sew'))
    .flatMap(({ garment, line, day }): DatedSmall[] =>
      smallsOf(line).map((small) => ({ ...small, garmentId: garment.id, day })),
    )
  const cloths = listCloths(db)
  const things = thingsOf(context)
  const ledgers = ledgersIn(context)
  const lengths = lengthsIn(context)
  const sellers = [...new Set(cloths.map(({ supplier }) => supplier))].filter((name) => name !== '')
  const list = shoppingList({
    articles: [
      ...cloths.map(
        ({ id, increment, supplier, leadDays }): Article => ({
          ...{ id, kind: 'cloth', step: increment, leadDays },
          supplierId: supplier === '' ? null : supplier,
        }),
      ),
      ...things.map(({ id, kind, pack }): Article => ({ id, kind, step: pack, supplierId: null })),
    ],
    suppliers: sellers.map((name) => ({ id: name, name, leadDays: 0 })),
    cloths: needs,
    lengths: lengths.map(({ length }) => length),
    smalls,
    left: new Map(things.map(({ id }) => [id, smallBalanceOf(ledgers.get(id) ?? []).left])),
  })
  return { list, commissions, garments, cloths, things, lengths }
}

/** By which day the cloth of garments is to be ordered, garment by garment; a garment that lacks none is not in it. */
export function clothOrderDays(context: Context): Map<string, string | null> {
  const { list } = listFor(context)
  // The list is by day: what is met first presses most.
  return new Map(
    list.suppliers
      .flatMap(({ items }) => items)
      .filter(({ article }) => article.kind === 'cloth')
      .flatMap(({ orderBy, garments }) => garments.map(({ garmentId }) => [garmentId, orderBy] as const))
      .reverse(),
  )
}

/** The list with the names a maker knows things by. */
function shownFor(context: Context) {
  const { list, commissions, garments, cloths, things, lengths } = listFor(context)
  const clothOf = new Map(cloths.map((cloth) => [cloth.id, cloth]))
  const thingOf = new Map(things.map((thing) => [thing.id, thing]))
  const forWhom = new Map(
    garments.map(({ id, title, wearer, commissionId }) => [
      id,
      { title, wearer, commissionId, number: commissions.get(commissionId)!.number },
    ]),
  )
  const lying = new Map(lengths.map(({ row }) => [row.id, row]))
  const day = today(context)
  return {
    day,
    suppliers: list.suppliers.map(({ supplier, orderBy, items }) => ({
      ...{ supplier: supplier?.name ?? null, orderBy },
      items: items.map((item) => {
        const cloth = clothOf.get(item.article.id)
        const thing = thingOf.get(item.article.id)
        return {
          ...item,
          name: thing?.name ?? phrase('price.line.cloth', { cloth: cloth?.name ?? item.article.id }),
          soldBy: thing?.soldBy ?? null,
          expectedDay: cloth === undefined ? null : addDays(day, cloth.leadDays),
          garments: item.garments.map((lack) => ({ ...lack, ...forWhom.get(lack.garmentId)! })),
        }
      }),
    })),
    fromStock: list.fromStock.map((one) => {
      const { clothId, place, arrivedDay, expectedDay } = lying.get(one.lengthId)!
      return {
        ...{ ...one, ...forWhom.get(one.garmentId)!, cloth: clothOf.get(clothId)?.name ?? '' },
        ...{ place, here: arrivedDay !== null, expectedDay },
      }
    }),
  }
}
