/*
 * This file is long because it is one quote in all its parts, pieces, lay, sewing and price, and each rests on the one
 * before.
 */
import { totalsOf } from '../../core/draft/seams.ts'
import type { Draft, Edge, Hem, Piece, Seam, Step } from '../../core/draft/types.ts'
import { placePath } from '../../core/draw/placed.ts'
import { cutLine } from '../../core/geometry/offset.ts'
import { pathLength, reversePath, signedArea } from '../../core/geometry/path.ts'
import { arc, arcOnChord, line, pathBox } from '../../core/geometry/segment.ts'
import type { Path, Point } from '../../core/geometry/types.ts'
import type { Cloth, Lay, Placement, Purchase } from '../../core/lay/types.ts'
import type { Body, Measure } from '../../core/measure/body.ts'
import type { Estimate } from '../../core/price/estimate.types.ts'
import type { Price } from '../../core/price/types.ts'
import type { QuoteLine, QuoteSnapshot } from '../../core/quote/types.ts'
import type { FinishPlan, Minutes, Row, Sewing } from '../../core/sew/types.ts'
import { addMoney, type Money, money, partOf, sumMoney } from '../../core/words/money.ts'
import { type Phrase, phrase } from '../../core/words/phrase.ts'
import type { WorkroomUnit } from '../../core/words/units.ts'

/** Invented people, an invented workroom and a plausible undertunic, made by hand for the sheets' tests. */

const named = (text: string): Phrase => phrase('paper.plain', { text })
const p = (x: number, y: number): Point => ({ x, y })

const SEAM = 12
const HEM = 25

type Side = { id: string; path: Path; allowance: number; turned: boolean }

function piece(
  id: string,
  name: string,
  copies: [string, string, boolean][],
  sides: Side[],
  more: Partial<Piece> = {},
): Piece {
  const outline = sides.flatMap((side) => side.path)
  const edges: Edge[] = sides.map((side) => ({
    id: side.id,
    on: 'outline',
    path: side.path,
    length: pathLength(side.path),
    allowance: side.allowance,
    turned: side.turned,
  }))
  const box = pathBox(outline)
  return {
    id,
    name: named(name),
    copies: copies.map(([copy, text, mirrored]) => ({ id: copy, name: named(text), mirrored })),
    outline,
    cut: cutLine(sides),
    openings: [],
    slits: [],
    edges,
    grain: 'straight',
    turn: [0, 180],
    cloth: 'main',
    sizes: [
      { name: named('width'), mm: box.width },
      { name: named('height'), mm: box.height },
    ],
    ...more,
  }
}

const straight = (id: string, from: Point, to: Point, allowance: number = SEAM, turned = false): Side => ({
  id,
  path: [line(from, to)],
  allowance,
  turned,
})

const WIDTH = 560
const LENGTH = 1150
const NECK = 180

function body(id: string, name: string, depth: number): Piece {
  const [left, right] = [(WIDTH - NECK) / 2, (WIDTH + NECK) / 2]
  return piece(
    id,
    name,
    [[id, name, false]],
    [
      straight('hem', p(0, 0), p(WIDTH, 0), HEM, true),
      straight('right', p(WIDTH, 0), p(WIDTH, LENGTH)),
      straight('shoulderRight', p(WIDTH, LENGTH), p(right, LENGTH)),
      {
        id: 'neck',
        path: reversePath([arcOnChord(p(left, LENGTH), p(right, LENGTH), depth)]),
        allowance: 8,
        turned: false,
      },
      straight('shoulderLeft', p(left, LENGTH), p(0, LENGTH)),
      straight('left', p(0, LENGTH), p(0, 0)),
    ],
  )
}

