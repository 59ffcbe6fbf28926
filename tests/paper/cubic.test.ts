import { inflateSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { arc } from '../../core/geometry/segment.ts'
import { arcToCubics } from '../../core/paper/cubic.ts'
import type { PaperDocument } from '../../core/paper/page.ts'
import { printPdf } from '../../core/paper/pdf.ts'

type Point = { x: number; y: number }

/** Bernstein's form of a cubic. */
function onCubic([a, b, c, d]: readonly [Point, Point, Point, Point], t: number): Point {
  const w = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3] as const
  const at = (k: 'x' | 'y') => w[0] * a[k] + w[1] * b[k] + w[2] * c[k] + w[3] * d[k]
  return { x: at('x'), y: at('y') }
}

const steps = Array.from({ length: 101 }, (_, i) => i / 100)

describe('arcs on paper', () => {
  // The circle itself is the oracle: every point of it is one radius from its centre.
  it.each([
    ['a sixth of a turn', Math.PI / 3],
    ['a gore of 0.34 rad', 0.34],
    ['a half turn, clockwise', -Math.PI],
    ['a full turn', 2 * Math.PI],
  ])('leave a circle of 1 m by less than 0.001 mm over %s', (_, sweep) => {
    const centre = { x: 37, y: -12 }
    const start = { x: centre.x + 1000 * Math.cos(0.7), y: centre.y + 1000 * Math.sin(0.7) }
    const cubics = arcToCubics(arc(start, centre, sweep))
    const worst = Math.max(
      ...cubics.flatMap(({ from, one, two, to }) =>
        steps.map((t) => {
          const p = onCubic([from, one, two, to], t)
          return Math.abs(Math.hypot(p.x - centre.x, p.y - centre.y) - 1000)
        }),
      ),
    )
    expect(worst).toBeLessThan(0.001)
  })

  it('run through the arc from its start to its end, each cubic where the last one stopped', () => {
    const whole = arc({ x: 1000, y: 0 }, { x: 0, y: 0 }, 2.5)
    const cubics = arcToCubics(whole)
    expect(cubics[0]!.from).toEqual(whole.from)
    expect(cubics.at(-1)!.to).toEqual(whole.to)
    for (const [i, cubic] of cubics.slice(1).entries()) expect(cubic.from).toEqual(cubics[i]!.to)
    const middle = onCubic([cubics[0]!.from, cubics[0]!.one, cubics[0]!.two, cubics[0]!.to], 0.5)
    expect(Math.atan2(middle.y, middle.x)).toBeCloseTo(2.5 / cubics.length / 2, 9)
  })

  it('stand in the printed file within 0.001 mm of the circle at a radius of 1 m', async () => {
    const centre = { x: 100, y: 1100 }
    const path = [arc({ x: 100 - 1000 * Math.sin(0.09), y: 1100 - 1000 * Math.cos(0.09) }, centre, 0.18)]
    const document: PaperDocument = {
      paper: 'A4',
      tags: [],
      pages: [
        {
          marks: [{ kind: 'path', paths: [path], stroke: { dye: 'ink', weight: 0.2, dash: [] }, tag: null }],
        },
      ],
    }
    const pdf = await printPdf(document, {
      title: 'Arc',
      language: 'en-GB',
      createdAt: '2026-11-25T10:00:00Z',
    })
    const [content] = contents(pdf).filter((text) => / c\n/.test(text))
    const [, startX, startY] = /([\d.-]+) ([\d.-]+) m\n/.exec(content!)!.map(Number)
    let from = { x: startX!, y: startY! }
    const curves = [...content!.matchAll(/([\d.-]+) ([\d.-]+) ([\d.-]+) ([\d.-]+) ([\d.-]+) ([\d.-]+) c\n/g)]
    expect(curves.length).toBeGreaterThan(0)
    for (const curve of curves) {
      const [a, b, c, d, e, f] = curve.slice(1).map(Number) as [
        number,
        number,
        number,
        number,
        number,
        number,
      ]
      for (const t of steps) {
        const p = onCubic([from, { x: a, y: b }, { x: c, y: d }, { x: e, y: f }], t)
        const [x, y] = [(p.x * 25.4) / 72, (p.y * 25.4) / 72]
        expect(Math.abs(Math.hypot(x - centre.x, y - centre.y) - 1000)).toBeLessThan(0.001)
      }
      from = { x: e, y: f }
    }
  })
})

/** The content streams of a PDF, unpacked (Flate, ISO 32000-1 §7.4.4). */
function contents(pdf: Uint8Array): string[] {
  const raw = Buffer.from(pdf).toString('latin1')
  return [...raw.matchAll(/stream\n([\s\S]*?)\nendstream/g)].flatMap(([, body]) => {
    try {
      return [inflateSync(Buffer.from(body!, 'latin1')).toString('latin1')]
    } catch {
      return []
    }
  })
}
