import { describe, expect, test } from 'vitest'
import { draftGarment } from '../../core/draft/constructions.ts'
import type { Extras } from '../../core/draft/extras.ts'
import type { Draft } from '../../core/draft/types.ts'
import { faultsOf } from '../../core/draft/verify.ts'
import { signedArea } from '../../core/geometry/path.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'
import { refused } from '../support/refused.ts'

const body = bodyOf(WOMAN)
const drafted = (id: string, extras: Extras, choices: Record<string, string | number> = {}) =>
  draftGarment(id, body, choices, 'mm', extras)
const cutArea = ({ pieces }: Draft) =>
  pieces.reduce((sum, { cut, copies }) => sum + copies.length * signedArea(cut), 0)
const worked = ({ steps }: Draft, operation: string) =>
  steps
    .flatMap(({ operations }) => operations)
    .filter((one) => one.operation === operation)
    .reduce((sum, { quantity }) => sum + quantity, 0)

describe('growth tucks', () => {
  test('take up cloth above the hem and leave the garment as long as it was', () => {
    const [plain, tucked] = [{}, { growthTucks: { count: 2, depth: 20 } }].map((extras) =>
      drafted('petticoat', extras, { skirtLength: 800 }),
    ) as [Draft, Draft]
    const sweep = plain.totals.hems.bottom!
    expect(tucked.totals.area - plain.totals.area).toBeCloseTo(sweep * 2 * 2 * 20, 3)
    expect(tucked.sizes[0]).toEqual(plain.sizes[0])
    expect(tucked.fit.find(({ id }) => id === 'floor')).toEqual(plain.fit.find(({ id }) => id === 'floor'))
    expect(worked(tucked, 'growthTuck')).toBeCloseTo((2 * sweep) / 1000, 9)
    expect(faultsOf(tucked)).toEqual([])
  })

  test('go into a tunic, whose hem level they respect', () => {
    const tucked = drafted('goredUndertunic', { growthTucks: { count: 1, depth: 30 } }, { hemLevel: 'knee' })
    const plain = drafted('goredUndertunic', {}, { hemLevel: 'knee' })
    expect(tucked.choices.hemLevel).toBe('knee')
    expect(tucked.totals.area).toBeGreaterThan(plain.totals.area)
    expect(refused(() => drafted('kerchief', { growthTucks: { count: 1, depth: 30 } })).field).toBe(
      'extras.growthTucks',
    )
  })
})

describe('an inlay', () => {
  test('widens what is cut along the side seams and nothing that is finished', () => {
    const [plain, wide] = [drafted('petticoat', {}), drafted('petticoat', { inlay: 25 })]
    expect(wide.totals).toEqual(plain.totals)
    // Three widths, both sides of each, over the finished length and its hem and gathered edge.
    const length = (plain.choices.skirtLength as number) + 40 + 6 + 12
    expect(cutArea(wide) - cutArea(plain)).toBeCloseTo(3 * 2 * 25 * length, 3)
    expect(refused(() => drafted('kerchief', { inlay: 10 })).field).toBe('extras.inlay')
  })
})

describe('nursing slits', () => {
  test('are four cuts in the front, hemmed on both sides, in every garment with such a front', () => {
    for (const id of ['goredUndertunic', 'overtunic', 'shift', 'smock']) {
      const made = drafted(id, { nursingSlits: true })
      const hems = made.hems.filter((hem) => hem.id.includes('nursing'))
      expect(hems).toHaveLength(4)
      expect(hems.reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(2 * 2 * 160, 6)
      expect(faultsOf(made)).toEqual([])
    }
    expect(refused(() => drafted('hose', { nursingSlits: true })).field).toBe('extras.nursingSlits')
  })
})

describe('a trim', () => {
  test('is as long as the edges it goes on and a twentieth more, and is sewn on by the metre', () => {
    const made = drafted('circleCloak', { trim: ['bottom', 'fronts'] })
    const length = made.totals.hems.bottom! + made.hems.find(({ id }) => id === 'fronts')!.length
    expect(made.notions).toContainEqual({ notion: 'trim', mm: expect.closeTo(length * 1.05, 6) })
    expect(worked(made, 'sewTrim')).toBeCloseTo(length / 1000, 9)
    expect(refused(() => drafted('circleCloak', { trim: ['collar'] })).field).toBe('extras.trim')
  })
})

describe('alterations', () => {
  test('need no cloth but for patches, and no body', () => {
    const made = draftGarment('alteration', { measures: {} }, { unpicked: 1200, hemsResewn: 2400 }, 'mm')
    expect(made.pieces).toEqual([])
    expect(worked(made, 'unpick')).toBe(1.2)
    expect(made.totals.hems).toEqual({ bottom: 2400 })
    const patched = draftGarment('alteration', { measures: {} }, { patches: 2, patchSide: 80 }, 'mm')
    expect(patched.totals.area).toBe(2 * 80 * 80)
    expect(patched.totals.hems).toEqual({ laidOn: 2 * 4 * 80 })
  })
})
