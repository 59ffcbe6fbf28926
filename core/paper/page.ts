import type { Dye } from '../draw/ink.ts'
import type { Path, Rectangle } from '../geometry/types.ts'

/** The faces that sheets are set in: a book face for prose, a sans for tables and figures; and those for other scripts. */
export const FACES = [
  ...(['serif', 'serifItalic', 'serifBold', 'sans', 'sansItalic', 'sansBold'] as const),
  ...(['hebrew', 'hebrewBold', 'arabic', 'arabicBold'] as const),
] as const
export type FaceId = (typeof FACES)[number]

/**
 * Words in one face, on one baseline, already measured. Page coordinates are mm from the top left corner,
 * y downward; `x`, `y` is the start of the baseline.
 */
export type TextRun = {
  kind: 'text'
  x: number
  y: number
  text: string
  face: FaceId
  /** Type size in points (1/72 in). */
  size: number
  dye: Dye
  /** Advance width, mm. */
  width: number
  /** Degrees anticlockwise about `x`, `y`. */
  angle: number
  /** Only what lies within is drawn. */
  clip?: Rectangle
  /** The tag whose content this is; null for what a reader aloud skips. */
  tag: number | null
}

/** Lines and surfaces in page coordinates. Closed paths are filled even-odd. */
export type PathMark = {
  kind: 'path'
  paths: readonly Path[]
  stroke?: { dye: Dye; weight: number; dash: readonly number[] }
  fill?: Dye
  /** Only what lies within is drawn. */
  clip?: Rectangle
  tag: number | null
}

/** A picture by the hash of its file, fitted into a rectangle of its own proportions. */
export type ImageMark = {
  kind: 'image'
  hash: string
  x: number
  y: number
  width: number
  height: number
  clip?: Rectangle
  tag: number | null
}

/** Whatever may stand on a page, in its coordinates. */
export type Mark = TextRun | PathMark | ImageMark

/** Structure types of ISO 32000-1 §14.8.4 that the sheets use. */
export type TagRole =
  | 'H1'
  | 'H2'
  | 'H3'
  | 'P'
  | 'L'
  | 'LI'
  | 'LBody'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure'

/** One element of the reading order. Only elements without children have content. */
export type Tag = {
  id: number
  role: TagRole
  children: Tag[]
  /** What a figure shows, or a mark means, in words. */
  alt?: string
  /** What a heading of a table is the heading of. */
  scope?: 'Column' | 'Row'
}

/** Marks in the order they are drawn and read. */
export type Page = { marks: Mark[]; size?: { width: number; height: number } }

/** Papers of common printers, mm (ISO 216; ANSI/ASME Y14.1). */
export const PAPERS = {
  A4: { width: 210, height: 297 },
  Letter: { width: 215.9, height: 279.4 },
  A3: { width: 297, height: 420 },
} as const
/** Every size a pattern can be tiled on. */
export type SheetSize = keyof typeof PAPERS
/** What other papers are printed on. */
export type PaperSize = Exclude<SheetSize, 'A3'>

/** A sheet laid out, ready to print or to show; a page may be of a size of its own, mm. */
export type PaperDocument = { paper: PaperSize; pages: Page[]; tags: Tag[] }
