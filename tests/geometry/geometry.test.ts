import { areaD, EndType, FillRule, inflatePathsD, intersectD, JoinType, type PathD } from 'clipper2-ts'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { flattenOutward } from '../../core/geometry/flatten.ts'
import { convexHull } from '../../core/geometry/hull.ts'
import { meet } from '../../core/geometry/intersect.ts'
import { cutLine } from '../../core/geometry/offset.ts'
import { isClosed, pathLength, polygon, reversePath, signedArea } from '../../core/geometry/path.ts'
import { distance } from '../../core/geometry/point.ts'
import {
  arc,
  arcOnChord,
  arcRadius,
  line,
  pathBox,
  pointAt,
  segmentLength,
} from '../../core/geometry/segment.ts'
import { FLATTEN } from '../../core/geometry/tolerance.ts'
import type { Path, Point } from '../../core/geometry/types.ts'
import { refused } from '../support/refused.ts'

const p = (x: number, y: number): Point => ({ x, y })
const rectangle = (w: number, h: number): Path => polygon([p(0, 0), p(w, 0), p(w, h), p(0, h)])
const sector = (radius: number, angle: number): Path => {
  const hem = arc(p(0, 0), p(0, radius), angle)
  return [hem, line(hem.to, p(0, radius)), line(p(0, radius), p(0, 0))]
}
const sides = (path: Path, allowance: number) => path.map((s) => ({ path: [s], allowance, turned: false }))
const dense = (path: Path, chords = 4000): PathD =>
  path.flatMap((s) =>
    s.kind === 'line' ? [s.from] : Array.from({ length: chords }, (_, i) => pointAt(s, i / chords)),
  )
const anySector = fc.tuple(
  fc.double({ min: 100, max: 1500, noNaN: true }),
  fc.double({ min: 0.05, max: 1.5, noNaN: true }),
)

describe('arcs', () => {
  test('have the length of their angle and the area of their sector', () => {
    fc.assert(
      fc.property(anySector, ([radius, angle]) => {
        const gore = sector(radius, angle)
        expect(segmentLength(gore[0]!)).toBeCloseTo(radius * angle, 6)
        expect(signedArea(gore)).toBeCloseTo((radius * radius * angle) / 2, 3)
        expect(pathLength(gore)).toBeCloseTo(radius * (2 + angle), 6)
        expect(signedArea(reversePath(gore))).toBeCloseTo((-radius * radius * angle) / 2, 3)
      }),
    )
  })

  // Euclid III.35: with sagitta d on a chord c, radius = (c²/4 + d²) ÷ 2d.
  test('on a chord stand as high as asked, to the right of the way', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 500, noNaN: true }),
        fc.double({ min: 5, max: 240, noNaN: true }),
        (chord, depth) => {
          const curve = arcOnChord(p(0, 0), p(chord, 0), depth)
          expect(arcRadius(curve)).toBeCloseTo((chord * chord) / 4 / (2 * depth) + depth / 2, 6)
          expect(pointAt(curve, 0.5).y).toBeCloseTo(-depth, 6)
          expect(pointAt(curve, 0.5).x).toBeCloseTo(chord / 2, 6)
          expect(pathBox([curve]).y).toBeCloseTo(-depth, 6)
        },
      ),
    )
  })
})

describe('flattening', () => {
  test('contains the shape and stays within a tenth of a millimetre of it', () => {
    fc.assert(
      fc.property(anySector, ([radius, angle]) => {
        const hull = flattenOutward(sector(radius, angle))
        const outer = Math.abs(areaD(hull))
        const common = Math.abs(
          intersectD([hull], [dense(sector(radius, angle))], FillRule.NonZero, 6).reduce(
            (sum, path) => sum + areaD(path),
            0,
          ),
        )
        expect(common).toBeGreaterThan((radius * radius * angle) / 2 - radius * angle * 0.01)
        for (const point of hull)
          expect(distance(point, p(0, radius))).toBeLessThanOrEqual(radius + FLATTEN + 1e-9)
        expect(outer).toBeGreaterThanOrEqual((radius * radius * angle) / 2 - 1e-6)
      }),
      { numRuns: 60 },
    )
  })

  test('keeps the shears’ gap on a curve and none on straight sides', () => {
    const hull = flattenOutward(sector(600, 0.4), undefined, 3)
    expect(Math.min(...hull.map(({ x }) => x))).toBeCloseTo(0, 9)
    expect(Math.max(...hull.map((q) => distance(q, p(0, 600))))).toBeGreaterThanOrEqual(603 - 1e-9)
  })

  test('takes an inward curve by its chords, which lie outside the cloth', () => {
    const neck: Path = [
      line(p(-100, 0), p(100, 0)),
      line(p(100, 0), p(100, 200)),
      line(p(100, 200), p(70, 200)),
    ]
    const dip = reversePath([arcOnChord(p(-70, 200), p(70, 200), 60)])
    const panel: Path = [...neck, ...dip, line(p(-70, 200), p(-100, 200)), line(p(-100, 200), p(-100, 0))]
    expect(isClosed(panel)).toBe(true)
    expect(areaD(flattenOutward(panel))).toBeGreaterThanOrEqual(signedArea(panel))
  })
})

