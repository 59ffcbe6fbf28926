import type { Point, Rectangle } from '../../geometry/types.ts'

/** A sheet of a tiled pattern: the part of the whole that it shows, mm from the whole's top left corner, y downward. */
export type Tile = { name: string; column: number; row: number; window: Rectangle }

/** Paper that no printer reaches, on every side, mm (common practice). */
export const EDGE = 10
/** What two sheets beside each other both show, mm. */
export const OVERLAP = 10

/**
 * A whole that is cut into sheets, mm; `tiles` row by row, and fewer than rows times columns where some are left out.
 */
export type Tiling = {
  /** The sheet as it lies, upright or across. */
  sheet: { width: number; height: number }
  columns: number
  rows: number
  tiles: Tile[]
}

/**
 * Cuts a whole into sheets that overlap. Those that show nothing are left out, but for one that holds others together in
 * its row or column.
 * @param ink where something is drawn
 */
export function tilesOn(
  sheet: Tiling['sheet'],
  whole: { width: number; height: number },
  ink: readonly Point[],
): Tiling {
  const [width, height] = [sheet.width - 2 * EDGE, sheet.height - 2 * EDGE]
  const count = (length: number, one: number) => Math.max(1, Math.ceil((length - OVERLAP) / (one - OVERLAP)))
  const [columns, rows] = [count(whole.width, width), count(whole.height, height)]
  const all = Array.from({ length: rows * columns }, (_, i): Tile => {
    const [row, column] = [Math.floor(i / columns), i % columns]
    const window = { x: column * (width - OVERLAP), y: row * (height - OVERLAP), width, height }
    return { name: nameOf(column, row), column, row, window }
  })
  const inked = all.filter(({ window }) => ink.some((point) => holds(window, point)))
  const between = (tile: Tile, along: 'row' | 'column', across: 'row' | 'column') => {
    const places = inked.filter((one) => one[across] === tile[across]).map((one) => one[along])
    return Math.min(...places) < tile[along] && tile[along] < Math.max(...places)
  }
  const tiles = all.filter(
    (tile) => inked.includes(tile) || between(tile, 'column', 'row') || between(tile, 'row', 'column'),
  )
  return { sheet, columns, rows, tiles }
}

const holds = ({ x, y, width, height }: Rectangle, p: Point): boolean =>
  p.x >= x && p.x <= x + width && p.y >= y && p.y <= y + height

/** Whether two rectangles share more than a touch. */
export const cross = (a: Rectangle, b: Rectangle): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height

/** Columns by letters, rows by figures: B3 lies under B2 and beside A3. */
const nameOf = (column: number, row: number): string => `${letters(column)}${row + 1}`

const letters = (column: number): string =>
  column < 26 ? String.fromCharCode(65 + column) : letters(Math.floor(column / 26) - 1) + letters(column % 26)

/** How wide so many sheets beside each other are, put together, mm. */
export const widthOf = (sheets: number, sheet: Tiling['sheet']): number =>
  sheets * (sheet.width - 2 * EDGE - OVERLAP) + OVERLAP
