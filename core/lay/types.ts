import type { Rectangle } from '../geometry/types.ts'

/**
 * What the lay must know of a cloth, as bought. Lengths in mm, shrinkages in parts of one (0.06 = 6 %).
 * `warpShrinkage` shortens the length, `weftShrinkage` the width.
 */
export type Cloth = {
  width: number
  /** Width lost at each side, mm; 0 when the selvedges are used. */
  selvedge: number
  warpShrinkage: number
  weftShrinkage: number
  /** Whether one face is the right one: then each copy's hand is fixed and none may be turned over. */
  rightSide: boolean
  /** Pile or one-way print: pieces keep one direction. */
  nap: boolean
  /** Thickness of one layer, mm. */
  thickness: number
  /** The shop sells lengths in steps of this, mm. */
  increment: number
}

/** Degrees anticlockwise a copy may be turned by; pieces on the bias lie at the odd ones. */
export type Angle = 0 | 45 | 90 | 135 | 180 | 225 | 270 | 315

/** Where one copy lies. Its cut outline is flipped (x → −x) if `flipped`, turned by `angle` degrees
 * anticlockwise, then moved by (x, y). In a lay x runs from the near selvedge, y from the cut end. */
export type Placement = {
  piece: string
  copy: string
  x: number
  y: number
  angle: Angle
  flipped: boolean
}

/** A cutting layout on washed cloth, mm. */
export type Lay = {
  usableWidth: number
  /** Length used, from the cut end to the furthest point of any piece. */
  length: number
  placements: Placement[]
  /** Part of usableWidth × length covered by pieces, 0–1. */
  used: number
  /** Largest rectangles left inside the length, biggest first. */
  offcuts: Rectangle[]
  /** How the cloth lay, if not flat and in one layer. */
  manner?: 'doubled' | 'torn'
  /** Where the cloth is torn across, from the cut end. */
  tears?: number[]
  /** Flaws in the cloth that the pieces were kept off. */
  flaws?: Rectangle[]
}

/**
 * How the maker wants her lay. `single`: flat, in one layer. `doubled`: folded along the length, cut two at
 * a time. `torn`: in bands that are torn off across the cloth.
 */
export const MANNERS = ['single', 'doubled', 'torn'] as const
export type Manner = (typeof MANNERS)[number]
export type LayOrder = {
  manner: Manner
  /** How many of every copy. */
  quantity: number
  /** Ground on the washed cloth that no piece may cover, from the near selvedge and the cut end. */
  flaws: readonly Rectangle[]
  /** Copies already cut, or laid by hand: they stay. */
  locked: readonly Placement[]
}

/** A lay nobody asked anything of: one garment, flat, on cloth without flaws. */
export const PLAIN_ORDER: LayOrder = { manner: 'single', quantity: 1, flaws: [], locked: [] }

/** From the lay to the counter: every addition named, all mm. */
export type Purchase = {
  layLength: number
  endAllowance: number
  squaring: number
  testStrip: number
  /** What shrinking takes: bought before washing, this much longer. */
  shrinkage: number
  margin: number
  /** Exact need before the shop's increment. */
  needed: number
  /** What to buy: `needed` rounded up to the increment. */
  toBuy: number
}

/** The workroom's habits at the counter and the table, mm. */
export type BuyingRules = {
  /** Cloth kept beyond the last piece. */
  endAllowance: number
  /** Lost in squaring the cut end to the weft. */
  squaring: number
  /** A strip for the shrinkage test, when the cloth's shrinkage has not been measured. */
  testStrip: number
  /** Bought beyond the need, in parts of one. */
  margin: number
  /** Space kept between pieces for the shears, mm. */
  cuttingGap: number
}