const SLEEVE_LENGTH = 480
const sleeve = piece(
  'sleeve',
  'Sleeve',
  [
    ['left', 'Sleeve, left', false],
    ['right', 'Sleeve, right', true],
  ],
  [
    straight('wrist', p(80, 0), p(320, 0), 20, true),
    straight('back', p(320, 0), p(400, SLEEVE_LENGTH)),
    straight('head', p(400, SLEEVE_LENGTH), p(0, SLEEVE_LENGTH)),
    straight('front', p(0, SLEEVE_LENGTH), p(80, 0)),
  ],
)

const corners = [p(0, 0), p(100, 0), p(100, 100), p(0, 100)]
const gusset = piece(
  'gusset',
  'Gusset',
  [
    ['left', 'Gusset, left', false],
    ['right', 'Gusset, right', false],
  ],
  corners.map((from, i) => straight(`side${i + 1}`, from, corners[(i + 1) % 4]!)),
)

const RADIUS = 700
const SPREAD = 0.34
const apex = p(0, RADIUS)
const gore = piece(
  'gore',
  'Gore',
  [
    ['frontLeft', 'Gore, front left', false],
    ['frontRight', 'Gore, front right', true],
    ['backLeft', 'Gore, back left', true],
    ['backRight', 'Gore, back right', false],
  ],
  [
    straight('grain', apex, p(0, 0)),
    { id: 'hem', path: [arc(p(0, 0), apex, SPREAD)], allowance: HEM, turned: true },
    straight('bias', arc(p(0, 0), apex, SPREAD).to, apex),
  ],
)

const facingCorners = [p(0, 0), p(300, 0), p(300, 340), p(0, 340)]
const eye = (radius: number): Path => [
  arc(p(150 + radius, 220), p(150, 220), -Math.PI),
  arc(p(150 - radius, 220), p(150, 220), -Math.PI),
]
const facing = piece(
  'facing',
  'Neck facing',
  [['facing', 'Neck facing', false]],
  facingCorners.map((from, i) => straight(`side${i + 1}`, from, facingCorners[(i + 1) % 4]!, 8)),
  {
    openings: [{ id: 'neck', finished: eye(82), cut: eye(74) }],
    slits: [{ id: 'slit', apex: p(150, 40), open: p(150, 138), allowance: 5 }],
    cloth: 'facing',
  },
)

const front = body('front', 'Front', 80)
const back = body('back', 'Back', 25)
export const pieces: Piece[] = [front, back, sleeve, gusset, gore, facing]

/** Lays a copy so that the box of its cut outline starts at (x, y). */
function lay(of: Piece, copy: string, x: number, y: number, angle: Placement['angle'] = 0): Placement {
  const flipped = of.copies.find(({ id }) => id === copy)!.mirrored
  const box = pathBox(placePath(of.cut, { x: 0, y: 0, angle, flipped }))
  return { piece: of.id, copy, x: x - box.x, y: y - box.y, angle, flipped }
}

export const cloth: Cloth = {
  width: 1500,
  selvedge: 10,
  warpShrinkage: 0.06,
  weftShrinkage: 0.03,
  rightSide: true,
  nap: false,
  thickness: 0.4,
  increment: 100,
}

const size = (of: Piece) => pathBox(of.cut)
const second = size(front).height
const gores = 2 * size(sleeve).width - 424

const placements: Placement[] = [
  lay(front, 'front', 0, 0),
  lay(back, 'back', size(front).width, 0),
  lay(gore, 'frontLeft', 2 * size(front).width, 0),
  lay(gusset, 'left', 2 * size(front).width, size(gore).height),
  lay(gusset, 'right', 2 * size(front).width + size(gusset).width, size(gore).height),
  lay(sleeve, 'left', 0, second),
  lay(sleeve, 'right', 0, second + size(sleeve).height),
  lay(gore, 'frontRight', gores, second),
  lay(gore, 'backLeft', gores + size(gore).width, second),
  lay(gore, 'backRight', gores + 2 * size(gore).width, second, 180),
  lay(facing, 'facing', gores, second + size(gore).height),
]
const usableWidth = (1500 - 20) * 0.97
const ends = placements.map((placement) => {
  const box = pathBox(placePath(pieces.find(({ id }) => id === placement.piece)!.cut, placement))
  return box.y + box.height
})
const layLength = Math.max(...ends)
const pieceArea = placements.reduce(
  (sum, { piece: id }) => sum + Math.abs(signedArea(pieces.find((one) => one.id === id)!.cut)),
  0,
)

