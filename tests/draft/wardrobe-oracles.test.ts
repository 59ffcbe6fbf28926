import { describe, expect, test } from 'vitest'
import { draftGarment } from '../../core/draft/constructions.ts'
import type { Draft } from '../../core/draft/types.ts'
import { arcRadius } from '../../core/geometry/segment.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'

/** Each garment's seams, hems and area reckoned once more by hand, from its finished figures alone. */
const drafted = (id: string, choices: Record<string, string | number | boolean>): Draft =>
  draftGarment(id, bodyOf(WOMAN), choices, 'mm')
const close = (mm: number) => expect.closeTo(mm, 6)
const figures = (draft: Draft) => draft.choices as Record<string, number>
const hypot = Math.hypot

describe('a shift', () => {
  const draft = drafted('shift', { length: 1000, goreWidth: 120, gusset: 100, neckEnd: 'hemmed' })
  const { panelWidth, sleeveLength } = figures(draft) as { panelWidth: number; sleeveLength: number }
  const armhole = (WOMAN.upperArmGirth + 130) / 2
  const skirt = 1000 - armhole - 100

  test('comes to the figures reckoned by hand', () => {
    expect(draft.totals.seams).toEqual({
      gore: close(4 * hypot(skirt, 120)),
      goreToGore: close(2 * skirt),
      armhole: close(4 * armhole),
      gusset: close(8 * 100),
      underarm: close(2 * (sleeveLength - 100)),
    })
    // Two panels and four gores, each of which gains the gore's width.
    expect(draft.totals.hems.bottom).toBeCloseTo(2 * (panelWidth + 240) + 4 * 120, 6)
    expect(draft.totals.hems.wrist).toBeCloseTo(4 * armhole, 6)
    const panels = 2 * panelWidth * 1000 + 4 * ((120 * skirt) / 2)
    const neck =
      panels + 4 * ((120 * skirt) / 2) + 2 * 2 * armhole * sleeveLength + 2 * 100 ** 2 - draft.totals.area
    // What is left over is the hole for the neck: less than a rectangle round it, more than half of one.
    const round = figures(draft).neckWidth! * (figures(draft).neckDepth! + 50)
    expect(neck).toBeGreaterThan(0.4 * round)
    expect(neck).toBeLessThan(round)
  })
})

describe('a smock', () => {
  test('is the shift’s body, with neck and sleeves gathered into bands', () => {
    const draft = drafted('smock', { length: 1100, goreWidth: 100, gusset: 90, closing: 'hooks' })
    const { sleeveLength, cuffOpening } = figures(draft) as { sleeveLength: number; cuffOpening: number }
    const armhole = (WOMAN.upperArmGirth + 150) / 2
    expect(draft.totals.seams.underarm).toBeCloseTo(2 * (sleeveLength - 90 - cuffOpening), 6)
    const cuff = draft.seams.find(({ id }) => id === 'wristband-left-set')!
    expect(cuff.length * cuff.ratio).toBeCloseTo(2 * armhole, 6)
    const neck = draft.seams.find(({ id }) => id === 'neckband-set')!
    expect(neck.ratio).toBeCloseTo(2, 3)
    expect(neck.gathers).toBe(3)
  })
})

