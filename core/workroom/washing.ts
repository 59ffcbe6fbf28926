import { z } from 'zod'
import { piecesFrom } from '../lay/as-cut.ts'
import { type BuyingRules, PLAIN_ORDER } from '../lay/types.ts'
import { wishedLay } from '../lay/wished-lay.ts'
import type { QuoteLine } from '../quote/types.ts'
import { getCommission, getGarment } from '../store/commissions.ts'
import { insertLaidAgain } from '../store/fittings.ts'
import { getQuote } from '../store/quotes.ts'
import { listLengths } from '../store/stock.ts'
import { printLength, readLength } from '../words/length.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { laidAgainOf, lineAsMade } from './as-made.ts'
import { ABSENT, type Guard } from './cutting.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf } from './settings.ts'
import { uncutWork } from './uncut.ts'

/** Cloth as it comes out of the wash. */
export const washingRequests = [
  request({
    name: 'garment.washed',
    kind: 'command',
    about:
      'The cloth of a garment measured after the wash: the garment is laid again on what is really there.',
    input: z.strictObject({
      garmentId: inputs.id,
      width: inputs.length.describe('from selvedge to selvedge, washed'),
      length: inputs.length.describe('washed'),
    }),
    run: ({ garmentId, ...sizes }, context) => {
      const { letterhead, buying } = settingsOf(context)
      const read = (field: 'width' | 'length') =>
        refusingAt(field, () => readLength(sizes[field], letterhead.unit))
      const [width, length] = [read('width'), read('length')]
      const { db } = context.store
      const garment = getGarment(db, garmentId, 'garmentId')
      const { snapshot } = getQuote(db, getCommission(db, garment.commissionId).quoteId)
      const line = lineAsMade(snapshot, garment, context)
      const lay = refusingAt('width', () => laidOn(line, width, buying))
      const needed = lay.length + buying.endAllowance
      if (needed > length) {
        const said = (mm: number) => printLength(mm, letterhead.unit, letterhead.locale)
        const params = { length: said(length), needed: said(Math.ceil(needed)) }
        throw new Refusal(phrase('refusal.wash.short', params), 'length')
      }
      const row = insertLaidAgain(db, {
        ...{ id: context.newId(), garmentId, width, length, lay, createdAt: context.now() },
      })
      recorded(context, 'garment.washed', 'garment', garmentId, null, {
        width,
        length,
        layLength: lay.length,
      })
      return { laid: { width, length, layLength: lay.length, spare: length - needed, id: row.id } }
    },
  }),
  request({
    name: 'garment.measured',
    kind: 'query',
    about: 'What was measured of a garment’s cloth after the wash, if anything was.',
    input: z.strictObject({ garmentId: inputs.id }),
    run: ({ garmentId }, context) => {
      const row = laidAgainOf(garmentId, context)
      return {
        measured:
          row === undefined
            ? null
            : { width: row.width, length: row.length, layLength: row.lay.length, at: row.createdAt },
      }
    },
  }),
]

/** A garment laid on cloth that has shrunk already, as wide as it was measured. */
export function laidOn({ estimate, cloth, others }: QuoteLine, width: number, buying: BuyingRules) {
  const pieces = piecesFrom(estimate.draft.pieces, 'main', others ?? {})
  const real = { ...cloth, width, warpShrinkage: 0, weftShrinkage: 0 }
  const manner = estimate.lay.manner ?? 'single'
  return wishedLay(pieces, real, buying, { ...PLAIN_ORDER, manner })
}

/**
 * Where lengths are entered, cloth that none of them has cannot have been washed: it is marked so only when she says so.
 *
 * @throws Refusal at `anyway.absent` when that was not answered
 */
export function refuseWashing(garmentId: string, warned: readonly Guard[], context: Context): void {
  const { db } = context.store
  if (warned.includes(ABSENT) || listLengths(db).length === 0) return
  const garment = getGarment(db, garmentId, 'garmentId')
  const row = getCommission(db, garment.commissionId)
  const uncut = { commissions: new Map([[row.id, row]]), garments: [garment], stages: new Map() }
  const cloth = uncutWork(uncut, context).cloths.get(garmentId)
  if (cloth?.at === 'toBuy')
    throw new Refusal(phrase('refusal.plan.notBought', { length: { mm: cloth.mm } }), `anyway.${ABSENT}`)
  if (cloth?.at === 'coming' || (cloth?.at === 'unpromised' && cloth.day !== undefined))
    throw new Refusal(phrase('refusal.plan.onItsWay'), `anyway.${ABSENT}`)
}
