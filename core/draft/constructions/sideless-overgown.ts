import { through } from '../../geometry/path.ts'
import { arc, arcOnChord, line, pointAt, reverseSegment } from '../../geometry/segment.ts'
import type { Point } from '../../geometry/types.ts'
import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { LengthUnit } from '../../words/units.ts'
import { hangingCautions } from '../cautions.ts'
import { type Asked, type Choices, readChoices, refuseBoth, settled } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { chestOf, clearsFloor, headPasses, least } from '../fit-trunk.ts'
import { bothHalves, overallSizes } from '../flat.ts'
import { levelsOf } from '../levels.ts'
import { makingOf, work, worthDoing } from '../making.ts'
import { finishedSizes, named, sizeIn } from '../names.ts'
import { assembled } from '../parts/assembly.ts'
import { inLining, liningOf } from '../parts/lining.ts'
import { goreHems } from '../parts/quarter-gores.ts'
import { angleFor, sideGores } from '../parts/side-gores.ts'
import { cutPiece, type Side } from '../pieces.ts'
import { HANDS, PARTS, type Part } from '../places.ts'
import { allowancesFor, hemmed, LEAST_EASE, SHOULDER_HOLD, toFives, WIDEST_QUARTER } from '../practice.ts'
import { edgesOn, seam, totalsOf, turnedHem } from '../seams.ts'
import { type Dip, neckEdge, neckPerimeter, neckWidthFor } from '../shapes/neckline.ts'
import { strideNeed } from '../stride.ts'
import type { Draft, Flat } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  hemLevel: { kind: 'option', options: ['midCalf', 'ankle'], default: 'ankle' },
  length: { kind: 'length', range: [600, 1800] },
  hipEase: { kind: 'length', range: [0, 500], default: 160 },
  openTo: { kind: 'option', options: ['waist', 'highHip', 'hip'], default: 'hip' },
  openingDepth: { kind: 'length', range: [10, 160], default: 60 },
  neckDepth: { kind: 'length', range: [60, 300], default: 130 },
  goreSpread: { kind: 'length', range: [50, 1400] },
  lined: { kind: 'yesNo', default: false },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'open' },
  bottomHem: { kind: 'length', range: [5, 60], default: 12 },
  edgeHem: { kind: 'length', range: [2, 15], default: 5 },
} as const satisfies Choices

/** Of the shoulder that the gown covers, the dip of the neck behind, and the least strip of cloth (common practice). */
const OF_SHOULDER = 0.95
const BACK_DIP = 30
const LEAST_STRIP = 40
const SHORTEST = 150

/**
 * Front and back joined on narrow shoulders, the sides open from there to the hip and gored below: worn over a
 * kirtle in the fourteenth and fifteenth century.
 */
export const sidelessOvergown: Construction = {
  id: 'sidelessOvergown',
  // From memory.
  sources: [
    'E. Østergård: Woven into the Earth',
    'E. Crowfoot, F. Pritchard, K. Staniland: Textiles and Clothing',
  ],
  required: [
    ['bustGirth', 'chestGirth'],
    ['hipGirth'],
    ['headGirth'],
    ['neckBaseGirth'],
    ['shoulderLength'],
    ['cervicalHeight'],
    ['waistHeight'],
  ],
  useful: ['stature', 'hipHeight', 'insideLegHeight', 'kneeHeight', 'calfGirth'],
  choices: CHOICES,
  often: ['hemLevel', 'length', 'openTo', 'openingDepth', 'lined'],
  usualFibre: 'wool',
  finishPlan: 'machineWhereHidden',
  draft,
  describe: (made) => [
    phrase('draft.describe.sideless', { length: sizeIn(made, 'length'), sweep: sizeIn(made, 'sweep') }),
    phrase('draft.describe.sides', { opening: sizeIn(made, 'opening') }),
    ...(made.choices.lined === true ? [phrase('draft.describe.lined')] : []),
  ],
}

