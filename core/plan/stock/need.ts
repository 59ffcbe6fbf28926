import { usableWidth } from '../../lay/cloth.ts'
import type { Cloth, Purchase } from '../../lay/types.ts'
import { upToHundredth } from './exact.ts'
import type { ClothLength, Shrinkage } from './types.ts'

/** Cloth that a garment needs in one length. */
export type ClothNeed = {
  garmentId: string
  clothId: string
  /** Washed, along the warp, mm: what lies on the table, without what washing takes. */
  length: number
  /** Of that, what the pieces and the table take, without the maker's margin: less will not do, mm. */
  least: number
  /** Washed, across, selvedges included, mm. */
  width: number
  /** Cut off before washing for a test square, where the shrinkage of a length has not been measured, mm. */
  strip: number
  /** Of the cloth, as the book has it. */
  shrinkage: Shrinkage
}

type Lying = Pick<ClothLength, 'washed' | 'shrinkage'>

/**
 * What a garment needs by what was to be bought for it. The maker's margin stays in it, shrinkage does not: that
 * depends on the length it is cut from.
 *
 * @throws Refusal when the cloth's figures cannot be
 */
export function needOf(
  { garmentId, clothId }: Pick<ClothNeed, 'garmentId' | 'clothId'>,
  { layLength, endAllowance, squaring, testStrip, needed, margin }: Purchase,
  cloth: Cloth,
): ClothNeed {
  usableWidth(cloth)
  const { width, warpShrinkage: warp, weftShrinkage: weft } = cloth
  const withMargin = needed === 0 ? 0 : needed / (needed - margin)
  const least = layLength + endAllowance + squaring
  return {
    ...{ garmentId, clothId, length: least * withMargin, least },
    width: width * (1 - weft),
    strip: testStrip * withMargin,
    shrinkage: { warp, weft },
  }
}

/** Cloth as a shop sells it: unwashed, and nobody has measured yet what washing takes of it. */
export const UNWASHED: Lying = { washed: false }

/** How much of a length a need takes, as that lies there, mm: more if it is still to be washed. */
export function lengthNeeded({ length, strip, shrinkage }: ClothNeed, on: Lying): number {
  if (length === 0) return 0
  if (on.washed) return upToHundredth(length)
  return upToHundredth(
    on.shrinkage === undefined ? (length + strip) / (1 - shrinkage.warp) : length / (1 - on.shrinkage.warp),
  )
}

/** How much of a need so much of a length meets, in washed cloth, mm. */
export function metBy({ strip, shrinkage }: ClothNeed, on: Lying, mm: number): number {
  if (on.washed) return mm
  return on.shrinkage === undefined
    ? Math.max(0, mm * (1 - shrinkage.warp) - strip)
    : mm * (1 - on.shrinkage.warp)
}

/** How wide a length is, or will be, once it is washed, mm. */
export const washedWidth = ({ shrinkage }: ClothNeed, on: Lying & Pick<ClothLength, 'width'>): number =>
  on.washed ? on.width : on.width * (1 - (on.shrinkage ?? shrinkage).weft)
