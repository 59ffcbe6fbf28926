import { create, type Font } from 'fontkit'
import { frameOf } from '../../core/paper/flow.ts'
import { fontBytes } from '../../core/paper/fonts.ts'
import type { FaceId, Page, PaperSize, TextRun } from '../../core/paper/page.ts'

type Point = { x: number; y: number }
/** The four corners of a run's ink on the page, mm. */
export type Ink = { run: TextRun; corners: Point[] }

const fonts = new Map<FaceId, Font>()
const fontOf = (face: FaceId): Font => {
  const known = fonts.get(face) ?? (create(Buffer.from(fontBytes(face))) as Font)
  fonts.set(face, known)
  return known
}

const boxes = new Map<string, { minX: number; minY: number; maxX: number; maxY: number }>()

/** The box of words once laid out, in the font's units; emptied when it holds this many. */
const MOST_BOXES = 50_000
function boxOf(face: FaceId, text: string) {
  const key = `${face} ${text}`
  const known = boxes.get(key)
  if (known !== undefined) return known
  const { minX, minY, maxX, maxY } = fontOf(face).layout(text).bbox
  if (boxes.size >= MOST_BOXES) boxes.clear()
  const box = { minX, minY, maxX, maxY }
  boxes.set(key, box)
  return box
}

/**
 * Where a run's letters really are: the box of its glyphs' outlines as the font engine lays them out,
 * turned with the run.
 */
export function ink(run: TextRun): Ink {
  const font = fontOf(run.face)
  const bbox = boxOf(run.face, run.text)
  const mm = (run.size * 25.4) / 72 / font.unitsPerEm
  const angle = (-run.angle * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const corners = [
    [bbox.minX, bbox.minY],
    [bbox.maxX, bbox.minY],
    [bbox.maxX, bbox.maxY],
    [bbox.minX, bbox.maxY],
  ].map(([u, v]) => {
    const [x, y] = [u! * mm, -v! * mm]
    return { x: run.x + x * cos - y * sin, y: run.y + x * sin + y * cos }
  })
  return { run, corners }
}

export const inkOf = (page: Page): Ink[] =>
  page.marks.flatMap((mark) => (mark.kind === 'text' && mark.text.trim() !== '' ? [ink(mark)] : []))

/** Whether two rectangles, at any angle, share more than a touch (separating axes). */
export function crossing(a: Ink, b: Ink): boolean {
  const axes = [a, b].flatMap(({ corners }) =>
    [0, 1].map((i) => {
      const [p, q] = [corners[i]!, corners[i + 1]!]
      const length = Math.hypot(q.x - p.x, q.y - p.y) || 1
      return { x: (q.y - p.y) / length, y: (p.x - q.x) / length }
    }),
  )
  return axes.every((axis) => {
    const [one, other] = [a, b].map(({ corners }) => {
      const along = corners.map((p) => p.x * axis.x + p.y * axis.y)
      return [Math.min(...along), Math.max(...along)] as const
    })
    return Math.min(one![1], other![1]) - Math.max(one![0], other![0]) > 0.05
  })
}

/** Every pair of runs on a page whose letters run into each other, as their texts. */
export function collisions(page: Page): string[] {
  const spanOf = (one: Ink) => one.corners.map(({ y }) => y)
  const all = inkOf(page)
    .map((one) => ({ one, top: Math.min(...spanOf(one)), bottom: Math.max(...spanOf(one)) }))
    .sort((a, b) => a.top - b.top)
  const found: string[] = []
  for (const [i, { one: a, bottom }] of all.entries())
    for (let j = i + 1; j < all.length && all[j]!.top < bottom; j++) {
      const b = all[j]!.one
      if (crossing(a, b) && !follows(a, b) && !follows(b, a)) found.push(`“${a.run.text}” × “${b.run.text}”`)
    }
  return found
}

/** Whether one run stands right after another on its line: a swash may then hang over as between any two letters. */
const follows = ({ run: a }: Ink, { run: b }: Ink): boolean =>
  a.angle === 0 && b.angle === 0 && Math.abs(a.y - b.y) < 1e-6 && Math.abs(a.x + a.width - b.x) < 1e-6

/** How far a letter's swash may hang out of its own width, mm: the foot of an italic f at 12 pt is 0.8. */
const OVERHANG = 1

/** The texts that do not stand within the page's margins: by their advance if upright, and by their ink. */
export function outsideMargins(page: Page, paper: PaperSize): string[] {
  const { x, y, width, height } = frameOf(paper)
  const dust = 1e-6
  return inkOf(page)
    .filter(({ run, corners }) => {
      const upright = run.angle !== 0 || (run.x >= x - dust && run.x + run.width <= x + width + dust)
      return (
        !upright ||
        corners.some(
          (p) =>
            p.x < x - OVERHANG || p.x > x + width + OVERHANG || p.y < y - dust || p.y > y + height + dust,
        )
      )
    })
    .map(({ run }) => run.text)
}