export const theLay: Lay = {
  usableWidth,
  length: layLength,
  placements,
  used: pieceArea / (usableWidth * layLength),
  offcuts: [
    { x: 2 * size(front).width, y: size(gore).height + size(gusset).height, width: 240, height: 320 },
    { x: gores + 330, y: second + size(gore).height, width: 600, height: 300 },
  ],
}

const needed = (layLength + 50 + 30) / 0.94
const purchase: Purchase = {
  layLength,
  endAllowance: 50,
  squaring: 30,
  testStrip: 0,
  shrinkage: needed - layLength - 80,
  margin: 0,
  needed,
  toBuy: Math.ceil(needed / 100) * 100,
}

const seam = (
  id: string,
  kind: Seam['kind'],
  name: string,
  a: [string, string, string],
  b: [string, string, string],
  length: number,
): Seam => ({
  id,
  kind,
  name: named(name),
  a: [{ piece: a[0], copy: a[1], edge: a[2], from: 0, to: length }],
  b: [{ piece: b[0], copy: b[1], edge: b[2], from: 0, to: length }],
  ratio: 1,
  finish: 'felled',
  length,
})

const seams: Seam[] = [
  seam(
    'shoulderLeft',
    'shoulder',
    'Shoulder, left',
    ['front', 'front', 'shoulderLeft'],
    ['back', 'back', 'shoulderRight'],
    190,
  ),
  seam(
    'shoulderRight',
    'shoulder',
    'Shoulder, right',
    ['front', 'front', 'shoulderRight'],
    ['back', 'back', 'shoulderLeft'],
    190,
  ),
  seam(
    'goreFrontLeft',
    'gore',
    'Front to front left gore',
    ['front', 'front', 'left'],
    ['gore', 'frontLeft', 'bias'],
    700,
  ),
  seam(
    'goreFrontRight',
    'gore',
    'Front to front right gore',
    ['front', 'front', 'right'],
    ['gore', 'frontRight', 'bias'],
    700,
  ),
  seam(
    'goreBackLeft',
    'gore',
    'Back to back left gore',
    ['back', 'back', 'left'],
    ['gore', 'backLeft', 'bias'],
    700,
  ),
  seam(
    'goreBackRight',
    'gore',
    'Back to back right gore',
    ['back', 'back', 'right'],
    ['gore', 'backRight', 'bias'],
    700,
  ),
  seam(
    'gussetLeft',
    'gusset',
    'Gusset to left sleeve',
    ['sleeve', 'left', 'front'],
    ['gusset', 'left', 'side1'],
    100,
  ),
  seam(
    'gussetRight',
    'gusset',
    'Gusset to right sleeve',
    ['sleeve', 'right', 'front'],
    ['gusset', 'right', 'side1'],
    100,
  ),
  seam(
    'armholeLeft',
    'armhole',
    'Left sleeve to body',
    ['sleeve', 'left', 'head'],
    ['front', 'front', 'left'],
    400,
  ),
  seam(
    'armholeRight',
    'armhole',
    'Right sleeve to body',
    ['sleeve', 'right', 'head'],
    ['front', 'front', 'right'],
    400,
  ),
  seam('sideLeft', 'side', 'Side, left', ['gore', 'frontLeft', 'grain'], ['gore', 'backLeft', 'grain'], 850),
  seam(
    'sideRight',
    'side',
    'Side, right',
    ['gore', 'frontRight', 'grain'],
    ['gore', 'backRight', 'grain'],
    850,
  ),
]

