import { describe, expect, it } from 'vitest'
import { middlingBody } from '../../build/bench/bodies.ts'
import { CONSTRUCTIONS } from '../../core/draft/constructions.ts'
import type { Drawing, Lettering, Strokes } from '../../core/draw/drawing.ts'
import { laidCopies, takenWidth } from '../../core/draw/laid.ts'
import { drawLay } from '../../core/draw/lay.ts'
import { boxesCross, lettersCorners } from '../../core/draw/letters.ts'
import { drawPiece, fittingScale } from '../../core/draw/piece.ts'
import { corners, onTheTable, placePath } from '../../core/draw/placed.ts'
import { drawWhere } from '../../core/draw/where.ts'
import { polygon } from '../../core/geometry/path.ts'
import { boxOf, line, pathBox } from '../../core/geometry/segment.ts'
import { english } from '../../core/words/catalogue/english.ts'
import { phrase } from '../../core/words/phrase.ts'
import { englishReader } from '../../core/words/say.ts'
import { pieces, theLay } from '../paper/fixture.ts'

const letters = ({ items }: Drawing): Lettering[] => items.filter((item) => item.kind === 'lettering')
const strokes = ({ items }: Drawing): Strokes[] => items.filter((item) => item.kind === 'strokes')
const texts = (drawing: Drawing): string[] => letters(drawing).map(({ text }) => text)
const byId = (id: string) => pieces.find((piece) => piece.id === id)!

/** A letter's box, axis-parallel only. */
const room = (word: Lettering, scale: number) => boxOf(lettersCorners(word, scale))

