import type { Path, Point, Rectangle } from '../geometry/types.ts'

/** What a line stands for; `ink.ts` says how heavy, in which colour and in which dashes it is drawn. */
export type LineStyle = 'cut' | 'sew' | 'fold' | 'grain' | 'selvedge' | 'tape' | 'dimension' | 'hidden'

/** What a surface stands for. */
export type Tint = 'cloth' | 'ground' | 'measureHead' | 'grainHead'

/** Three sizes of lettering: a piece's name, a figure, and the small print. */
export type LetterSize = 'name' | 'figure' | 'note'

/**
 * Lines and arcs, and the surface within them. Several closed paths in one item are filled even-odd, so
 * that an opening stays open.
 */
export type Strokes = {
  kind: 'strokes'
  paths: readonly Path[]
  /** How the paths are drawn; null for a surface without a line round it. */
  line: LineStyle | null
  fill?: Tint
  /** Whether the item is cut off at the drawing's `clip`. */
  clipped?: boolean
}

/** A word or figure. `at` is the middle of the height of its capitals. */
export type Lettering = {
  kind: 'lettering'
  at: Point
  text: string
  anchor: 'start' | 'middle' | 'end'
  /** Degrees anticlockwise. */
  angle: number
  size: LetterSize
}

/** Whatever may stand in a drawing. */
export type DrawItem = Strokes | Lettering

/**
 * A drawing to scale as plain data, for screen and paper alike. World coordinates are millimetres of the
 * thing drawn, y up. Line weights and letters have fixed sizes on the sheet (`ink.ts`), so every drawing is
 * made for one scale.
 */
export type Drawing = {
  /** All of the drawing, letters included, in world mm. */
  box: Rectangle
  /** Millimetres on the sheet for one millimetre of the thing. */
  scale: number
  /** The window that clipped items are cut off at, world mm. */
  clip?: Rectangle
  items: DrawItem[]
  /** What the drawing shows, in a sentence for someone who cannot see it. */
  label: string
}
