import { z } from 'zod'
import { estimatesIn } from '../draft/construction.ts'
import { getCommission, getGarment, stepsOfGarments } from '../store/commissions.ts'
import { cutPiecesOf, markPieceCut } from '../store/cut-pieces.ts'
import { getQuote } from '../store/quotes.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { laidAgainOf, lineAsMade } from './as-made.ts'
import { constructionFor } from './constructions.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'

/** What is asked once before good cloth is cut, in this order. */
const GUARDS = ['untried', 'unwashed', 'unmeasured', 'estimated'] as const
/** What is asked once before cloth is washed. */
export const ABSENT = 'absent'
/** What a maker is asked before cloth is washed or cut. */
export type Guard = (typeof GUARDS)[number] | typeof ABSENT

/** Guards that the maker has read; one not among them still holds her back. */
export const anyway = z
  .array(z.enum([ABSENT, ...GUARDS]))
  .max(GUARDS.length + 1)
  .default([])
  .describe('what she was warned of, and does all the same')

/** The pieces of a garment, and which of them are cut. */
export const cuttingRequests = [
  request({
    name: 'pieces.list',
    kind: 'query',
    about: 'Every copy of every piece of a garment, and which of them are cut.',
    input: z.strictObject({ garmentId: inputs.id }),
    run: ({ garmentId }, context) => {
      const cut = new Set(
        cutPiecesOf(context.store.db, garmentId).map(({ piece, copy }) => `${piece}/${copy}`),
      )
      return {
        pieces: copiesOf(garmentId, context).map((one) => ({
          ...one,
          cut: cut.has(`${one.piece}/${one.copy}`),
        })),
      }
    },
  }),
  request({
    name: 'piece.cut',
    kind: 'command',
    about: 'Marks one copy of a piece cut, or not. The guards of cutting ask first, as for the whole stage.',
    input: z.strictObject({
      garmentId: inputs.id,
      piece: inputs.line(100),
      copy: inputs.line(100),
      cut: z.boolean().default(true),
      anyway,
    }),
    run: ({ garmentId, piece, copy, cut, anyway: warned }, context) => {
      const { db } = context.store
      const copies = copiesOf(garmentId, context)
      if (!copies.some((one) => one.piece === piece && one.copy === copy))
        throw new Refusal(phrase('refusal.plan.noPiece', { piece, copy }), 'piece')
      if (cut) refuseCutting(garmentId, warned, context)
      markPieceCut(db, { garmentId, piece, copy }, cut ? context.now() : null)
      recorded(context, 'piece.cut', 'garment', garmentId, { piece, copy, cut: !cut }, { piece, copy, cut })
      return { cut: cutPiecesOf(db, garmentId).length, of: copies.length }
    },
  }),
]

/** The copies of a garment's pieces, as its cutting sheet names them. */
export function copiesOf(garmentId: string, { store }: Context) {
  const { db } = store
  const garment = getGarment(db, garmentId, 'garmentId')
  const { snapshot } = getQuote(db, getCommission(db, garment.commissionId).quoteId)
  const { draft } = lineAsMade(snapshot, garment, { store }).estimate
  return draft.pieces.flatMap(({ id, name, copies }) =>
    copies.map((copy) => ({ piece: id, copy: copy.id, name, copyName: copy.name })),
  )
}

/**
 * Guards the good cloth: before its toile is fitted, before it is washed, before what the wash has left of it is
 * measured, and by measures that are estimates, it is cut only when she says so.
 *
 * @throws Refusal at `anyway.<guard>` for the first that was not answered
 */
export function refuseCutting(garmentId: string, warned: readonly Guard[], context: Context): void {
  for (const guard of GUARDS) {
    const why = warned.includes(guard) ? undefined : GUARD[guard](garmentId, context)
    if (why !== undefined) throw new Refusal(why, `anyway.${guard}`)
  }
}

type Why = ReturnType<typeof phrase> | undefined
const GUARD: Record<(typeof GUARDS)[number], (garmentId: string, context: Context) => Why> = {
  untried: (garmentId, { store: { db } }) => {
    const toile = stepsOfGarments(db, [garmentId]).find(({ key }) => key === 'toile')
    return toile !== undefined && toile.doneAt === null ? phrase('refusal.plan.toile') : undefined
  },
  unwashed: (garmentId, { store: { db } }) => {
    const wash = stepsOfGarments(db, [garmentId]).find(({ key }) => key === 'wash')
    return wash !== undefined && wash.doneAt === null ? phrase('refusal.plan.unwashed') : undefined
  },
  unmeasured: (garmentId, context) => {
    const { cloth, estimate } = lineOf(garmentId, context)
    const shrinks = cloth.warpShrinkage > 0 || cloth.weftShrinkage > 0
    if (!shrinks || estimate.lay.placements.length === 0) return undefined
    return laidAgainOf(garmentId, context) === undefined ? phrase('refusal.plan.unmeasured') : undefined
  },
  estimated: (garmentId, context) => {
    const { body, construction } = lineOf(garmentId, context)
    const guessed = estimatesIn(constructionFor(construction, context), body)
    const [first] = guessed
    if (first === undefined) return undefined
    const params = { count: guessed.length, measure: phrase(`measure.name.${first}`) }
    return phrase('refusal.plan.estimated', params)
  },
}

function lineOf(garmentId: string, { store }: Context) {
  const { db } = store
  const garment = getGarment(db, garmentId, 'garmentId')
  const { snapshot } = getQuote(db, getCommission(db, garment.commissionId).quoteId)
  return lineAsMade(snapshot, garment, { store })
}