const hem = (
  id: string,
  kind: Hem['kind'],
  name: string,
  spans: [string, string, string][],
  length: number,
  depth: number,
  allowance: number,
  seen: boolean,
): Hem => ({
  id,
  kind,
  name: named(name),
  spans: spans.map(([of, copy, edge]) => ({ piece: of, copy, edge, from: 0, to: length })),
  length,
  depth,
  allowance,
  seen,
  fullness: 0,
})

const hems: Hem[] = [
  hem('neck', 'neck', 'Neck and slit', [['front', 'front', 'neck']], 716, 5, 8, true),
  hem('wristLeft', 'wrist', 'Wrist, left', [['sleeve', 'left', 'wrist']], 240, 14, 20, true),
  hem('wristRight', 'wrist', 'Wrist, right', [['sleeve', 'right', 'wrist']], 240, 14, 20, true),
  hem(
    'bottom',
    'bottom',
    'Bottom hem',
    [
      ['front', 'front', 'hem'],
      ['gore', 'frontLeft', 'hem'],
    ],
    2072,
    18,
    HEM,
    true,
  ),
]

const step = (id: string, stage: Step['stage'], name: string, more: Partial<Step> = {}): Step => ({
  id,
  stage,
  name: named(name),
  seams: [],
  hems: [],
  operations: [],
  cautions: [],
  ...more,
})

const steps: Step[] = [
  step('prewash', 'prepare', 'Wash and press the cloth', {
    operations: [
      { operation: 'prewash', quantity: 1 },
      { operation: 'press', quantity: 1 },
    ],
  }),
  step('lay', 'cut', 'Lay out and mark', { operations: [{ operation: 'layOut', quantity: 11 }] }),
  step('cut', 'cut', 'Cut out', { operations: [{ operation: 'cutOut', quantity: 11 }] }),
  step('shoulders', 'sew', 'Join the shoulders', { seams: ['shoulderLeft', 'shoulderRight'] }),
  step('gores', 'sew', 'Set the gores, each at the same level', {
    seams: ['goreFrontLeft', 'goreFrontRight', 'goreBackLeft', 'goreBackRight'],
  }),
  step('gussets', 'sew', 'Set the gussets to the sleeves', { seams: ['gussetLeft', 'gussetRight'] }),
  step('sleeves', 'sew', 'Sleeves to the body, sleeve centre to the shoulder seam', {
    seams: ['armholeLeft', 'armholeRight'],
  }),
  step('sides', 'sew', 'Close the sides, from the gusset corner to the hem', {
    seams: ['sideLeft', 'sideRight'],
  }),
  step('tryOn', 'fit', 'Try on, and let the bias hang a night', {
    operations: [
      { operation: 'tryOn', quantity: 1 },
      { operation: 'hangBias', quantity: 1 },
    ],
  }),
  step('neck', 'hem', 'Hem the neck and its slit', {
    hems: ['neck'],
    operations: [
      { operation: 'clipNeck', quantity: 24 },
      { operation: 'reinforceSlit', quantity: 1 },
    ],
    cautions: [named('Clip no nearer to the line than two threads.')],
  }),
  step('wrists', 'hem', 'Hem the wrists', { hems: ['wristLeft', 'wristRight'] }),
  step('bottom', 'hem', 'Level and hem the bottom', {
    hems: ['bottom'],
    operations: [{ operation: 'levelHem', quantity: 1 }],
  }),
  step('press', 'finish', 'Last pressing', { operations: [{ operation: 'finalPress', quantity: 1 }] }),
]

