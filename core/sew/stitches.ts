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
export const BITE = { overcast: 2, roll: 3, fold: 1.5, blanket: 4, buttonhole: 3, eyelet: 2.5 }
/** Width of a zigzag and of an overlock at their usual setting, mm (common practice). */
export const WIDTH = { zigzag: 3, overlock: 3 }
/** Thread in the knot of one buttonhole stitch, mm (common practice). */
const PURL = 2

/** A slanting stitch over an edge and back: √(1 + (2h ÷ p)²), and the edge's own thickness once a stitch. */
export const oversewn = (pitch: number, bite: number, thickness: number): number =>
  Math.hypot(1, (2 * bite) / pitch) + thickness / pitch

/** A short bite over the fold and a slant to the next one, through the layers and back. */
const foldStitched = (pitch: number, thickness: number): number =>
  (BITE.fold + Math.hypot(pitch, BITE.fold) + 2 * thickness) / pitch

/** A loop caught at the edge: down the bite on both sides, round the edge, and on to the next. */
const looped = (pitch: number, bite: number, thickness: number): number =>
  (pitch + 2 * bite + thickness) / pitch

/** As many strands on the seam line as the formula counts, and each stitch through all layers and back. */
const strands =
  (count: number) =>
  (pitch: number, thickness: number): number =>
    count + (2 * thickness) / pitch

const HAND = { work: 'hand', iso: null } as const

/**
 * The stitches. Machine formulas are the published ones, S stitches to the unit, T thickness, W width:
 * 101, 3 + 2TS; 301, 2 + 2TS; 401, 4 + 2TS; 504, 3 + 4WS + 4TS (textilecalculations.com; a second form
 * in print, 5 + 4S(W + T), takes 2 more); the zigzag is the lockstitch on a slant. No table of thread for
 * hand stitches is in print, so theirs is computed from the thread's path.
 *
 * Pace: 12 hand stitches a minute all told, running stitches taken several on the needle and counted
 * at 16 (common practice, wide spread; needle time alone is twice as fast: 23 a minute in fine linen in
 * tests published in 1861). A home machine sews 160 a minute with pins and turns (common practice).
 * Densities: common practice for middling linen; *The Workwoman's Guide* (1838) sews finer; tacking 2 cm
 * long by Dillmont.
 */
export const STITCH: Record<StitchId, Stitch> = {
  running: { ...HAND, density: 3, pace: 16, thread: strands(1) },
  backstitch: { ...HAND, density: 4, pace: 12, thread: strands(3) },
  halfBackstitch: { ...HAND, density: 3, pace: 12, thread: strands(2) },
  stab: { ...HAND, density: 3, pace: 8, thread: strands(1) },
  felling: { ...HAND, density: 4, pace: 12, thread: foldStitched },
  hemming: { ...HAND, density: 4, pace: 12, thread: foldStitched },
  slipstitch: { ...HAND, density: 3, pace: 12, thread: (p, t) => 1 + (BITE.fold + t) / p },
  overcast: { ...HAND, density: 3, pace: 14, thread: (p, t) => oversewn(p, BITE.overcast, t) },
  rolledHem: { ...HAND, density: 5, pace: 10, thread: (p, t) => oversewn(p, BITE.roll, t) },
  blanket: { ...HAND, density: 3, pace: 10, thread: (p, t) => looped(p, BITE.blanket, t) },
  buttonhole: { ...HAND, density: 12, pace: 10, thread: (p, t) => looped(p, BITE.buttonhole, t + PURL) },
  eyelet: { ...HAND, density: 10, pace: 10, thread: (p, t) => looped(p, BITE.eyelet, t) },
  gathering: { ...HAND, density: 3, pace: 16, thread: strands(1) },
  tacking: { ...HAND, density: 0.5, pace: 12, thread: strands(1) },
  lockstitch301: { work: 'machine', iso: '301', density: 4, pace: 160, thread: strands(2) },
  zigzag304: {
    work: 'machine',
    iso: '304',
    density: 4,
    pace: 160,
    thread: (p, t) => 2 * Math.hypot(1, WIDTH.zigzag / p) + (2 * t) / p,
  },
  chainstitch101: { work: 'machine', iso: '101', density: 3, pace: 160, thread: strands(3) },
  chainstitch401: { work: 'machine', iso: '401', density: 4, pace: 160, thread: strands(4) },
  overlock504: {
    work: 'machine',
    iso: '504',
    density: 4,
    pace: 250,
    thread: (p, t) => 3 + (4 * (WIDTH.overlock + t)) / p,
  },
}

/** Whose hours a stitch takes: the hand's or the machine's. */
export const skillOf = (stitch: StitchId): Skill =>
  STITCH[stitch].work === 'hand' ? 'handSewing' : 'machineSewing'
