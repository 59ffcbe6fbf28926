import { describe, expect, test } from 'vitest'
import { CONSTRUCTIONS } from '../../core/draft/constructions.ts'
import { fullSizeParts } from '../../core/draw/full-size.ts'
import { DYES } from '../../core/draw/ink.ts'
import { corners } from '../../core/draw/placed.ts'
import { svgOf } from '../../core/draw/svg.ts'
import { arcRadius, pathBox, pointAt } from '../../core/geometry/segment.ts'
import type { PaperDocument } from '../../core/paper/page.ts'
import { EDGE, OVERLAP, tilesOn } from '../../core/paper/pattern/tiles.ts'
import { inkOf } from '../../core/paper/pattern/whole.ts'
import { type PatternPaper, patternOf, patternSheets } from '../../core/paper/pattern.ts'
import { printPdf } from '../../core/paper/pdf.ts'
import type { GarmentSheet } from '../../core/paper/sheet.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'
import { collisions } from './boxes.ts'
import { makeSnapshot } from './fixture.ts'
import { hasPoppler, linesOf } from './poppler.ts'

function sheetOf(id: string): GarmentSheet {
  const snapshot = makeSnapshot({ wearers: ['Łucja Wiatr'] })
  const construction = CONSTRUCTIONS.find((one) => one.id === id)!
  const draft = construction.draft(bodyOf(WOMAN), {}, 'cm')
  const line = { ...snapshot.lines[0]!, estimate: { ...snapshot.lines[0]!.estimate, draft } }
  return { snapshot, line, commissionNumber: 'C-2026-031', copy: 1, day: '2026-11-28', stepsDone: {} }
}

const printed = (document: PaperDocument) =>
  printPdf(document, { title: 'Pattern', language: 'en-GB', createdAt: '2026-11-28T10:00:00Z' })

const GARMENTS = [
  'goredUndertunic',
  'circleCloak',
  'hose',
  'hood',
  'lacedKirtle',
  'sidelessOvergown',
  'smock',
]
const PAPERS: PatternPaper[] = ['A4', 'A3', 'Letter', 'oneSheet']

describe('what is drawn full size', () => {
  const parts = (id: string) => fullSizeParts(sheetOf(id).line.estimate.draft.pieces)

  test('is what four straight edges do not give: necks, hems of gores, a foot; of a large piece the part round its curve', () => {
    const tunic = parts('goredUndertunic').map(({ piece, whole }) => `${piece.name.code} ${whole}`)
    expect(tunic).toHaveLength(5)
    expect(parts('circleCloak').map(({ whole }) => whole)).toEqual([false])
    expect(parts('hose').map(({ whole }) => whole)).toEqual([true, true])
    for (const { piece, window } of parts('lacedKirtle')) {
      const cut = pathBox(piece.cut)
      expect(window.x).toBeGreaterThanOrEqual(cut.x - 1e-9)
      expect(window.y + window.height).toBeLessThanOrEqual(cut.y + cut.height + 1e-9)
    }
  })

  test('leaves no curve out but those that are struck with a cord', () => {
    for (const id of GARMENTS) {
      const { pieces } = sheetOf(id).line.estimate.draft
      const drawn = fullSizeParts(pieces)
      for (const piece of pieces)
        for (const s of piece.cut) {
          if (s.kind !== 'arc' || arcRadius(s) > 800) continue
          for (const t of [0, 0.25, 0.5, 0.75, 1]) {
            const { x, y } = pointAt(s, t)
            const shown = drawn.some(
              ({ piece: of, window: w }) =>
                of === piece &&
                x >= w.x - 1e-6 &&
                x <= w.x + w.width + 1e-6 &&
                y >= w.y - 1e-6 &&
                y <= w.y + w.height + 1e-6,
            )
            expect(shown, `${id} ${piece.id}`).toBe(true)
          }
        }
    }
  })

  test('is refused where everything is chalked from measures', () => {
    expect(() => patternSheets(sheetOf('veil'), 'A4')).toThrow(Refusal)
  })

  test('keeps arcs as arcs in SVG, at the true size', () => {
    const { parts: placed } = patternOf(sheetOf('circleCloak'))
    const svg = svgOf(placed[0]!.drawing)
    const radii = placed[0]!.part.piece.cut.flatMap((s) => (s.kind === 'arc' ? [arcRadius(s)] : []))
    for (const radius of radii) expect(svg).toContain(`A${Math.round(radius * 1e4) / 1e4} `)
    expect(svg).toContain(`width="${Math.round(placed[0]!.drawing.box.width * 1e4) / 1e4}mm"`)
  })
})