describe('a shirt', () => {
  test('has its seams at sides, sleeves and gussets', () => {
    const draft = drafted('shirt', {
      backLength: 1000,
      frontShorter: 60,
      armholeDepth: 210,
      gusset: 120,
      sideSlit: 200,
    })
    const { sleeveLength, cuffOpening } = figures(draft) as { sleeveLength: number; cuffOpening: number }
    expect(draft.totals.seams.side).toBeCloseTo(2 * (940 - 330 - 200), 6)
    expect(draft.totals.seams.armhole).toBeCloseTo(4 * 210, 6)
    // Eight sides of the squares under the arms, four of those beside the neck.
    expect(draft.totals.seams.gusset).toBeCloseTo(8 * 120 + 4 * 75, 6)
    expect(draft.totals.seams.underarm).toBeCloseTo(2 * (sleeveLength - 120 - cuffOpening), 6)
    const tails = draft.hems.filter(({ id }) => id.startsWith('side-slit'))
    expect(tails.reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(2 * (200 + 260), 6)
  })
})

describe('a circle cloak', () => {
  test.each([
    ['half', 2],
    ['threeQuarter', 3],
    ['full', 4],
  ] as const)('of a %s circle has the arcs and area of its quarters', (circle, quarters) => {
    const draft = drafted('circleCloak', { circle, cloakLength: 1000, neckFit: 'plain' })
    const angle = (quarters * Math.PI) / 2
    const inner = 405 / angle
    expect(draft.totals.hems.bottom).toBeCloseTo(angle * (inner + 1000), 6)
    expect(draft.totals.seams.centre).toBeCloseTo((quarters - 1) * 1000, 6)
    expect(draft.totals.area).toBeCloseTo((angle / 2) * ((inner + 1000) ** 2 - inner ** 2) + 405 * 60, 3)
  })
})

describe('a hood', () => {
  test('with a tail comes to the figures reckoned by hand', () => {
    const draft = drafted('hood', {
      ...{ hoodWidth: 310, faceOpening: 320, capeLength: 260, capeSpread: 240, tail: true },
      ...{ tailLength: 700, tailWidth: 60 },
    })
    const cut = 60 / Math.SQRT2
    expect(draft.totals.seams.gore).toBeCloseTo(4 * 210, 6)
    expect(draft.totals.seams.centre).toBeCloseTo(310 - cut + (580 - cut) + 260, 6)
    expect(draft.totals.seams.strap).toBeCloseTo(700 + 60 + 2 * 60, 6)
    expect(draft.totals.area).toBeCloseTo(
      2 * (310 * 580 - cut ** 2 / 2) + 2 * ((210 * 240) / 2) + 700 * 120,
      3,
    )
  })

  test('has a lining of the same seams and area, felled wherever it is hemmed', () => {
    const [plain, lined] = [drafted('hood', {}), drafted('hood', { lined: true })]
    expect(lined.totals.area).toBeCloseTo(2 * plain.totals.area, 3)
    expect(lined.totals.seams.centre).toBeCloseTo(2 * plain.totals.seams.centre!, 6)
    expect(lined.totals.hems.lining).toBeCloseTo(plain.totals.hems.edge!, 6)
  })
})

describe('hose', () => {
  test('are as much narrower as they stretch, and longer by what stretching takes', () => {
    const draft = drafted('hose', { takenIn: 8, foot: 'footless' })
    const leg = draft.pieces[0]!
    const width = (edge: string) => leg.edges.find(({ id }) => id === edge)!.length
    expect(width('bottom')).toBeCloseTo(WOMAN.ankleGirth / 1.08, 6)
    expect(width('top')).toBeCloseTo(WOMAN.thighGirth / 1.08, 6)
    const height = WOMAN.insideLegHeight - 30 - 0.17 * WOMAN.kneeHeight
    expect(leg.sizes.find(({ name }) => name.code === 'draft.size.length')!.mm).toBeCloseTo(
      height / Math.sqrt(2 - 1.08 ** 2),
      6,
    )
    expect(leg.grain).toBe('bias')
  })
})

describe('a strap dress', () => {
  test('comes to the figures reckoned by hand', () => {
    const draft = drafted('strapDress', {
      dressLength: 1000,
      goreSpread: 250,
      strapLength: 300,
      loopLength: 70,
    })
    const top = WOMAN.cervicalHeight * 0.8795 - WOMAN.waistHeight
    const radius = 1000 - top
    const around = draft.sizes.find(({ id }) => id === 'chest')!.mm
    expect(draft.totals.seams).toEqual({
      ...{ side: close(2 * top), gore: close(4 * radius), goreToGore: close(2 * radius) },
      strap: close(2 * 315 + 2 * 155),
    })
    expect(draft.totals.hems.bottom).toBeCloseTo(around + 4 * 250, 6)
    expect(draft.totals.area).toBeCloseTo(
      around * 1000 + 4 * ((radius * 250) / 2) + 2 * 315 * 40 + 2 * 155 * 20,
      3,
    )
  })
})

describe('a sideless overgown', () => {
  test('has its gores from the hip and its sides open above', () => {
    const draft = drafted('sidelessOvergown', { length: 1300, goreSpread: 300 })
    const radius = 1300 - (WOMAN.cervicalHeight - WOMAN.hipHeight)
    expect(draft.totals.seams.gore).toBeCloseTo(4 * radius, 6)
    expect(draft.totals.seams.goreToGore).toBeCloseTo(2 * radius, 6)
    const around = Math.ceil((WOMAN.hipGirth + 160) / 5) * 5
    expect(draft.totals.hems.bottom).toBeCloseTo(around + 4 * 300, 6)
    // An open side is longer than straight from shoulder to hip, by no more than its hollow allows.
    const open = draft.hems.find(({ id }) => id === 'opening-left')!.length / 2
    expect(open).toBeGreaterThan(1300 - radius)
    expect(open).toBeLessThan(1300 - radius + 2 * 60)
  })
})

describe('a laced kirtle', () => {
  const draft = drafted('lacedKirtle', { bustEase: 5, waistEase: 15, lacingGap: 20, goreSpread: 240 })

  test('goes round bust and waist with its ease, the lacing’s gap counted', () => {
    const { chest, waist } = Object.fromEntries(draft.sizes.map(({ id, mm }) => [id, mm]))
    expect(chest).toBeCloseTo(WOMAN.bustGirth + 5, 6)
    expect(waist).toBeCloseTo(WOMAN.waistGirth + 15, 6)
  })

  test('has sleeve caps as long as its armholes, and one lace through eyelets set off against each other', () => {
    const arm = draft.pieces.find(({ id }) => id === 'kirtleFront')!.edges.find(({ id }) => id === 'arm')!
    expect(draft.totals.seams.armhole).toBeCloseTo(4 * arm.length, 3)
    const cap = draft.pieces.find(({ id }) => id === 'sleeve')!.edges.find(({ id }) => id === 'head')!
      .path[0]!
    expect(cap.kind === 'arc' && arcRadius(cap) * Math.abs(cap.sweep)).toBeCloseTo(2 * arm.length, 3)
    const { openingLength } = figures(draft)
    const side = Math.floor(openingLength! / 25) + 1
    const lace = (2 * side - 1) * hypot(36, 12.5) + 600
    expect(draft.notions).toEqual([{ notion: 'lace', mm: close(lace) }])
    const eyelets = draft.steps
      .flatMap(({ operations }) => operations)
      .find(({ operation }) => operation === 'workEyelet')
    expect(eyelets!.quantity).toBe(2 * side)
  })

  test('may be stiffened: the lining again, tacked all round', () => {
    const stiff = drafted('lacedKirtle', { interlined: true })
    const again = stiff.pieces.filter(({ cloth }) => cloth === 'interlining')
    expect(again.map(({ id }) => id)).toEqual(['interlining-liningFront', 'interlining-liningBack'])
    const edges = again.flatMap(({ edges: all, copies }) => all.map(({ length }) => length * copies.length))
    expect(stiff.totals.hems.tacked).toBeCloseTo(
      edges.reduce((sum, length) => sum + length, 0),
      6,
    )
  })
})

describe('an overtunic', () => {
  test('is the undertunic of a body as much rounder as what is worn beneath', () => {
    const round = 2 * Math.PI * 4
    const over = drafted('overtunic', { beneath: 4, chestEase: 120, seamFinish: 'felled' })
    const girths = [
      'bustGirth',
      'waistGirth',
      'hipGirth',
      'upperArmGirth',
      'elbowGirth',
      'forearmGirth',
      'calfGirth',
    ] as const
    const stouter = { ...WOMAN, ...Object.fromEntries(girths.map((id) => [id, WOMAN[id] + round])) }
    const under = draftGarment('goredUndertunic', bodyOf(stouter), {}, 'mm')
    expect(over.totals).toEqual(under.totals)
  })

  test('has its forearms and sides open as far as asked, and a button for every stretch', () => {
    const plain = drafted('overtunic', {})
    const open = drafted('overtunic', { sideSlit: 200 })
    expect(plain.totals.seams.goreToGore! - open.totals.seams.goreToGore!).toBeCloseTo(2 * 200, 6)
    expect(open.totals.hems.slit).toBeCloseTo(4 * 200, 6)
    const buttoned = drafted('overtunic', { forearm: 'buttoned', forearmOpening: 176, buttonSpacing: 22 })
    expect(buttoned.totals.hems.slit).toBeCloseTo(4 * 176, 6)
    expect(buttoned.notions).toEqual([{ notion: 'button', count: 2 * 9 }])
  })
})

describe('veil, wimple and coif', () => {
  test('come to the hems reckoned by hand', () => {
    expect(drafted('veil', { veilLength: 1600, veilDepth: 600 }).totals.hems.edge).toBeCloseTo(
      2 * (1600 + 600),
      6,
    )
    expect(drafted('veil', { veilShape: 'halfCircle', veilLength: 1400 }).totals.hems.edge).toBeCloseTo(
      1400 + Math.PI * 700,
      6,
    )
    expect(drafted('veil', { veilShape: 'circle', veilLength: 1400 }).totals.area).toBeCloseTo(
      Math.PI * 700 ** 2,
      3,
    )
    expect(drafted('wimple', { wimpleLength: 800, wimpleDepth: 350 }).totals.hems.edge).toBeCloseTo(2300, 6)
    const coif = drafted('coif', { coifWidth: 440, coifDepth: 240, crownGathers: 70 })
    expect(coif.totals.seams.centre).toBeCloseTo(220, 6)
    expect(coif.totals.hems.edge).toBeCloseTo(2 * 240 + 440, 6)
  })
})