type Figures = {
  length: number
  /** Half a panel at the hip, and half the breadth of the shoulders. */
  half: number
  shoulder: number
  /** Down from the shoulder to where the sides are closed. */
  open: number
  depth: number
  neck: { width: number; front: Dip; back: Dip }
  allowances: { narrow: number; wide: number }
  hems: { bottom: number; edge: number }
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(sidelessOvergown, body)
  refuseBoth(asked, 'hemLevel', 'length')
  const chosen = readChoices(CHOICES, asked, unit)
  const measure = (id: Parameters<typeof lengthOf>[1]) => lengthOf(body, id)!
  const levels = levelsOf(body)
  const length = chosen.length ?? toFives(levels.hems[chosen.hemLevel])
  const open = levels[chosen.openTo]
  const radius = length - open
  if (radius < SHORTEST) {
    const params = { length: { mm: length }, least: { mm: Math.ceil(open + SHORTEST) } }
    throw new Refusal(phrase('refusal.draft.noRoomForGores', params), 'length')
  }
  const around = toFives(Math.max(measure('hipGirth'), chestOf(body) * 0.9) + chosen.hipEase)
  const base = measure('neckBaseGirth') / Math.PI
  const reach = base / 2 + OF_SHOULDER * measure('shoulderLength')
  const front: Dip = { form: 'arc', depth: chosen.neckDepth }
  const back: Dip = { form: 'arc', depth: BACK_DIP }
  const toPass = measure('headGirth') + 20
  const widest = 2 * Math.min(reach - LEAST_STRIP, base / 2 + measure('shoulderLength') - SHOULDER_HOLD)
  const f: Figures = {
    ...{
      length,
      half: around / 4,
      shoulder: Math.min(reach, around / 4 - 20),
      open,
      depth: chosen.openingDepth,
    },
    neck: { width: neckWidthFor(toPass, base + 40, widest, front, back), front, back },
    allowances: allowancesFor(chosen.seamFinish),
    hems: { bottom: chosen.bottomHem, edge: chosen.edgeHem },
  }
  if (!hasShoulder(f)) throw new Refusal(phrase('refusal.draft.noShoulder'), 'openingDepth')
  const need = strideNeed(body, levels, length)
  const angle =
    chosen.goreSpread === undefined
      ? Math.max(0.3, angleFor(need, around, radius, WIDEST_QUARTER))
      : chosen.goreSpread / radius
  if (angle > WIDEST_QUARTER)
    throw new Refusal(
      phrase('refusal.draft.goresTooWide', {
        ...{ spread: { mm: Math.floor(WIDEST_QUARTER * radius) } },
        most: { mm: Math.floor(around + 4 * WIDEST_QUARTER * radius) },
      }),
      'goreSpread',
    )
  const finish = chosen.seamFinish
  const panels = PARTS.map((part) => panel(f, part))
  const edge = edgesOn(panels)
  const drawn = (part: Part, hand: 'left' | 'right') =>
    (part === 'front') === (hand === 'left') ? 'Right' : 'Left'
  const gores = sideGores({
    ...{ radius, angle, hem: hemmed(f.hems.bottom), finish, allowance: f.allowances.wide },
    side: ({ part, hand }) => edge(part, `skirt${drawn(part, hand)}`),
  })
  const gown = assembled([
    {
      pieces: panels,
      seams: HANDS.map((hand) =>
        seam({
          ...{ id: `shoulder-${hand}`, kind: 'shoulder', name: named('seam', 'shoulder', hand), finish },
          a: [edge('front', `shoulder${drawn('front', hand)}`)],
          b: [edge('back', `shoulder${drawn('back', hand)}`)],
        }),
      ),
    },
    gores,
    {
      hems: [
        turnedHem({
          ...{ id: 'neck', kind: 'neck', name: named('hem', 'neck'), depth: f.hems.edge },
          spans: PARTS.map((part) => edge(part, 'neck')),
        }),
        ...HANDS.map((hand) =>
          turnedHem({
            ...{
              id: `opening-${hand}`,
              kind: 'edge',
              name: named('hem', 'sideOpening', hand),
              depth: f.hems.edge,
            },
            spans: PARTS.map((part) => edge(part, `open${drawn(part, hand)}`)),
          }),
        ),
        turnedHem({
          ...{ id: 'bottom', kind: 'bottom', name: named('hem', 'bottom'), depth: f.hems.bottom },
          spans: [...PARTS.map((part) => edge(part, 'hem')), ...goreHems(gores)],
          fullness: (2 * f.hems.bottom) / radius,
        }),
      ],
    },
  ])
  const all = assembled([gown, ...(chosen.lined ? [liningOf(gown, ['front', 'back', 'gore'])] : [])])
  const { step, sewing, hemming, before, pressSeams, after } = makingOf(all.pieces, all.seams, all.hems)
  const sweep = around + 4 * radius * angle
  const outer = (kinds: readonly string[]) => sewing((one) => !inLining(one) && kinds.includes(one.kind))
  const perimeter = neckPerimeter(f.neck.width, front, back)
  return assertSewable({
    construction: sidelessOvergown.id,
    choices: settled({ ...chosen, length, goreSpread: radius * angle }),
    ...all,
    steps: worthDoing([
      ...before,
      step('shoulders', 'sew', [], outer(['shoulder'])),
      step('gores', 'sew', [], outer(['gore'])),
      step('sideSeams', 'sew', [], outer(['goreToGore'])),
      step('sewLining', 'sew', [], sewing(inLining)),
      pressSeams,
      step('tryOn', 'fit', [work('tryOn', 1)], { seams: [], hems: [] }, ['pins']),
      step(
        'neck',
        'hem',
        [work('clipNeck', perimeter / 1000)],
        hemming(({ kind }) => kind === 'neck'),
      ),
      step(
        'edges',
        'hem',
        [],
        hemming(({ kind }) => kind === 'edge'),
      ),
      step('level', 'fit', [work('hangBias', 1), work('levelHem', sweep / 1000)]),
      step(
        'bottom',
        'hem',
        [],
        hemming(({ kind }) => kind === 'bottom'),
      ),
      step(
        'fellLining',
        'hem',
        [],
        hemming(({ kind }) => kind === 'lining'),
      ),
      ...after,
    ]),
    fit: [
      least(
        body,
        'hip',
        around + 4 * angle * Math.max(0, levels.hip - open),
        () => measure('hipGirth') + LEAST_EASE,
        'hipEase',
      ),
      headPasses(body, perimeter, 'neckDepth'),
      least(body, 'stride', sweep, () => need, 'goreSpread', ['calfGirth']),
      clearsFloor(body, levels, length, 'length'),
    ],
    cautions: hangingCautions(gown.hems, levels.cervicalHeight - length),
    notions: [],
    flat: flatGown(f, radius, angle),
    sizes: finishedSizes({ length, sweep, opening: open }),
    totals: totalsOf(all.pieces, all.seams, all.hems),
  })
}