describe('sheets that are put together', () => {
  test.each(GARMENTS)('of the %s show every point of its lines, the shared strip twice', (id) => {
    const whole = patternOf(sheetOf(id))
    for (const [width, height] of [
      [210, 297],
      [297, 210],
      [215.9, 279.4],
      [297, 420],
    ] as const) {
      const { tiles } = tilesOn({ width, height }, whole, whole.parts.flatMap(inkOf))
      const showing = (x: number, y: number) =>
        tiles.filter(
          ({ window: w }) =>
            x >= w.x - 1e-9 && x <= w.x + w.width + 1e-9 && y >= w.y - 1e-9 && y <= w.y + w.height + 1e-9,
        )
      for (const { part, drawing, x, y } of whole.parts)
        for (const s of part.piece.cut)
          for (let t = 0; t <= 1; t += 1 / 64) {
            const p = pointAt(s, t)
            const [left, down] = [p.x - drawing.box.x, drawing.box.y + drawing.box.height - p.y]
            if (left < 0 || left > drawing.box.width || down < 0 || down > drawing.box.height) continue
            expect(showing(x + left, y + down).length).toBeGreaterThanOrEqual(1)
          }
      for (const a of tiles)
        for (const b of tiles)
          if (a.row === b.row && a.column + 1 === b.column)
            expect(a.window.x + a.window.width - b.window.x).toBeCloseTo(OVERLAP, 9)
    }
  })

  test.each(PAPERS)('on %s: no words of a sheet run into each other', (paper) => {
    for (const page of patternSheets(sheetOf('goredUndertunic'), paper).pages) {
      const own = { marks: page.marks.filter((mark) => mark.clip === undefined) }
      expect(collisions(own)).toEqual([])
    }
  })
})

describe.runIf(hasPoppler)(
  `read back from the file${hasPoppler ? '' : ' (skipped: no poppler here)'}`,
  () => {
    const SAME = 0.2

    test.each(PAPERS)('on %s the squares are 100 mm and 4 in on every sheet', async (paper) => {
      const document = patternSheets(sheetOf('lacedKirtle'), paper)
      const pdf = await printed(document)
      const sheets = document.pages.flatMap(({ size }, i) => (size === undefined ? [] : [i + 1]))
      for (const page of sheets.slice(0, 3)) {
        const squares = linesOf(pdf, page).filter(({ rgb, curved }) => rgb === DYES.woad && !curved)
        const sides = squares.map(({ points }) => {
          const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)]
          return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)]
        })
        expect(sides).toHaveLength(2)
        for (const side of sides[0]!) expect(Math.abs(side - 100)).toBeLessThan(0.05)
        for (const side of sides[1]!) expect(Math.abs(side - 101.6)).toBeLessThan(0.05)
      }
    })

    test.each(GARMENTS)('every corner and arc of the %s lies where it was drafted', async (id) => {
      const whole = patternOf(sheetOf(id))
      const lines = linesOf(await printed(patternSheets(sheetOf(id), 'oneSheet')), 1)
      const points = lines.filter(({ rgb }) => rgb === DYES.ink).flatMap((one) => one.points)
      for (const { part, drawing, x, y } of whole.parts)
        for (const p of corners(part.piece.cut)) {
          const { window: w } = part
          if (p.x < w.x || p.x > w.x + w.width || p.y < w.y || p.y > w.y + w.height) continue
          const at = {
            x: EDGE + x + p.x - drawing.box.x,
            y: EDGE + y + drawing.box.y + drawing.box.height - p.y,
          }
          const nearest = Math.min(...points.map((one) => Math.hypot(one.x - at.x, one.y - at.y)))
          expect(nearest, `${part.piece.name.code} ${p.x} ${p.y}`).toBeLessThan(SAME)
        }
    })

    test('a tile shows the same lines, moved by where it lies in the whole', async () => {
      const document = patternSheets(sheetOf('hose'), 'A4')
      const pdf = await printed(document)
      const first = document.pages.findIndex(({ size }) => size !== undefined) + 1
      const on = (page: number) =>
        linesOf(pdf, page)
          .filter(({ rgb }) => rgb === DYES.ink)
          .flatMap((one) => one.points)
      const [a, b] = [on(first), on(first + 1)]
      const shift = document.pages[first - 1]!.size!.width - 2 * EDGE - OVERLAP
      const twice = a.filter(({ x, y }) => b.some((one) => Math.hypot(one.x + shift - x, one.y - y) < 0.02))
      expect(twice.length).toBeGreaterThan(4)
    })
  },
)
