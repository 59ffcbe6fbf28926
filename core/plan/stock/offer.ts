import { type Phrase, phrase } from '../../words/phrase.ts'
import { fromHundredths, hundredths, stepsFor } from './exact.ts'
import { type ClothNeed, lengthNeeded, UNWASHED, washedWidth } from './need.ts'
import type { ClothLength } from './types.ts'

/** A length that would serve: what it takes of it as it lies, and what would still be free, mm. */
export type Offer = { lengthId: string; washed: boolean; takes: number; leaves: number }

/** What the shelf has for a garment. */
export type Offered = {
  /** The shortest that is enough first. */
  offers: Offer[]
  /** Lengths of the same cloth that would not serve, and why. */
  others: { lengthId: string; why: Phrase }[]
  /** Where none serves: the need in washed and in unwashed cloth, and that rounded up to what the shop sells by, mm. */
  buy?: { washed: number; needed: number; toBuy: number }
}

/**
 * Which lengths in stock would serve a garment in one piece. What is promised to the garment already counts as free
 * for it. A length that is narrower than its lay is not offered, however little: the lay must be made anew for it.
 *
 * @param step by which the shop sells the cloth, mm
 */
export function offerFor(need: ClothNeed, lengths: readonly ClothLength[], step: number): Offered {
  if (need.length === 0) return { offers: [], others: [] }
  const same = lengths
    .filter(({ clothId }) => clothId === need.clothId)
    .map((length) => ({ length, free: freeFor(length, need.garmentId) }))
    .filter(({ free }) => free > 0)
    .sort((a, b) => a.free - b.free || a.length.width - b.length.width)
  const judged = same.map(({ length, free }) => ({ length, free, why: whyNot(need, length, free) }))
  const offers = judged.flatMap(({ length: { id, washed, shrinkage }, free, why }): Offer[] => {
    if (why !== undefined) return []
    const takes = lengthNeeded(need, { washed, shrinkage })
    return [{ lengthId: id, washed, takes, leaves: exactly(free - takes) }]
  })
  const others = judged.flatMap(({ length, why }) =>
    why === undefined ? [] : [{ lengthId: length.id, why }],
  )
  if (offers.length > 0) return { offers, others }
  const needed = lengthNeeded(need, UNWASHED)
  return { offers, others, buy: { washed: need.length, needed, toBuy: stepsFor(needed, step) * step } }
}

/** Why so much of a length would not serve; nothing where it would. */
export function whyNot(need: ClothNeed, length: ClothLength, free: number): Phrase | undefined {
  const width = washedWidth(need, length)
  if (hundredths(width) < hundredths(need.width))
    return phrase('stock.offer.narrow', { width: { mm: width }, needed: { mm: need.width } })
  const needed = lengthNeeded(need, length)
  return free < needed
    ? phrase('stock.offer.short', { free: { mm: free }, needed: { mm: needed } })
    : undefined
}

const freeFor = ({ free, reservedFor }: ClothLength, garmentId: string): number =>
  exactly(reservedFor.reduce((sum, held) => (held.garmentId === garmentId ? sum + held.mm : sum), free))

const exactly = (mm: number): number => fromHundredths(hundredths(mm))