describe('the convex hull', () => {
  test('holds every point and is convex', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 0, max: 100 })), {
          minLength: 3,
          maxLength: 40,
        }),
        (raw) => {
          const points = raw.map(([x, y]) => p(x, y))
          const hull = convexHull(points)
          fc.pre(hull.length >= 3)
          hull.forEach((a, i) => {
            const b = hull[(i + 1) % hull.length]!
            for (const q of points)
              expect((b.x - a.x) * (q.y - a.y) - (b.y - a.y) * (q.x - a.x)).toBeGreaterThanOrEqual(-1e-6)
          })
        },
      ),
    )
  })

  test('keeps a corner whose neighbour lies almost in line with it', () => {
    const x = -334.3742321320574
    const hull = convexHull([p(x, 826), p(x - 6e-14, -13), p(x + 6e-14, 0), p(-x, -13), p(-x, 826)])
    expect(hull).toHaveLength(4)
    expect(hull[0]!.y).toBe(-13)
  })
})

describe('where lines and circles meet', () => {
  test('3-4-5', () => {
    const circle = arc(p(5, 0), p(0, 0), 1)
    const found = meet(line(p(3, -10), p(3, -9)), circle, p(3, 4))!
    expect(found.x).toBeCloseTo(3, 9)
    expect(found.y).toBeCloseTo(4, 9)
    expect(meet(line(p(6, 0), p(6, 1)), circle, p(6, 0))).toBeUndefined()
    expect(meet(line(p(0, 0), p(1, 0)), line(p(0, 1), p(1, 1)), p(0, 0))).toBeUndefined()
    const two = meet(circle, arc(p(11, 0), p(6, 0), 1), p(3, 4))!
    expect(two.x).toBeCloseTo(3, 9)
    expect(two.y).toBeCloseTo(4, 9)
  })
})

describe('the line to cut', () => {
  test('of a rectangle is the rectangle grown by its allowances, side by side', () => {
    const cut = cutLine(
      rectangle(500, 300).map((s, i) => ({ path: [s], allowance: [20, 10, 5, 15][i]!, turned: false })),
    )
    expect(signedArea(cut)).toBeCloseTo((500 + 10 + 15) * (300 + 20 + 5), 6)
  })

  test('grows a blunt shape as a general polygon library does', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 1200, noNaN: true }),
        fc.double({ min: 1.1, max: 1.5, noNaN: true }),
        fc.double({ min: 5, max: 20, noNaN: true }),
        (radius, angle, a) => {
          const shape = sector(radius, angle)
          const grown = inflatePathsD([dense(shape)], a, JoinType.Miter, EndType.Polygon, 2, 6)
          const expected = grown.reduce((sum, path) => sum + areaD(path), 0)
          // Where an arc ends, the library carries its last chord on straight and the planner its circle: a³ ÷ R apart.
          expect(Math.abs(signedArea(cutLine(sides(shape, a))) - expected)).toBeLessThan(
            (2 * a ** 3) / radius + 1,
          )
        },
      ),
      { numRuns: 40 },
    )
  })

  test('keeps arcs as arcs about the same centre', () => {
    const cut = cutLine(sides(sector(600, 0.4), 12))
    const curve = cut.find((s) => s.kind === 'arc')!
    expect(curve.centre).toEqual(p(0, 600))
    expect(arcRadius(curve)).toBeCloseTo(612, 9)
  })

  test('is square one allowance above a gore’s point, where a mitre would stand far out', () => {
    const cut = cutLine(sides(sector(600, 0.4), 12))
    const top = Math.max(...cut.map(({ from }) => distance(from, p(0, 600)) * (from.y > 600 ? 1 : 0)))
    expect(top).toBeLessThan(12 / Math.cos(Math.atan2(12, 12)) + 12)
    const highest = Math.max(
      ...cut.map(({ from }) => from.x * -Math.sin(0.2) + (from.y - 600) * Math.cos(0.2)),
    )
    expect(highest).toBeCloseTo(12, 6)
  })

  test('of a tapered hem is the side edge mirrored in the fold, so the turning is wide enough', () => {
    // A wrist 200 wide on sleeve edges that open 1 in 4: turned up 20, the turning must meet the sleeve there.
    const corners = [p(-100, 0), p(100, 0), p(200, 400), p(-200, 400)]
    const outline = polygon(corners)
    const cut = cutLine(outline.map((s, i) => ({ path: [s], allowance: i === 0 ? 20 : 10, turned: i === 0 })))
    const at = (y: number) =>
      cut.flatMap(({ from }) => (Math.abs(from.y - y) < 1e-6 ? [Math.abs(from.x)] : []))
    const [fold, raw] = [Math.max(...at(0)), Math.max(...at(-20))]
    expect(raw - fold).toBeCloseTo(20 / 4, 6)
  })

  test('steps from one allowance to the next where a side hardly turns', () => {
    const a = line(p(0, 0), p(300, 0))
    const b = line(p(300, 0), p(600, 20))
    const shape: Path = [
      a,
      b,
      line(p(600, 20), p(600, 400)),
      line(p(600, 400), p(0, 400)),
      line(p(0, 400), p(0, 0)),
    ]
    const cut = cutLine(shape.map((s, i) => ({ path: [s], allowance: i === 0 ? 14 : 6, turned: false })))
    expect(isClosed(cut)).toBe(true)
    expect(Math.min(...cut.map(({ from }) => from.y))).toBeCloseTo(-14, 9)
  })

  test('refuses an allowance wider than the shape', () => {
    const hole = reversePath([arc(p(10, 0), p(0, 0), Math.PI), arc(p(-10, 0), p(0, 0), Math.PI)])
    expect(refused(() => cutLine(sides(hole, 12))).code).toBe('refusal.draft.allowance')
  })
})
