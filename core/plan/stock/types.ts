import type { Day } from '../../words/dates.ts'
import type { Money } from '../../words/money.ts'

/** What washing takes of a cloth, in parts of one: along the warp, and across it. */
export type Shrinkage = { warp: number; weft: number }

/** A length came in: bought, or, with `from`, an offcut that a garment left of another length. */
export type Came = {
  kind: 'came'
  day: Day
  mm: number
  width: number
  washed: boolean
  from?: { lengthId: string; garmentId: string } | undefined
}

/** Something was promised to a garment, let go again, or cut for it. */
export type ForGarment = { kind: 'reserved' | 'released' | 'cut'; day: Day; garmentId: string; mm: number }

/**
 * What was said to be cut for a garment never was: all of it, `mm`. So much of it lies on the length again as `back`
 * says; the rest was counted with the length meanwhile.
 */
export type Uncut = { kind: 'uncut'; day: Day; garmentId: string; mm: number; back: number }

/** A garment's cutting left an offcut, which lies in stock as the length `lengthId`. */
export type GaveBack = {
  kind: 'gaveBack'
  day: Day
  garmentId: string
  mm: number
  width: number
  lengthId: string
}

/** Measured again, after washing above all: this is what it is now. */
export type Measured = { kind: 'measured'; day: Day; mm: number; width: number; washed: boolean }

/** Counted again: so much is there, whatever was thought. */
export type Corrected = { kind: 'corrected'; day: Day; mm: number }

/**
 * One line of a length's ledger, which is only ever added to. Lengths are mm along the warp, widths mm across, both
 * in hundredths of a millimetre at the finest.
 */
export type Move = Came | ForGarment | Uncut | GaveBack | Measured | Corrected

/** So much of a length for a garment, mm along the warp. */
export type Held = { garmentId: string; mm: number }

/** What was cut for a garment, mm: in all, the part of it that was cut before washing, and from what width at most. */
export type Used = Held & {
  unwashed: number
  width: number
  /** Cloth cut, and what of it came back as offcuts, mm². */
  area: number
  back: number
}

/**
 * How a length stands. `came + returned + changed = used + length`, to the hundredth of a millimetre, and
 * `length = reserved + free`.
 */
export type Balance = {
  length: number
  width: number
  washed: boolean
  reserved: number
  free: number
  reservedFor: Held[]
  usedBy: Used[]
  came: number
  /** As an offcut of another length. */
  returned: number
  used: number
  /** What measuring and counting again have added, or, less than nothing, taken away. */
  changed: number
}

/** What is known of a length apart from its ledger. */
export type LengthKnown = {
  id: string
  clothId: string
  /** The length that this is an offcut of. */
  parent?: string | undefined
  /** Measured on a test square of this very length. */
  shrinkage?: Shrinkage | undefined
  pricePerMetre?: Money | undefined
}

/** A length of cloth in stock as it lies there now. */
export type ClothLength = LengthKnown & Balance