const at = (x: number, y: number): Point => ({ x, y })

/** From the hip up to the shoulder at the drawn right, hollowed towards the middle. */
function openingEdge({ half, shoulder, open, depth, length }: Figures) {
  return reverseSegment(arcOnChord(at(shoulder, length), at(half, length - open), depth))
}

/** Whether the hollowed sides leave cloth beside the neck, and below it across the front. */
function hasShoulder(f: Figures): boolean {
  const edge = openingEdge(f)
  const [shoulder, dip] = [f.shoulder - f.neck.width / 2, f.length - Math.max(f.neck.front.depth, BACK_DIP)]
  const points = Array.from({ length: 41 }, (_, i) => pointAt(edge, i / 40))
  const clear = points.every(({ x, y }) => x >= (y > dip ? f.neck.width / 2 : 0) + LEAST_STRIP / 2)
  return shoulder >= LEAST_STRIP / 2 && clear
}

function panel(f: Figures, part: Part) {
  const { half, shoulder, open, length, neck, allowances, hems } = f
  const right = openingEdge(f)
  const [n, y] = [neck.width / 2, length - open]
  // Down the other side it is the same arc, standing to the left of the way.
  const left = reverseSegment(arcOnChord(at(-half, y), at(-shoulder, length), f.depth))
  const seamAdded = { allowance: part === 'back' ? allowances.wide : allowances.narrow }
  const sides: Side[] = [
    { id: 'hem', path: through([at(-half, 0), at(half, 0)]), ...hemmed(hems.bottom) },
    { id: 'skirtRight', path: through([at(half, 0), at(half, y)]), allowance: allowances.narrow },
    { id: 'openRight', path: [right], ...hemmed(hems.edge) },
    { id: 'shoulderRight', path: [line(at(shoulder, length), at(n, length))], ...seamAdded },
    { id: 'neck', path: neckEdge(neck.width, neck[part], length), ...hemmed(hems.edge) },
    { id: 'shoulderLeft', path: [line(at(-n, length), at(-shoulder, length))], ...seamAdded },
    { id: 'openLeft', path: [left], ...hemmed(hems.edge) },
    { id: 'skirtLeft', path: through([at(-half, y), at(-half, 0)]), allowance: allowances.narrow },
  ]
  return cutPiece(part, { sides }, { keptWhole: ['neck'], sizes: { width: 2 * half, length } })
}

/** From the front, the gores folded in the side seams. */
function flatGown(f: Figures, radius: number, angle: number): Flat {
  const { half, shoulder, open, length, neck } = f
  const start = at(half, length - open)
  const out = arc(at(half, 0), start, angle)
  const outer = [
    line(at(neck.width / 2, length), at(shoulder, length)),
    reverseSegment(openingEdge(f)),
    line(start, out.to),
    arc(out.to, start, -angle),
    line(at(half, 0), at(0, 0)),
  ]
  const edges = [...bothHalves(outer), neckEdge(neck.width, neck.front, length)]
  return {
    edges,
    seams: bothHalves([line(start, at(half, start.y - radius))]),
    behind: [neckEdge(neck.width, neck.back, length)],
    sizes: overallSizes(edges, { top: length, bottom: 0, half: out.to.x }),
  }
}