export const draft: Draft = {
  construction: 'undertunic',
  choices: { length: LENGTH, ease: 120, neck: 'keyhole', gores: 4, gusset: 100, tapered: true },
  pieces,
  seams,
  hems,
  steps,
  fit: [
    { id: 'chest', name: named('Chest'), status: 'good', garment: 1120, needs: 1050, bound: 'least' },
    { id: 'hip', name: named('Hip'), status: 'good', garment: 1316, needs: 1060, bound: 'least' },
    {
      id: 'head',
      name: named('Head through the neck'),
      status: 'fails',
      garment: 552,
      needs: 590,
      bound: 'least',
      mend: named('Lengthen the neck slit by at least 19 mm, or choose a wider neck.'),
    },
    {
      id: 'floor',
      name: named('Hem off the floor'),
      status: 'unchecked',
      bound: 'most',
      missing: ['bustGirth'],
    },
  ],
  cautions: [named('Keep long hems and trailing sleeves away from open fire and off the stairs.')],
  sizes: [
    { id: 'length', name: named('Length from the shoulder'), mm: LENGTH },
    { id: 'chest', name: named('Chest, all round'), mm: 2 * WIDTH },
    { id: 'sweep', name: named('Hem, all round'), mm: 2 * WIDTH + 4 * RADIUS * SPREAD },
    { id: 'sleeve', name: named('Sleeve'), mm: SLEEVE_LENGTH },
  ],
  totals: totalsOf(pieces, seams, hems),
}

const minutes = (mean: number): Minutes => ({ mean, sd: mean * 0.3, p50: mean * 0.96, p80: mean * 1.24 })

const finishPlan: FinishPlan = {
  seams: 'lockstitch301',
  felling: 'felling',
  edges: null,
  hemsSeen: 'hemming',
  hemsHidden: 'lockstitch301',
  neck: 'rolledHem',
}

const stepOf = (id: string): string => steps.find((s) => s.seams.includes(id) || s.hems.includes(id))!.id
const rows: Row[] = [
  ...seams.flatMap((s): Row[] => [
    {
      step: stepOf(s.id),
      of: s.id,
      purpose: 'join',
      stitch: 'lockstitch301',
      length: s.length,
      density: 4,
      thread: s.length * 2.8,
      minutes: minutes(2 + s.length / 120),
    },
    {
      step: stepOf(s.id),
      of: s.id,
      purpose: 'fell',
      stitch: 'felling',
      length: s.length,
      density: 3,
      thread: s.length * 1.8,
      minutes: minutes(3 + s.length / 25),
    },
  ]),
  ...hems.map((h): Row => {
    const stitch = h.kind === 'neck' ? 'rolledHem' : 'hemming'
    return {
      step: stepOf(h.id),
      of: h.id,
      purpose: 'hem',
      stitch,
      length: h.length,
      density: h.kind === 'neck' ? 6 : 4,
      thread: h.length * 1.7,
      minutes: minutes(4 + h.length / 18),
    }
  }),
]

const stepMinutes = (id: string): number => {
  const sewn = rows.filter((row) => row.step === id).reduce((sum, row) => sum + row.minutes.mean, 0)
  return sewn > 0 ? sewn : id === 'cut' ? 40 : id === 'prewash' ? 35 : 20
}

const sewing: Sewing = {
  rows,
  steps: steps.map(({ id, stage }) => ({ step: id, stage, bySkill: {}, total: minutes(stepMinutes(id)) })),
  threads: [
    { work: 'hand', sewn: 21.4, wasted: 6.1, metres: 27.5 },
    { work: 'machine', sewn: 15.3, wasted: 3.2, metres: 18.5 },
  ],
  total: minutes(steps.reduce((sum, { id }) => sum + stepMinutes(id), 0)),
  bySkill: {},
}

/** Amounts no client may read: told from every amount of the quote by their odd pence. */
export const INTERNAL = { hourly: 2313, overhead: 417, cost: 23177, profit: 5823 }

function priceOf(currency: string): Price {
  const of = (minor: number): Money => money(minor, currency)
  const name = named('internal')
  return {
    lines: [
      { kind: 'labour', name, how: named('Hourly rate'), amount: of(INTERNAL.hourly) },
      { kind: 'overhead', name, how: named('Overhead'), amount: of(INTERNAL.overhead) },
      { kind: 'profit', name, how: named('Margin'), amount: of(INTERNAL.profit) },
    ],
    materials: of(7100),
    labour: of(INTERNAL.hourly * 6),
    overhead: of(INTERNAL.overhead * 6),
    cost: of(INTERNAL.cost),
    profit: of(INTERNAL.profit),
    net: of(29000),
    tax: of(5800),
    total: of(34800),
    deposit: of(13920),
    earnedPerHour: of(INTERNAL.hourly),
  }
}

