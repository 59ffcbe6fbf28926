import { describe, expect, test } from 'vitest'
import { BITE, oversewn, STITCH, WIDTH } from '../../core/sew/stitches.ts'
import { STITCHES } from '../../core/words/stitches.ts'
import { MM_PER } from '../../core/words/units.ts'

/** Thread ratio by stitches to the inch or centimetre and thickness in the same unit. */
const perInch = (
  stitch: 'lockstitch301' | 'chainstitch101' | 'chainstitch401',
  spi: number,
  inches: number,
) => STITCH[stitch].thread(MM_PER.in / spi, inches * MM_PER.in)
const perCentimetre = (stitch: 'lockstitch301', spcm: number, mm: number) =>
  STITCH[stitch].thread(10 / spcm, mm)

describe('machine thread', () => {
  // Sewing Thread Consumption Guide (textileblog.com) and textilecalculations.com: 301 = 2 + 2TS.
  test('lockstitch 301 = 2 + 2TS', () => {
    expect(perInch('lockstitch301', 10, 0.01)).toBeCloseTo(2.2, 9)
    expect(perInch('lockstitch301', 10, 0.04)).toBeCloseTo(2.8, 9)
    expect(perCentimetre('lockstitch301', 4, 1)).toBeCloseTo(2.8, 9)
    expect(perCentimetre('lockstitch301', 5, 1)).toBeCloseTo(3.0, 9)
    expect(perCentimetre('lockstitch301', 5, 2)).toBeCloseTo(4.0, 9)
  })

  // textilecalculations.com: 101 = 3 + 2TS; .005 in at 9 to the inch.
  test('single chain stitch 101 = 3 + 2TS', () => {
    expect(perInch('chainstitch101', 9, 0.005)).toBeCloseTo(3.09, 9)
  })

  // textilecalculations.com: 504 = 3 + 4WS + 4TS, with W the width of the overlock.
  test('overlock 504 = 3 + 4WS + 4TS', () => {
    const { thread } = STITCH.overlock504
    expect(thread(2.5, 1)).toBeCloseTo(3 + 4 * WIDTH.overlock * 0.4 + 4 * 1 * 0.4, 9)
  })

  // Thread of a full-sleeved woven shirt in 25 lines, textilecalculation.blogspot.com/2015/09: 301 reckoned at
  // 2.5 to one, overlock at 9 to one; in all 2487 in, which is 63.2 m. The lengths of its lines add up to 631 in
  // of lockstitch and 82 in of overlock; buttonholes and buttons are given in thread: 171.5 in. Sewn here at our
  // densities through two layers of shirting a quarter of a millimetre thick (from memory).
  test('a whole woven shirt takes what was published, give or take 15 %', () => {
    const [lockstitch, overlock, buttons] = [631, 82, 171.5]
    expect(lockstitch * 2.5 + overlock * 9 + buttons).toBe(2487)
    const inches =
      lockstitch * STITCH.lockstitch301.thread(10 / STITCH.lockstitch301.density, 0.5) +
      overlock * STITCH.overlock504.thread(10 / STITCH.overlock504.density, 0.5) +
      buttons
    const metres = (inches * MM_PER.in) / 1000
    expect(Math.abs(metres / 63.2 - 1)).toBeLessThan(0.15)
  })

  // A&E, Estimating Thread Consumption: 401 at 8 stitches to the inch.
  test.each([
    [0.055, 4.88],
    [0.06, 4.96],
    [0.065, 5.04],
    [0.07, 5.12],
    [0.075, 5.2],
  ])('chain stitch 401 = 4 + 2TS: %d in at 8 to the inch takes %d', (thickness, ratio) => {
    expect(perInch('chainstitch401', 8, thickness)).toBeCloseTo(ratio, 9)
  })

  // A&E bulletin: 42 in of 401, t = .075 in, 15 % waste, 7.00 yd.
  test('42 in of 401 with 15 % waste are 7 yd', () => {
    const yards = (42 / 36) * perInch('chainstitch401', 8, 0.075) * 1.15
    expect(yards).toBeCloseTo(7.0, 1)
  })

  // Coats and Carr & Latham print 5.5 and 7 for 304, without the width; at 3–5 mm the slant gives that order.
  test('a zigzag takes more than a lockstitch and less than 7 to one at its usual width', () => {
    const { thread } = STITCH.zigzag304
    expect(thread(2.5, 0.8)).toBeGreaterThan(STITCH.lockstitch301.thread(2.5, 0.8))
    expect(thread(2.5, 0.8)).toBeLessThan(7)
  })
})

