import { describe, expect, test } from 'vitest'
import type { Asked } from '../../core/draft/choices.ts'
import { draftGarment } from '../../core/draft/constructions.ts'
import { FINISH_PLANS } from '../../core/sew/finish-plans.ts'
import { DEFAULT_THREAD_RULES } from '../../core/sew/parameters.ts'
import { sew } from '../../core/sew/sewing.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'

const PEAR = { ...WOMAN, waistGirth: 680, hipGirth: 1240 }
const drafted = (id: string, choices: Asked = {}, body: object = WOMAN) =>
  draftGarment(id, bodyOf(body), choices, 'mm')
const failing = (id: string, choices: Asked, body?: object) =>
  drafted(id, choices, body)
    .fit.filter(({ status }) => status === 'fails')
    .map((check) => check.id)

describe('a petticoat', () => {
  const choices = {
    skirtLength: 900,
    panels: 3,
    fullness: 2.5,
    waistEase: 10,
    opening: 250,
    bandDepth: 30,
    tieLength: 350,
  }
  const draft = drafted('petticoat', choices)
  const band = WOMAN.waistGirth + 10

  test('comes to the seams, hems and area reckoned by hand', () => {
    expect(draft.totals.seams.side).toBeCloseTo(3 * 900 - 250, 6)
    // The gathers, both ties along their length, and the two ends across.
    expect(draft.totals.seams.band).toBeCloseTo(band + 2 * 350 + 2 * 30, 6)
    expect(draft.totals.hems.bottom).toBeCloseTo(2.5 * band, 6)
    expect(draft.totals.hems.slit).toBeCloseTo(500, 6)
    expect(draft.totals.area).toBeCloseTo(2.5 * band * 900 + (band + 700) * 60, 3)
  })

  test('has its gathering threads in thread and time: three rows through the whole sweep', () => {
    const { rows } = sew(draft, FINISH_PLANS.allByMachine, 0.4, DEFAULT_THREAD_RULES)
    const gathers = rows.filter(({ purpose }) => purpose === 'gather')
    expect(gathers.map(({ stitch }) => stitch)).toEqual(['gathering', 'gathering', 'gathering'])
    for (const { length, minutes } of gathers) {
      expect(length).toBeCloseTo(2.5 * band, 6)
      expect(minutes.mean).toBeGreaterThan(10)
    }
  })

  test('tells what is wrong with a bad choice', () => {
    expect(failing('petticoat', { skirtLength: 1300 })).toEqual(['floor'])
    expect(failing('petticoat', { opening: 120 }, PEAR)).toEqual(['goesOn'])
    expect(failing('petticoat', { fullness: 1.5, opening: 400 }, PEAR)).toEqual(['hip'])
  })
})

describe('an apron', () => {
  test('comes to the hems and gathers reckoned by hand, and tells a bad choice', () => {
    const { totals, seams } = drafted('apron', { skirtLength: 700, apronBand: 400, fullness: 2 })
    expect(totals.hems).toMatchObject({ edge: 1400, bottom: 800, band: 400 })
    expect(seams.find(({ id }) => id === 'tiedBand-set')).toMatchObject({ length: 400, ratio: 2, gathers: 2 })
    expect(failing('apron', { tieLength: 200, apronBand: 150 })).toEqual(['ties'])
    expect(failing('apron', { skirtLength: 1200 })).toEqual(['floor'])
  })
})

describe('a kerchief', () => {
  test('is hemmed on four sides, and tells when it is too small to tie', () => {
    expect(drafted('kerchief', { side: 800 }).totals.hems.edge).toBeCloseTo(3200, 6)
    expect(failing('kerchief', { side: 400 })).toEqual(['ties'])
  })
})

describe('drawers', () => {
  const THROUGH = { ...WOMAN, totalCrotchLength: 720, thighGirth: 590 }
  const draft = drafted('drawers', { crotchGusset: 160, hipEase: 260 }, THROUGH)
  const rise = Math.round((720 + 120 - 160 * Math.SQRT2) / 2)
  const inseam = WOMAN.insideLegHeight - (WOMAN.kneeHeight - 60)

  test('come to the seams and area reckoned by hand', () => {
    expect(draft.totals.seams.gusset).toBeCloseTo(4 * 160, 6)
    expect(draft.totals.seams.side).toBeCloseTo(2 * rise + 2 * inseam, 6)
    const leg = (WOMAN.hipGirth + 260) / 2
    expect(draft.totals.hems).toMatchObject({ edge: 2 * leg, bottom: 2 * leg })
    expect(draft.totals.area).toBeCloseTo(2 * leg * (rise + 160 + inseam) + 160 ** 2, 3)
    // The way through the crotch goes over the square from corner to corner.
    expect(2 * rise + 160 * Math.SQRT2).toBeGreaterThanOrEqual(720 + 119)
  })

  test('tell what is wrong with a bad choice', () => {
    expect(failing('drawers', { hipEase: 100 }, { ...THROUGH, thighGirth: 780 })).toEqual(['thigh'])
    expect(failing('drawers', { rise: 150 }, THROUGH)).toEqual(['seatDepth'])
    expect(failing('drawers', { rise: 400, drawersLength: 'ankle' }, THROUGH)).toEqual(['floor'])
  })
})
