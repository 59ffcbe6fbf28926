import type { LetterSize, LineStyle, Tint } from './drawing.ts'

/** Colours from cloth and dye, for screen and paper. */
export const DYES = {
  /** Iron-gall ink on the page. */
  ink: '#231c16',
  /** Walnut hulls: headings and rules. */
  walnut: '#5a4031',
  /** Woad: what is measured. */
  woad: '#2c5273',
  /** Madder: what needs care. */
  madder: '#96301f',
  /** Undyed linen: surfaces. */
  linen: '#f1e9da',
  /** Unbleached linen: thin rules on linen and paper. */
  tow: '#c9b899',
  paper: '#ffffff',
} as const
export type Dye = keyof typeof DYES

/** A line on the sheet: weight and dashes in mm of the sheet. */
export type Ink = { dye: Dye; weight: number; dash: readonly number[] }

/** Cut lines heavy, finished lines thin, and every other line told apart by its dashes as well as its colour. */
export const INKS: Record<LineStyle, Ink> = {
  cut: { dye: 'ink', weight: 0.4, dash: [] },
  sew: { dye: 'ink', weight: 0.15, dash: [] },
  fold: { dye: 'walnut', weight: 0.25, dash: [3, 0.8, 0.6, 0.8] },
  grain: { dye: 'walnut', weight: 0.25, dash: [] },
  selvedge: { dye: 'madder', weight: 0.6, dash: [2.4, 1] },
  tape: { dye: 'madder', weight: 0.6, dash: [] },
  dimension: { dye: 'woad', weight: 0.15, dash: [] },
  hidden: { dye: 'walnut', weight: 0.2, dash: [1, 0.8] },
}

/** With what surfaces are filled. */
export const TINTS: Record<Tint, Dye> = {
  cloth: 'linen',
  ground: 'paper',
  measureHead: 'woad',
  grainHead: 'walnut',
}

/** Type size of letters on the sheet, mm (9.5, 8.5 and 8 pt). */
export const LETTERS: Record<LetterSize, { em: number; dye: Dye }> = {
  name: { em: 3.35, dye: 'ink' },
  figure: { em: 3, dye: 'woad' },
  note: { em: 2.82, dye: 'walnut' },
}

/** Height of capitals in parts of the type size, of the sans the drawings are lettered in (Source Sans 3). */
export const CAPITAL = 0.66

/**
 * A generous guess at the width of a word in parts of its type size, for placing letters where no font
 * engine is at hand: Source Sans 3 sets figures 0.5 wide and running text a little under that.
 */
export const guessedWidth = (text: string, size: LetterSize): number => {
  const wide = [...text].filter((c) => /[\p{Lu}mwMW×–]/u.test(c)).length
  return LETTERS[size].em * (0.51 * ([...text].length - wide) + 0.68 * wide)
}