describe('hand thread, from the thread’s path', () => {
  test('running stitch: s 3 mm, t 1 mm takes 1.333; s 2.5, t 0.8 takes 1.32', () => {
    // Stitch and gap alike: the pitch is twice the stitch.
    expect(STITCH.running.thread(6, 1)).toBeCloseTo(4 / 3, 9)
    expect(STITCH.running.thread(5, 0.8)).toBeCloseTo(1.32, 9)
  })

  // Dillmont, Encyclopedia of Needlework: the back stitch goes 6 threads forward and 3 back.
  test('back stitch: s 3 mm, t 1 mm takes 3.667; s 2.5, t 0.8 takes 3.64', () => {
    expect(STITCH.backstitch.thread(3, 1)).toBeCloseTo(11 / 3, 9)
    expect(STITCH.backstitch.thread(2.5, 0.8)).toBeCloseTo(3.64, 9)
    expect(STITCH.backstitch.thread(3, 0)).toBeCloseTo((6 + 3) / 3, 9)
  })

  test('half back stitch lies between the two', () => {
    expect(STITCH.halfBackstitch.thread(6, 1)).toBeCloseTo(2 + 1 / 3, 9)
  })

  test('oversewing: pitch 3 mm, bite 2 mm takes 1.667, the edge’s thickness extra', () => {
    expect(oversewn(3, 2, 0)).toBeCloseTo(5 / 3, 9)
    expect(STITCH.overcast.thread(3, 0.4) - oversewn(3, BITE.overcast, 0)).toBeCloseTo(0.4 / 3, 9)
  })

  // The thread's path, computed: no table of these is in print.
  test('a loop at the edge goes down the bite on both sides, round the edge and on', () => {
    expect(STITCH.blanket.thread(3, 0.8)).toBeCloseTo((3 + 2 * BITE.blanket + 0.8) / 3, 9)
    expect(STITCH.buttonhole.thread(1, 0.8)).toBeGreaterThan((1 + 2 * BITE.buttonhole + 0.8) / 1)
    expect(STITCH.eyelet.thread(1, 0.8)).toBeCloseTo(1 + 2 * BITE.eyelet + 0.8, 9)
  })

  test('stab stitches, gathers and tacking are running stitches of their own length', () => {
    for (const id of ['stab', 'gathering', 'tacking'] as const)
      expect(STITCH[id].thread(6, 1)).toBeCloseTo(STITCH.running.thread(6, 1), 9)
    // Dillmont: tacking stitches 2 cm long.
    expect(10 / STITCH.tacking.density).toBe(20)
  })

  test('a short bite over a fold and a slant to the next', () => {
    expect(STITCH.hemming.thread(2.5, 0)).toBeCloseTo((1.5 + Math.hypot(2.5, 1.5)) / 2.5, 9)
  })
})

describe('the catalogue', () => {
  // Names and numbers of ISO 4915: 101 single chain, 301 lockstitch, 304 zigzag, 401 double chain, 504 overedge.
  test('numbers machine stitches as ISO 4915 does, and no hand stitch', () => {
    for (const id of STITCHES) {
      const { work, iso } = STITCH[id]
      expect(iso).toBe(work === 'hand' ? null : /\d+$/.exec(id)![0])
    }
  })

  // 12 a minute all told is common practice: about half of the 23 that needles went at in the tests of 1861.
  test('sews about 12 hand stitches a minute', () => {
    const paces = STITCHES.filter((id) => STITCH[id].work === 'hand').map((id) => STITCH[id].pace)
    const middle = paces.sort((a, b) => a - b)[paces.length >> 1]!
    expect(middle).toBe(12)
  })
})

describe('every stitch', () => {
  test.each(STITCHES)('%s takes more thread than its seam, the more the thicker and denser', (id) => {
    const { thread, density, pace } = STITCH[id]
    expect(thread(10 / density, 0.8)).toBeGreaterThan(1)
    expect(thread(10 / density, 1.6)).toBeGreaterThan(thread(10 / density, 0.8))
    expect(thread(2, 0.8)).toBeGreaterThan(thread(4, 0.8))
    expect(pace).toBeGreaterThan(0)
  })

  // Wheeler & Wilson tests of 1861 (Cooper, The Invention of the Sewing Machine): 23 stitches a minute by hand
  // in fine linen. Hone's count of a shirt, 20 548 stitches in 14 h 26, gives the same.
  test('is sewn by hand no faster than the needle goes', () => {
    expect(20_548 / (14 * 60 + 26)).toBeCloseTo(23.7, 1)
    for (const id of STITCHES) if (STITCH[id].work === 'hand') expect(STITCH[id].pace).toBeLessThan(23)
  })
})