const taken: Record<string, Measure> = {
  stature: { mm: 1680, source: 'taken' },
  bustGirth: { mm: 930, source: 'taken' },
  waistGirth: { mm: 760, source: 'taken' },
  hipGirth: { mm: 1010, source: 'taken' },
  upperArmGirth: { mm: 298, source: 'carried' },
  wristGirth: { mm: 162, source: 'taken' },
  headGirth: { mm: 570, source: 'taken' },
  neckBaseGirth: { mm: 385, source: 'estimated', sd: 12 },
  backWaistLength: { mm: 412, source: 'estimated', sd: 17 },
}
export const measures: Body = { measures: taken as Body['measures'] }

export type FixtureOptions = {
  paper?: 'A4' | 'Letter'
  unit?: WorkroomUnit
  locale?: string
  currency?: string
  customer?: string
  wearers?: readonly string[]
  /** Copies of each garment. */
  quantity?: number
  title?: string
}

/** A complete quote: one line for each wearer. */
export function makeSnapshot(options: FixtureOptions = {}): QuoteSnapshot {
  const currency = options.currency ?? 'EUR'
  const price = priceOf(currency)
  const estimate: Estimate = { draft, lay: theLay, purchase, finishPlan, sewing, price }
  const lines = (options.wearers ?? ['Ἑλένη']).map((name, i): QuoteLine => {
    const quantity = options.quantity ?? i + 1
    const net = money(price.net.minor * quantity, currency)
    const tax = partOf(net, 2000)
    return {
      id: `line-${i + 1}`,
      wearer: { id: `wearer-${i + 1}`, name },
      measurementSet: { id: 'set-1', day: '2026-11-02' },
      body: measures,
      quantity,
      construction: 'undertunic',
      title: named(options.title ?? 'Gored undertunic'),
      description: [
        named('White linen, cut straight with four gores, and gussets under the arms.'),
        named('It reaches to the middle of the calf, with a keyhole neck and sleeves to the wrist.'),
        named('Hidden seams are sewn by machine; every hem that is seen is sewn by hand.'),
      ],
      asked: { length: LENGTH, neck: 'keyhole' },
      cloth: {
        ...cloth,
        name: 'White linen, plain weave, 190 g',
        fibre: 'linen',
        pricePerMetre: money(1850, currency),
      },
      estimate,
      net,
      tax,
      total: addMoney(net, tax),
    }
  })
  const net = sumMoney(
    lines.map((l) => l.net),
    currency,
  )
  const tax = sumMoney(
    lines.map((l) => l.tax),
    currency,
  )
  const total = addMoney(net, tax)
  return {
    version: 1,
    number: 'Q-2026-014',
    day: '2026-11-25',
    validUntil: '2026-12-25',
    letterhead: {
      name: 'The Blue Thimble',
      address: ['3 Weaver’s Yard', 'Old Mill Lane', 'Little Fulling'],
      email: 'sew@bluethimble.example',
      phone: '+00 1234 567890',
      paper: options.paper ?? 'A4',
      locale: options.locale ?? 'en-GB',
      unit: options.unit ?? 'cm',
    },
    customer: {
      id: 'customer-1',
      name: options.customer ?? 'Þórunn',
      address: ['12 Harbour Street', 'Northby'],
    },
    lines,
    net,
    tax: { name: 'VAT', basisPoints: 2000, amount: tax },
    total,
    deposit: partOf(total, 4000),
    terms: [
      'The cloth is bought and washed when the deposit has arrived.',
      'One fitting is included. Changes of shape after cutting are quoted anew.',
      'The balance is due before the garment is sent.',
    ],
  }
}
