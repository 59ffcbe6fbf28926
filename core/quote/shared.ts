import type { Piece } from '../draft/types.ts'
import { piecesFrom } from '../lay/as-cut.ts'
import { purchaseOf } from '../lay/purchase.ts'
import { together } from '../lay/together.ts'
import { type BuyingRules, PLAIN_ORDER } from '../lay/types.ts'
import { wishedLay } from '../lay/wished-lay.ts'
import type { LineDraft } from './snapshot.ts'
import type { QuoteLine, QuoteSnapshot, SharedLay } from './types.ts'

type Line = Pick<QuoteLine, 'title' | 'estimate' | 'others'>

/** The pieces of lines that are laid together, as their shared lay names them. */
export const sharedPieces = (lines: readonly Line[]): Piece[] =>
  together(
    lines.map(({ title, estimate, others }) => ({
      title,
      pieces: piecesFrom(estimate.draft.pieces, 'main', others ?? {}),
    })),
  )

/** A line that is laid out as the workroom lays, once, on a cloth of the book: it may share it. */
export type Sharing = { line: LineDraft; plainLay: boolean }

/**
 * Lines of one cloth laid together on one length of it, wherever that needs less than a length for each.
 *
 * @param lines in the order of the quote
 */
export function sharedLays(lines: readonly Sharing[], buying: BuyingRules): SharedLay[] {
  const byCloth = new Map<string, LineDraft[]>()
  for (const { line, plainLay } of lines) {
    const { id } = line.cloth
    const cuts = line.estimate.purchase.toBuy > 0
    if (id === undefined || !plainLay || line.quantity !== 1 || !cuts) continue
    byCloth.set(id, [...(byCloth.get(id) ?? []), line])
  }
  return [...byCloth.values()].flatMap((group): SharedLay[] => {
    const [first] = group
    if (group.length < 2 || first === undefined) return []
    const lay = wishedLay(sharedPieces(group), first.cloth, buying, PLAIN_ORDER)
    const purchase = purchaseOf(lay, first.cloth, buying)
    const apart = group.reduce((sum, { estimate }) => sum + estimate.purchase.toBuy, 0)
    const saves = apart - purchase.toBuy
    return saves > 0
      ? [{ lines: group.map(({ id }) => id), cloth: first.cloth.name, lay, purchase, saves }]
      : []
  })
}

/** What each line of a shared length pays for, mm: in proportion to what it would need alone; all of it together. */
export function sharesOf({ purchase }: SharedLay, alone: readonly number[]): number[] {
  const all = alone.reduce((sum, length) => sum + length, 0)
  const shares = alone.map((length) => Math.floor((purchase.toBuy * length) / all))
  const rest = purchase.toBuy - shares.reduce((sum, share) => sum + share, 0)
  return shares.map((share, i) => (i === 0 ? share + rest : share))
}

/** The length that a line shares with others of its quote, if it does. */
export const sharedBy = (
  { shared }: Pick<QuoteSnapshot, 'shared'>,
  { id }: Pick<QuoteLine, 'id'>,
): SharedLay | undefined => shared?.find(({ lines }) => lines.includes(id))
