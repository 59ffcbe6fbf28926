import type { Dye } from '../draw/ink.ts'
import type { FaceId } from './page.ts'

/** The one style of all sheets: type, margins, rules. Sizes of type in points, all else in mm. */

/** Millimetres of one point of type. */
export const POINT = 25.4 / 72

/** Space kept free around a page; the foot line stands within the bottom margin. */
export const MARGIN = { left: 20, right: 18, top: 18, bottom: 21 }
/** From the edge of the paper up to the baseline of the foot line. */
export const FOOT = 12

/** How a line of words is set. `leading` in parts of the size. */
export type Look = { face: FaceId; size: number; leading: number; dye: Dye }

/**
 * The scale of type. Nothing that is worked from is smaller than 9 pt: at arm's length that is the size of
 * a newspaper in the hand (common practice).
 */
export const LOOKS = {
  house: { face: 'serifBold', size: 22, leading: 1.15, dye: 'walnut' },
  title: { face: 'serif', size: 28, leading: 1.2, dye: 'walnut' },
  heading: { face: 'serifBold', size: 15.5, leading: 1.25, dye: 'walnut' },
  subheading: { face: 'serifBold', size: 13, leading: 1.25, dye: 'ink' },
  prose: { face: 'serif', size: 12, leading: 1.34, dye: 'ink' },
  proseItalic: { face: 'serifItalic', size: 12, leading: 1.34, dye: 'walnut' },
  total: { face: 'serifBold', size: 14.5, leading: 1.3, dye: 'ink' },
  amount: { face: 'sans', size: 11, leading: 1.46, dye: 'ink' },
  amountTotal: { face: 'sansBold', size: 13, leading: 1.45, dye: 'ink' },
  cell: { face: 'sans', size: 10, leading: 1.3, dye: 'ink' },
  cellStrong: { face: 'sansBold', size: 10, leading: 1.3, dye: 'ink' },
  estimate: { face: 'sansItalic', size: 10, leading: 1.3, dye: 'madder' },
  care: { face: 'sansBold', size: 11, leading: 1.3, dye: 'madder' },
  label: { face: 'sans', size: 9, leading: 1.3, dye: 'walnut' },
  note: { face: 'sans', size: 9, leading: 1.35, dye: 'walnut' },
  foot: { face: 'sans', size: 8.5, leading: 1.2, dye: 'walnut' },
} as const satisfies Record<string, Look>
export type LookId = keyof typeof LOOKS

/** How headings are set, by their level. */
export const HEADINGS = { 1: 'title', 2: 'heading', 3: 'subheading' } as const satisfies Record<
  number,
  LookId
>

/** Space before a block, by what it is. */
export const BEFORE = { 1: 0, 2: 7.5, 3: 4.5, paragraph: 1.6, table: 2.4, figure: 3 }

/** Every rule that a sheet may have; weights in mm. */
export const RULES = {
  /** Under the letterhead. */
  house: { dye: 'madder', weight: 0.5, dash: [] },
  /** Under column headings and over a sum. */
  head: { dye: 'walnut', weight: 0.3, dash: [] },
  /** Between rows. */
  row: { dye: 'tow', weight: 0.2, dash: [] },
  /** Where something is written in by hand. */
  write: { dye: 'walnut', weight: 0.2, dash: [] },
  tick: { dye: 'ink', weight: 0.3, dash: [] },
} as const satisfies Record<string, { dye: Dye; weight: number; dash: readonly number[] }>

/** Within a table cell, above and below its words, and between columns. */
export const CELL = { above: 1.2, below: 1.2, gap: 3 }

/** A panel's padding and the bar at its left. */
export const PANEL = { padding: 4, bar: 1.2 }

/** A box to tick. */
export const TICK_BOX = 3.8
