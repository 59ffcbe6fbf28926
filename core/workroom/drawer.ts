import { z } from 'zod'
import { NOTIONS, NOTIONS_BY_PIECE, type NotionId } from '../draft/types.ts'
import { marksOf } from '../plan/steps.ts'
import {
  putBack,
  recount,
  type SmallMove,
  type SmallThing,
  smallBalanceOf,
  takeForSewn,
  takeIn,
} from '../plan/stock/small-things.ts'
import type { QuoteLine } from '../quote/types.ts'
import { getCommission, getGarment, stepsOfGarments } from '../store/commissions.ts'
import { getQuote } from '../store/quotes.ts'
import { insertSupplyMove, supplyLedgers } from '../store/stock.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { lineAsMade } from './as-made.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'

const supply = inputs.line(80).describe('thread:hand, thread:machine, thread:<id of another>, notion:<id>')

/** Threads and notions in the drawer. */
export const drawerRequests = [
  request({
    name: 'supplies.list',
    kind: 'query',
    about: 'Threads and notions with how much of each is there.',
    input: z.strictObject({}),
    run: (_, context) => {
      const ledgers = ledgersIn(context)
      return {
        supplies: thingsOf(context).map((thing) => ({
          ...thing,
          counted: ledgers.has(thing.id),
          left: smallBalanceOf(ledgers.get(thing.id) ?? []).left,
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
]

type Named = SmallThing & { name: ReturnType<typeof phrase> }

/** Every thread and notion the workroom knows. */
export function thingsOf(context: Context): Named[] {
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

/** What a garment is sewn with: metres of thread, notions in pieces or mm. */
export const smallsOf = ({ estimate }: QuoteLine): { articleId: string; amount: number }[] => [
  ...estimate.sewing.threads.map(({ work, metres }) => ({ articleId: `thread:${work}`, amount: metres })),
  ...(estimate.draft.notions ?? []).map((one) => ({
    articleId: `notion:${one.notion}`,
    amount: 'count' in one ? one.count : one.mm,
  })),
]

/** Ledgers of threads and notions by their ids; those that nobody ever counted have none. */
export const ledgersIn = ({ store: { db } }: Pick<Context, 'store'>): Map<string, SmallMove[]> =>
  supplyLedgers(db) as Map<string, SmallMove[]>

/**
 * Sets the drawer right by a garment whose sewing was ticked or unticked: sewn through, it has taken what it needed of the
 * things that were ever counted, once; open again, it has not.
 */
export function drawerAfter(garmentId: string, context: Context): void {
  const { db } = context.store
  const garment = getGarment(db, garmentId)
  const ledgers = ledgersIn(context)
  if (ledgers.size === 0) return
  const act = { day: today(context), garmentId }
  const { snapshot } = getQuote(db, getCommission(db, garment.commissionId).quoteId)
  const { sewn } = marksOf(stepsOfGarments(db, [garmentId]))
  const things = new Map(thingsOf(context).map((thing) => [thing.id, thing]))
  const needed = Map.groupBy(smallsOf(lineAsMade(snapshot, garment, context)), ({ articleId }) => articleId)
  for (const [id, ledger] of ledgers) {
    const thing = things.get(id)
    const amount = (needed.get(id) ?? []).reduce((sum, one) => sum + one.amount, 0)
    if (!sewn) moved(putBack(ledger, act), id, 'supply.putBack', context)
    else if (thing !== undefined)
      moved(takeForSewn(thing, ledger, { ...act, amount }), id, 'supply.take', context)
  }
}

/** @throws Refusal when there is no such thread or notion */
function thingOf(id: string, context: Context): SmallThing {
  const thing = thingsOf(context).find((one) => one.id === id)
  if (thing === undefined) throw new Refusal(phrase('refusal.quote.noThread'), 'supply')
  return thing
}

/** Writes a move into the ledger of a thing, if there is one, and answers with what is left. */
function moved(act: SmallMove | undefined, id: string, name: string, context: Context) {
  if (act !== undefined) {
    insertSupplyMove(context.store.db, { id: context.newId(), supply: id, act, at: context.now() })
    recorded(context, name, 'supply', id, null, act)
  }
  return { left: smallBalanceOf(ledgersIn(context).get(id) ?? []).left }
}