describe('a piece drawn', () => {
  it.each(pieces.map((piece) => [piece.id, piece] as const))(
    '%s: every item lies within the drawing’s box',
    (_, piece) => {
      for (const scale of [0.05, 0.1, undefined]) {
        const drawing = drawPiece(piece, englishReader, scale)
        const { x, y, width, height } = drawing.box
        const boxes = [
          ...strokes(drawing).flatMap((item) => item.paths.map(pathBox)),
          ...letters(drawing).map((word) => room(word, drawing.scale)),
        ]
        for (const box of boxes) {
          expect(box.x).toBeGreaterThanOrEqual(x - 1e-9)
          expect(box.y).toBeGreaterThanOrEqual(y - 1e-9)
          expect(box.x + box.width).toBeLessThanOrEqual(x + width + 1e-9)
          expect(box.y + box.height).toBeLessThanOrEqual(y + height + 1e-9)
        }
      }
    },
  )

  it.each(pieces.map((piece) => [piece.id, piece] as const))(
    '%s: no upright word runs into another',
    (_, piece) => {
      const drawing = drawPiece(piece, englishReader, 0.05)
      const upright = letters(drawing)
        .filter(({ angle }) => angle % 90 === 0)
        .map((word) => room(word, 0.05))
      for (const [i, one] of upright.entries()) {
        for (const other of upright.slice(i + 1)) expect(boxesCross(one, other)).toBe(false)
      }
    },
  )

  it.each(pieces.map((piece) => [piece.id, piece] as const))(
    '%s: no dimension line runs through a figure',
    (_, piece) => {
      const drawing = drawPiece(piece, englishReader, 0.05)
      const lines = strokes(drawing)
        .filter(({ line }) => line === 'dimension')
        .flatMap(({ paths }) => paths.map(pathBox))
      for (const word of letters(drawing).filter(({ angle }) => angle % 90 === 0)) {
        for (const line of lines) expect(boxesCross(room(word, 0.05), line), word.text).toBe(false)
      }
    },
  )

  it('tells its finished width and height over all, in the reader’s unit', () => {
    // 560 × 1150 mm; 560 ÷ 25.4 = 22.05 → 22 in, 1150 ÷ 25.4 = 45.28 → 45¼ in to the nearest eighth.
    expect(texts(drawPiece(byId('front'), englishReader))).toEqual(expect.arrayContaining(['56', '115']))
    const inches = { locale: 'en-US', unit: 'in', catalogue: english } as const
    expect(texts(drawPiece(byId('front'), inches))).toEqual(expect.arrayContaining(['22', '45¼']))
  })

  it('tells the length of a slanting edge, once for both sides: √(480² + 80²) = 486.6 mm', () => {
    expect(
      texts(drawPiece(byId('sleeve'), englishReader, 0.1)).filter((text) => text === '48.7'),
    ).toHaveLength(1)
  })

  it('names the piece and its count, and how many are mirrored', () => {
    expect(texts(drawPiece(byId('gore'), englishReader))).toContain('Gore × 4, 2 mirrored')
    expect(drawPiece(byId('gore'), englishReader).label).toContain('Gore × 4, 2 mirrored')
  })

  it('draws the cut line heavier than the finished line, openings left open, slits cut', () => {
    const drawing = drawPiece(byId('facing'), englishReader)
    const cut = strokes(drawing).filter(({ line }) => line === 'cut')
    expect(cut[0]!.paths).toHaveLength(2)
    expect(cut[0]!.fill).toBe('cloth')
    expect(cut[1]!.paths[0]![0]).toMatchObject({ from: { x: 150, y: 138 }, to: { x: 150, y: 40 } })
    expect(strokes(drawing).some(({ line }) => line === 'sew')).toBe(true)
  })

  it('keeps arcs as arcs', () => {
    const kinds = strokes(drawPiece(byId('gore'), englishReader)).flatMap(({ paths }) =>
      paths.flat().map((s) => s.kind),
    )
    expect(kinds.filter((kind) => kind === 'arc').length).toBeGreaterThanOrEqual(2)
  })

  it('stands the grain arrow upright inside the piece and clear of its openings', () => {
    for (const piece of pieces) {
      const arrow = strokes(drawPiece(piece, englishReader)).find(({ line }) => line === 'grain')!
        .paths[0]![0]!
      expect(arrow.from.x).toBeCloseTo(arrow.to.x, 9)
      const box = pathBox(piece.outline)
      for (const { x, y } of [arrow.from, arrow.to]) {
        expect(x).toBeGreaterThan(box.x)
        expect(x).toBeLessThan(box.x + box.width)
        expect(y).toBeGreaterThan(box.y)
        for (const opening of piece.openings) {
          const hole = pathBox(opening.cut)
          expect(x > hole.x && x < hole.x + hole.width).toBe(false)
        }
      }
    }
    // In the gore, a triangle of 233 × 700 with its slant on the right, the arrow's head stays left of it.
    const { to } = strokes(drawPiece(byId('gore'), englishReader)).find(({ line }) => line === 'grain')!
      .paths[0]![0]!
    expect(to.x).toBeLessThan((700 - to.y) * Math.tan(0.34))
  })

  const wardrobe = CONSTRUCTIONS.flatMap(({ id, draft }) =>
    draft(middlingBody, {}, 'mm').pieces.map((piece) => [`${id}, ${piece.id}`, piece] as const),
  )
  it.each(wardrobe)('%s: every corner is numbered, and each number is nearest to its own', (_, piece) => {
    const places = corners(piece.cut)
    // As large as at the cutting table.
    const scale = fittingScale(piece) / 2
    for (const first of [0, places.length - 1]) {
      const drawing = drawPiece(piece, englishReader, scale, first)
      const numbers = letters(drawing).filter(({ size }) => size === 'note')
      expect(numbers.map(({ text }) => Number(text)).sort((a, b) => a - b)).toEqual(
        places.map((_, i) => i + 1),
      )
      for (const { text, at } of numbers) {
        const away = places.map(({ x, y }) => Math.hypot(x - at.x, y - at.y) * scale)
        const own = (Number(text) - 1 + first) % places.length
        expect(away.indexOf(Math.min(...away))).toBe(own)
        expect(away[own]).toBeLessThan(4.1)
      }
      const rooms = letters(drawing)
        .filter(({ angle }) => angle % 90 === 0)
        .map((word) => room(word, scale))
      for (const [i, one] of rooms.entries()) {
        for (const other of rooms.slice(i + 1)) expect(boxesCross(one, other)).toBe(false)
      }
    }
  })

  it('numbers the corners of a copy round it from the one nearest the cut end, however it lies', () => {
    for (const { of, placement, corners: chalked, firstCorner } of laidCopies(theLay, pieces)) {
      const places = corners(byId(of.piece).cut)
      const here = places.map((at) => placePath([line(at, at)], placement)[0]!.from)
      expect(chalked[0]!.fromCutEnd).toBe(Math.min(...chalked.map(({ fromCutEnd }) => fromCutEnd)))
      for (const [i, { at }] of chalked.entries()) {
        const own = here[(firstCorner + i) % places.length]!
        expect(at.x).toBeCloseTo(own.x, 6)
        expect(at.y).toBeCloseTo(own.y, 6)
      }
    }
  })

  it('turns the grain arrow to 45° on the bias', () => {
    const arrow = strokes(drawPiece({ ...byId('gusset'), grain: 'bias' }, englishReader)).find(
      ({ line }) => line === 'grain',
    )!
    const { from, to } = arrow.paths[0]![0]!
    expect((Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI).toBeCloseTo(45, 9)
  })
})

describe('a lay drawn', () => {
  const whole = drawLay({ lay: theLay, pieces }, englishReader, 0.1)
  const copies = laidCopies(theLay, pieces)

  it('numbers the copies from the cut end on', () => {
    expect(copies.map(({ number }) => number)).toEqual(copies.map((_, i) => i + 1))
    for (const [i, { box }] of copies.slice(1).entries())
      expect(box.y).toBeGreaterThan(copies[i]!.box.y - 1.01)
    expect(copies).toHaveLength(theLay.placements.length)
  })

  it('shows every copy in its place: across the cloth upward from the near selvedge, along it from the left', () => {
    const drawn = strokes(whole).filter(({ line, clipped }) => line === 'cut' && clipped === true)
    for (const { box } of copies) {
      const found = drawn.some(({ paths }) => {
        const own = pathBox(paths[0]!)
        return (
          Math.abs(own.x - box.y) < 1e-6 &&
          Math.abs(own.y - box.x) < 1e-6 &&
          Math.abs(own.width - box.height) < 1e-6 &&
          Math.abs(own.height - box.width) < 1e-6
        )
      })
      expect(found).toBe(true)
    }
  })

  it('writes each copy’s number inside it, and no word into another', () => {
    for (const { number, box } of copies) {
      const word = letters(whole).find(({ text }) => text === String(number) || text.startsWith(`${number} `))
      expect(word).toBeDefined()
      expect(word!.at.x).toBeGreaterThan(box.y)
      expect(word!.at.x).toBeLessThan(box.y + box.height)
      expect(word!.at.y).toBeGreaterThan(box.x)
      expect(word!.at.y).toBeLessThan(box.x + box.width)
    }
    const rooms = letters(whole).map((word) => room(word, 0.1))
    for (const [i, one] of rooms.entries()) {
      for (const other of rooms.slice(i + 1)) expect(boxesCross(one, other)).toBe(false)
    }
  })

  it('marks both selvedges, the grain and the cut end, and tells the corners that have room', () => {
    expect(strokes(whole).find(({ line }) => line === 'selvedge')!.paths).toHaveLength(2)
    expect(texts(whole)).toEqual(
      expect.arrayContaining(['near selvedge', 'far selvedge', 'cut end', 'end of the lay', 'grain']),
    )
    // The front's box is 584 mm across (560 and two seam allowances of 12) and begins at both edges.
    expect(texts(whole)).toEqual(expect.arrayContaining(['0 / 0', '58.4 / 0']))
  })

  it('is known to take the whole width where less than a centimetre of it is left', () => {
    const taken = Math.max(...copies.map(({ box }) => box.x + box.width))
    expect(takenWidth({ ...theLay, usableWidth: taken + 9.9 }, pieces)).toBeCloseTo(taken, 9)
    expect(takenWidth({ ...theLay, usableWidth: taken }, pieces)).toBeCloseTo(taken, 9)
    expect(takenWidth({ ...theLay, usableWidth: taken + 10.1 }, pieces)).toBeUndefined()
  })

  it('on doubled cloth takes the whole width only where a layer of it is full', () => {
    const wide = (width: number) =>
      polygon([
        { x: 0, y: 0 },
        { x: width, y: 0 },
        { x: width, y: 500 },
        { x: 0, y: 500 },
      ])
    const name = phrase('store.kind.garment')
    const lay = (usableWidth: number, width: number, xs: number[]) => {
      const [copies, outline] = [xs.map((_, i) => ({ id: `${i}`, name, mirrored: false })), wide(width)]
      const placements = xs.map((x, i) => ({
        ...{ piece: 'one', copy: `${i}`, x, y: 0, angle: 0 as const, flipped: false },
      }))
      return takenWidth({ usableWidth, length: 500, placements, manner: 'doubled' }, [
        { id: 'one', name, copies, outline, cut: outline, openings: [], slits: [] },
      ])
    }
    // Two through both layers, at the selvedges; then one over the fold.
    expect(lay(1000, 400, [0, 600])).toBeUndefined()
    expect(lay(808, 400, [0, 408])).toBe(800)
    expect(lay(1000, 600, [200])).toBeUndefined()
    expect(lay(606, 600, [3])).toBe(600)
  })

  it('of a stretch of cloth shows the copies in it and nothing beyond', () => {
    const part = drawLay({ lay: theLay, pieces, window: { from: 0, to: 600 } }, englishReader, 0.1)
    expect(part.clip).toEqual({ x: 0, y: 0, width: 600, height: theLay.usableWidth })
    expect(texts(part).some((text) => text.includes('Sleeve'))).toBe(false)
    expect(texts(part)).toContain('1 Front')
    expect(part.box.x + part.box.width).toBeLessThan(600 + 100)
    expect(texts(part)).not.toContain('end of the lay')
  })

  it('is described in words, piece by piece', () => {
    for (const { number } of copies) expect(whole.label).toMatch(new RegExp(`\\b${number} `))
  })
})

describe('where a copy lies', () => {
  const copies = laidCopies(theLay, pieces)

  it.each(copies.map(({ number }) => number))('number %i is the one that stands out', (number) => {
    const { usableWidth, length } = theLay
    const drawing = drawWhere({ usableWidth, length, copies }, number, englishReader)
    const [cloth, others, here] = strokes(drawing)
    expect(here!.paths).toEqual([onTheTable(copies[number - 1]!.cut)])
    expect(here!.fill).not.toBe(cloth!.fill)
    expect(others!.paths).toHaveLength(copies.length - 1)
    expect(pathBox(cloth!.paths[0]!)).toEqual({ x: 0, y: 0, width: length, height: usableWidth })
    expect(drawing.label).toContain(String(number))
  })
})
