import { z } from 'zod'
import { NOTIONS, NOTIONS_BY_PIECE, type NotionId } from '../draft/types.ts'
import { latestStarts } from '../plan/schedule/latest-start.ts'
import { type Article, type DatedSmall, shoppingList } from '../plan/stock/shopping.ts'
import {
  recount,
  type SmallMove,
  type SmallThing,
  smallBalanceOf,
  takeIn,
} from '../plan/stock/small-things.ts'
import { lineAsTaken } from '../quote/options.ts'
import { listCloths } from '../store/cloths.ts'
import { garmentsOf, openCommissions, stageCounts } from '../store/commissions.ts'
import { getQuote } from '../store/quotes.ts'
import { insertSupplyMove, supplyLedgers } from '../store/stock.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { baseOf } from './calendar.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'
import { here, needOn } from './stock.ts'

const supply = inputs.line(80).describe('thread:hand, thread:machine, thread:<id of another>, notion:<id>')

/** Threads and notions in the drawer, and what must be bought for all open work. */
export const shoppingRequests = [
  request({
    name: 'supplies.list',
    kind: 'query',
    about: 'Threads and notions with how much of each is there.',
    input: z.strictObject({}),
    run: (_, context) => {
      const ledgers = supplyLedgers(context.store.db)
      return {
        supplies: thingsOf(context).map(({ name, ...thing }) => ({
          ...{ ...thing, name },
          counted: ledgers.has(thing.id),
          left: smallBalanceOf((ledgers.get(thing.id) ?? []) as SmallMove[]).left,
        })),
      }
    },
  }),
  request({
    name: 'supply.add',
    kind: 'command',
    about:
      'Enters thread or notions that came in: metres of thread, pieces, or mm of what is sold by length.',
    input: z.strictObject({ supply, amount: z.number().positive().max(1e9) }),
    run: ({ supply: id, amount }, context) =>
      moved(takeIn(thingOf(id, context), { day: today(context), amount }), id, 'supply.add', context),
  }),
  request({
    name: 'supply.count',
    kind: 'command',
    about: 'Says how much of a thread or notion is really there, be it nothing.',
    input: z.strictObject({ supply, amount: z.number().min(0).max(1e9) }),
    run: ({ supply: id, amount }, context) =>
      moved(recount(thingOf(id, context), { day: today(context), amount }), id, 'supply.count', context),
  }),
  request({
    name: 'shopping.list',
    kind: 'query',
    about: 'What must be bought for all open work, by supplier, each with the day to order it by.',
    input: z.strictObject({}),
    run: (_, context) => listFor(context),
  }),
]

type Named = SmallThing & { name: ReturnType<typeof phrase> }

/** Every thread and notion the workroom knows. */
function thingsOf(context: Context): Named[] {
  const { threadStock, otherThreads } = settingsOf(context)
  const thread = (
    id: string,
    { name, metresPerReel, soldAs = 'reel' }: (typeof threadStock)['hand'],
  ): Named => ({
    ...{ id: `thread:${id}`, kind: 'thread', soldBy: soldAs, pack: metresPerReel },
    name: phrase('price.line.thread', { thread: name }),
  })
  return [
    thread('hand', threadStock.hand),
    thread('machine', threadStock.machine),
    ...otherThreads.map((one) => thread(one.id, one)),
    ...NOTIONS.map(
      (id): Named => ({
        ...{ id: `notion:${id}`, kind: 'notion', name: phrase(`draft.notion.${id}`) },
        ...(isByPiece(id) ? { soldBy: 'piece', pack: 1 } : { soldBy: 'metre', pack: 1000 }),
      }),
    ),
  ]
}

const isByPiece = (id: NotionId): boolean => (NOTIONS_BY_PIECE as readonly NotionId[]).includes(id)

/** @throws Refusal when there is no such thread or notion */
function thingOf(id: string, context: Context): SmallThing {
  const thing = thingsOf(context).find((one) => one.id === id)
  if (thing === undefined) throw new Refusal(phrase('refusal.quote.noThread'), 'supply')
  return thing
}

function moved(act: SmallMove, id: string, name: string, context: Context) {
  insertSupplyMove(context.store.db, { id: context.newId(), supply: id, act, at: context.now() })
  recorded(context, name, 'supply', id, null, act)
  const ledger = supplyLedgers(context.store.db).get(id) ?? []
  return { left: smallBalanceOf(ledger as SmallMove[]).left }
}

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
  const snapshots = new Map([...commissions].map(([id, { quoteId }]) => [id, getQuote(db, quoteId).snapshot]))
  const lines = new Map(
    garments.map((garment) => [garment.id, lineAsTaken(snapshots.get(garment.commissionId)!, garment)]),
  )
  const cloths = listCloths(db)
  const names = new Map(cloths.map(({ id, name }) => [id, name]))
  const needs = garments
    .filter(({ id }) => !isDone(id, 'cut'))
    .flatMap(({ id, commissionId }) => {
      const need = needOn(id, lines.get(id)!)?.need
      return need === undefined ? [] : [{ need, day: starts.get(commissionId) ?? null }]
    })
  const smalls = garments
    .filter(({ id }) => !isDone(id, 'sew'))
    .flatMap((garment): DatedSmall[] => {
      const line = lines.get(garment.id)!
      const day = starts.get(garment.commissionId) ?? null
      const at = (articleId: string, amount: number) => ({ articleId, garmentId: garment.id, amount, day })
      return [
        ...line.estimate.sewing.threads.map(({ work, metres }) => at(`thread:${work}`, metres)),
        ...(line.estimate.draft.notions ?? []).map((one) =>
          at(`notion:${one.notion}`, 'count' in one ? one.count : one.mm),
        ),
      ]
    })
  const things = thingsOf(context)
  const ledgers = supplyLedgers(db)
  const list = shoppingList({
    articles: [
      ...cloths.map(
        ({ id, increment, supplier }): Article => ({
          ...{ id, kind: 'cloth', step: increment, supplierId: supplier === '' ? null : supplier },
        }),
      ),
      ...things.map(({ id, kind, pack }): Article => ({ id, kind, step: pack, supplierId: null })),
    ],
    suppliers: [...Map.groupBy(cloths, ({ supplier }) => supplier)]
      .filter(([name]) => name !== '')
      .map(([name, own]) => ({ id: name, name, leadDays: Math.max(...own.map(({ leadDays }) => leadDays)) })),
    cloths: needs,
    lengths: here(context),
    smalls,
    left: new Map(things.map(({ id }) => [id, smallBalanceOf((ledgers.get(id) ?? []) as SmallMove[]).left])),
  })
  const nameOf = (id: string) =>
    names.has(id)
      ? phrase('price.line.cloth', { cloth: names.get(id)! })
      : (things.find((one) => one.id === id)?.name ?? phrase('price.line.cloth', { cloth: id }))
  return {
    suppliers: list.suppliers.map(({ supplier: from, orderBy, items }) => ({
      ...{ supplier: from?.name ?? null, orderBy },
      items: items.map((item) => ({ ...item, name: nameOf(item.article.id) })),
    })),
    fromStock: list.fromStock,
  }
}
