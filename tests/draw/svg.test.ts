import { describe, expect, it } from 'vitest'
import type { Drawing } from '../../core/draw/drawing.ts'
import { pathData, svgOf } from '../../core/draw/svg.ts'
import { polygon } from '../../core/geometry/path.ts'
import { arc, line } from '../../core/geometry/segment.ts'

/**
 * The centre of an SVG arc from its ends, radius and flags: W3C SVG 1.1, appendix F.6.5, steps 1–3, for a
 * circle without rotation.
 */
function centreOf(x1: number, y1: number, r: number, large: number, sweep: number, x2: number, y2: number) {
  const [px, py] = [(x1 - x2) / 2, (y1 - y2) / 2]
  const square = px * px + py * py
  const factor = Math.sqrt(Math.max(0, (r * r - square) / square)) * (large === sweep ? -1 : 1)
  return { x: factor * py + (x1 + x2) / 2, y: -factor * px + (y1 + y2) / 2 }
}

const NUMBER = '(-?[\\d.]+)'
const ARC = new RegExp(`A${NUMBER} ${NUMBER} 0 (\\d) (\\d) ${NUMBER} ${NUMBER}`)
const START = new RegExp(`M${NUMBER} ${NUMBER}`)

describe('a drawing as SVG', () => {
  it.each([
    ['a shallow arc', 0.34],
    ['a shallow arc, clockwise', -0.34],
    ['three quarters less a little', 4.5],
    ['more than a half, clockwise', -4],
  ])('keeps %s as an arc about the same centre', (_, sweep) => {
    const centre = { x: 120, y: 80 }
    const from = { x: 120 + 700 * Math.cos(2), y: 80 + 700 * Math.sin(2) }
    const data = pathData([arc(from, centre, sweep)])
    const [, x1, y1] = START.exec(data)!.map(Number)
    const [, radius, , large, flag, x2, y2] = ARC.exec(data)!.map(Number)
    expect(radius).toBeCloseTo(700, 3)
    const found = centreOf(x1!, y1!, radius!, large!, flag!, x2!, y2!)
    expect(found.x).toBeCloseTo(centre.x, 2)
    // SVG counts y downward.
    expect(found.y).toBeCloseTo(-centre.y, 2)
  })

  it('draws a full turn, which SVG cannot name by its ends, as two halves', () => {
    const data = pathData([arc({ x: 50, y: 0 }, { x: 0, y: 0 }, 2 * Math.PI)])
    expect(data.match(/A/g)).toHaveLength(2)
    expect(data).toContain('-50 0')
  })

  it('closes a path that ends where it began, and leaves a line open', () => {
    expect(
      pathData(
        polygon([
          { x: 0, y: 0 },
          { x: 1, y: 0 },
          { x: 0, y: 1 },
        ]),
      ),
    ).toMatch(/Z$/)
    expect(pathData([line({ x: 0, y: 0 }, { x: 1, y: 0 })])).not.toContain('Z')
  })

  const drawing: Drawing = {
    box: { x: 0, y: 0, width: 100, height: 200 },
    scale: 0.5,
    clip: { x: 10, y: 20, width: 30, height: 40 },
    items: [
      { kind: 'strokes', paths: [[line({ x: 0, y: 0 }, { x: 100, y: 200 })]], line: 'cut', clipped: true },
      {
        kind: 'lettering',
        at: { x: 5, y: 6 },
        text: 'A < B & "C"',
        anchor: 'end',
        angle: 90,
        size: 'figure',
      },
    ],
    label: 'Front & back',
  }

  it('has the label as its name for a screen reader, and escapes what XML would misread', () => {
    const svg = svgOf(drawing)
    expect(svg).toContain('role="img" aria-label="Front &amp; back"')
    expect(svg).toContain('<title>Front &amp; back</title>')
    expect(svg).toContain('A &lt; B &amp; &quot;C&quot;')
  })

  it('is as large on the sheet as its scale says, its weights and letters sized for it', () => {
    const svg = svgOf(drawing)
    expect(svg).toContain('viewBox="0 -200 100 200" width="50mm" height="100mm"')
    // A cut line of 0.4 mm and figures of 3 mm on the sheet are twice that in the world at 1 : 2.
    expect(svg).toContain('stroke-width="0.8"')
    expect(svg).toContain('font-size="6"')
    expect(svg).toContain('rotate(-90)')
  })

  it('cuts clipped items off at the window without a name that other drawings on a page could share', () => {
    const svg = svgOf(drawing)
    expect(svg).toContain(
      '<svg x="10" y="-60" width="30" height="40" viewBox="10 -60 30 40" overflow="hidden">',
    )
    expect(svg).not.toMatch(/\bid=/)
  })
})
