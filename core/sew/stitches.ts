import type { StitchId } from '../words/stitches.ts'
import type { Skill } from './types.ts'

/** One stitch of the trade: its thread by geometry and its pace. Names stand under `sew.stitch.<id>`. */
export type Stitch = {
  work: 'hand' | 'machine'
  /** Number in ISO 4915, where the standard has one for it. */
  iso: string | null
  /** Stitches to the centimetre unless the maker sets another. */
  density: number
  /** Stitches a minute with threading, pinning and turning. */
  pace: number
  /**
   * Length of thread ÷ length of seam, without tails or waste.
   * @param pitch from one stitch to the next, mm
   * @param thickness of all layers sewn through, mm
   */
  thread: (pitch: number, thickness: number) => number
}

/** Depth that over-and-over stitches take up from the edge, mm (common practice). */
export const BITE = { overcast: 2, roll: 3, fold: 1.5 }
/** Width of a zigzag, mm (common practice). */
const ZIGZAG = 3

/** A slanting stitch over an edge and back: √(1 + (2h ÷ p)²), and the edge's own thickness once a stitch. */
export const oversewn = (pitch: number, bite: number, thickness: number): number =>
  Math.hypot(1, (2 * bite) / pitch) + thickness / pitch

/** A short bite over the fold and a slant to the next one, through the layers and back. */
const foldStitched = (pitch: number, thickness: number): number =>
  (BITE.fold + Math.hypot(pitch, BITE.fold) + 2 * thickness) / pitch

/**
 * The stitches. Machine formulas are the published ones for 301, 2 + 2TS, and 401, 4 + 2TS (S stitches to
 * the unit, T thickness); the zigzag is the lockstitch on a slant. No table of thread for hand stitches
 * is in print, so theirs is computed from the thread's path.
 *
 * Pace: 12 hand stitches a minute all told, running stitches taken several on the needle and counted
 * at 16 (common practice, wide spread; needle time alone is twice as fast: 23 a minute in fine linen in
 * tests published in 1861). A home machine sews 160 a minute with pins and turns (common practice).
 * Densities: common practice for middling linen; *The Workwoman's Guide* (1838) sews finer.
 */
export const STITCH: Record<StitchId, Stitch> = {
  running: { work: 'hand', iso: null, density: 3, pace: 16, thread: (p, t) => 1 + (2 * t) / p },
  backstitch: { work: 'hand', iso: null, density: 4, pace: 12, thread: (p, t) => 3 + (2 * t) / p },
  halfBackstitch: { work: 'hand', iso: null, density: 3, pace: 12, thread: (p, t) => 2 + (2 * t) / p },
  felling: { work: 'hand', iso: null, density: 4, pace: 12, thread: foldStitched },
  hemming: { work: 'hand', iso: null, density: 4, pace: 12, thread: foldStitched },
  slipstitch: { work: 'hand', iso: null, density: 3, pace: 12, thread: (p, t) => 1 + (BITE.fold + t) / p },
  overcast: {
    work: 'hand',
    iso: null,
    density: 3,
    pace: 14,
    thread: (p, t) => oversewn(p, BITE.overcast, t),
  },
  rolledHem: { work: 'hand', iso: null, density: 5, pace: 10, thread: (p, t) => oversewn(p, BITE.roll, t) },
  lockstitch301: { work: 'machine', iso: '301', density: 4, pace: 160, thread: (p, t) => 2 + (2 * t) / p },
  zigzag304: {
    work: 'machine',
    iso: '304',
    density: 4,
    pace: 160,
    thread: (p, t) => 2 * Math.hypot(1, ZIGZAG / p) + (2 * t) / p,
  },
  chainstitch401: { work: 'machine', iso: '401', density: 4, pace: 160, thread: (p, t) => 4 + (2 * t) / p },
}

export const skillOf = (stitch: StitchId): Skill =>
  STITCH[stitch].work === 'hand' ? 'handSewing' : 'machineSewing'
