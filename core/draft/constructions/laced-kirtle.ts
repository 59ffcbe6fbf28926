import { through } from '../../geometry/path.ts'
import { arc, line } from '../../geometry/segment.ts'
import type { Path } from '../../geometry/types.ts'
import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { hangingCautions } from '../cautions.ts'
import { type Asked, readChoices, refuseBoth, settled } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { chestOf, clearsFloor, least, most } from '../fit-trunk.ts'
import { bothHalves, flatSize, overallSizes } from '../flat.ts'
import { laceLength } from '../lacing.ts'
import { makingOf, work, worthDoing } from '../making.ts'
import { finishedSizes, sizeIn } from '../names.ts'
import { inLining } from '../parts/lining.ts'
import { THUMB } from '../practice.ts'
import { totalsOf } from '../seams.ts'
import { strideNeed } from '../stride.ts'
import type { Draft, Flat } from '../types.ts'
import { assertSewable } from '../verify.ts'
import { CHOICES } from './laced-kirtle/choices.ts'
import { type Figures, figuresOf, girthAt, quarterEdges } from './laced-kirtle/figures.ts'
import { sewnKirtle } from './laced-kirtle/sewn.ts'

/**
 * A close gown of four panels shaped to bust, waist and hip, gored below, laced in front or at the side with one lace
 * in a spiral: it bears the bust without anything beneath, and is never cut without a toile.
 */
export const lacedKirtle: Construction = {
  id: 'lacedKirtle',
  // From memory.
  sources: [
    'E. Crowfoot, F. Pritchard, K. Staniland: Textiles and Clothing c.1150–c.1450',
    'E. Østergård: Woven into the Earth',
  ],
  required: [
    ['bustGirth', 'chestGirth'],
    ['waistGirth'],
    ['hipGirth'],
    ['neckBaseGirth'],
    ['shoulderLength'],
    ['armLength', 'cervicalToWristLength'],
    ['upperArmGirth'],
    ['handGirth'],
    ['cervicalHeight'],
    ['waistHeight'],
  ],
  useful: [
    ...(['underbustGirth', 'stature', 'hipHeight', 'insideLegHeight', 'kneeHeight'] as const),
    ...(['calfGirth', 'forearmGirth', 'elbowGirth'] as const),
  ],
  choices: CHOICES,
  often: ['hemLevel', 'lacedAt', 'kirtleSleeve', 'neckDepth', 'lined', 'goresAt'],
  usualFibre: 'wool',
  finishPlan: 'allByHand',
  toile: true,
  draft,
  describe: (made) => [
    phrase('draft.describe.kirtle', {
      length: sizeIn(made, 'length'),
      chest: sizeIn(made, 'chest'),
      sweep: sizeIn(made, 'sweep'),
    }),
    phrase(`draft.describe.laced.${made.choices.lacedAt as 'front' | 'side'}`, {
      opening: sizeIn(made, 'opening'),
    }),
    phrase(`draft.describe.kirtleSleeve.${made.choices.kirtleSleeve as 'none' | 'elbow' | 'wrist'}`),
    ...(made.choices.lined === true ? [phrase('draft.describe.bodiceLined')] : []),
  ],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(lacedKirtle, body)
  refuseBoth(asked, 'hemLevel', 'length')
  const chosen = readChoices(CHOICES, asked, unit)
  const f = figuresOf(body, chosen)
  const { pieces, seams, hems } = sewnKirtle(f)
  const { step, sewing, hemming, before, pressSeams, after } = makingOf(pieces, seams, hems)
  const outer = (...kinds: string[]) => sewing((one) => !inLining(one) && kinds.includes(one.kind))
  const lace = laceLength(f.lacing)
  return assertSewable({
    construction: lacedKirtle.id,
    choices: settled({
      ...{ ...chosen, length: f.length, openingLength: f.opening, goreSpread: f.gore.radius * f.gore.angle },
      ...{ wristWidth: f.sleeve?.wrist, bottomHem: f.hems.bottom },
    }),
    ...{ pieces, seams, hems },
    steps: worthDoing([
      step('toile', 'prepare', [work('toile', 1), work('fitToile', 1)], { seams: [], hems: [] }, ['pins']),
      ...before,
      step('shoulders', 'sew', [], outer('shoulder')),
      step('centres', 'sew', [], outer('centre')),
      step('sideSeams', 'sew', [], outer('side')),
      step('gores', 'sew', [], outer('gore')),
      step('sleeveSeams', 'sew', [], outer('underarm')),
      step(
        'interline',
        'sew',
        [],
        hemming(({ kind }) => kind === 'tacked'),
      ),
      step('sewLining', 'sew', [], sewing(inLining)),
      pressSeams,
      step('tryOn', 'fit', [work('tryOn', 2)], { seams: [], hems: [] }, ['pins']),
      step('armholes', 'sew', [], outer('armhole')),
      step(
        'neck',
        'hem',
        [],
        hemming(({ kind }) => kind === 'neck' || kind === 'slit'),
      ),
      step(
        'fellLining',
        'hem',
        [],
        hemming(({ kind }) => kind === 'lining'),
      ),
      step(
        'wrists',
        'hem',
        [],
        hemming(({ kind }) => kind === 'wrist' || kind === 'edge'),
      ),
      step('eyelets', 'finish', [work('workEyelet', f.lacing.eyelets), work('threadLace', 1)]),
      step('level', 'fit', [work('hangBias', 1), work('levelHem', f.sweep / 1000)]),
      step(
        'bottom',
        'hem',
        [],
        hemming(({ kind }) => kind === 'bottom'),
      ),
      ...after,
    ]),
    fit: fitReport(f, body),
    cautions: [
      phrase('draft.caution.toileFirst'),
      ...hangingCautions(hems, f.levels.cervicalHeight - f.length),
    ],
    notions: [{ notion: 'lace', mm: lace }],
    flat: flatKirtle(f),
    sizes: finishedSizes({
      ...{
        length: f.length,
        chest: girthAt(f, 'scye', f.gap, f.lacedAt),
        waist: girthAt(f, 'waist', f.gap, f.lacedAt),
      },
      ...{ sweep: f.sweep, opening: f.opening, lace },
    }),
    totals: totalsOf(pieces, seams, hems),
  })
}

/** Laced garments sit on the body: a little ease at the bust, and no more. mm. */
const MOST_BUST_EASE = 10

function fitReport(f: Figures, body: Body) {
  const { levels, length, sleeve } = f
  const measure = (id: Parameters<typeof lengthOf>[1]) => lengthOf(body, id)!
  const round = (id: 'scye' | 'waist' | 'hip') => girthAt(f, id, f.gap, f.lacedAt)
  return [
    // Bust and waist are drafted with the body's own girth at least, so only too much of it can be wrong.
    most(body, 'supports', round('scye'), () => chestOf(body) + MOST_BUST_EASE, 'bustEase'),
    least(body, 'hip', round('hip') - f.gap, () => measure('hipGirth') + 20, 'hipEase'),
    // Below its opening the gown is closed: what is there must pass the chest, the arms first.
    least(body, 'goesOver', narrowestBelow(f), () => chestOf(body), 'openingLength'),
    ...(sleeve === undefined
      ? []
      : [
          least(body, 'biceps', sleeve.head, () => measure('upperArmGirth') + 25, 'armEase'),
          least(body, 'hand', sleeve.wrist, () => measure('handGirth') + THUMB, 'wristWidth'),
        ]),
    least(body, 'stride', f.sweep, () => strideNeed(body, levels, length), 'goreSpread', ['calfGirth']),
    clearsFloor(body, levels, length, 'length'),
  ]
}

/** The least closed girth at or below the end of the opening, the gap not counted. */
function narrowestBelow(f: Figures): number {
  const end = (f.lacedAt === 'front' ? f.neck.front : f.side[0]!.level) + f.opening
  const cut = f.lacedAt === 'front' ? f.gap : 0
  const below = f.side.filter(({ level }) => level >= end)
  const above = f.side.filter(({ level }) => level < end).at(-1)
  const [next] = below
  const atEnd =
    above === undefined || next === undefined
      ? []
      : [above.width + ((end - above.level) / (next.level - above.level)) * (next.width - above.width)]
  return 4 * Math.min(...atEnd, ...below.map(({ width }) => width)) - cut
}

/** From the front, sleeves spread, side gores folded along their middle. */
function flatKirtle(f: Figures): Flat {
  const {
    hem: _,
    skirt: __,
    centre: ___,
    neck,
    side,
    arm,
    shoulder,
  } = quarterEdges(f, 'front', false) as Record<string, Path>
  const hip = side![0]!.from
  const out = arc({ x: hip.x, y: 0 }, hip, f.gore.angle / 2)
  const at = (x: number, y: number) => ({ x, y })
  const high = arm!.at(-1)!.to
  const low = arm![0]!.from
  const spread: Path =
    f.sleeve === undefined
      ? arm!
      : through([
          low,
          at(high.x + f.sleeve.length + f.sleeve.capHeight, high.y - f.sleeve.wrist / 2),
          at(high.x + f.sleeve.length + f.sleeve.capHeight, high.y),
          high,
        ])
  const outer: Path = [
    line(at(0, 0), at(hip.x, 0)),
    arc(at(hip.x, 0), hip, f.gore.angle / 2),
    line(out.to, hip),
    ...side!,
    ...spread,
    ...shoulder!,
  ]
  const edges = [...bothHalves(outer), ...bothHalves(neck!)]
  const [top, bottom] = [f.length - f.neck.front, f.length - f.neck.front - f.opening]
  const laces =
    f.lacedAt === 'front'
      ? [-1, 1].map((way): Path => [line(at((way * f.gap) / 2, top), at((way * f.gap) / 2, bottom))])
      : []
  const middle = f.gore.radius * Math.sin(f.gore.angle / 2)
  return {
    edges,
    seams: [
      ...(f.sleeve === undefined ? [] : bothHalves(arm!)),
      ...bothHalves([line(hip, at(hip.x, 0))]),
      ...(f.gore.count === 4 ? bothHalves([line(at(0, hip.y), at(middle, 0))]) : []),
      ...laces,
    ],
    behind: [],
    sizes: [
      ...overallSizes(edges, { top: f.length, bottom: 0, half: out.to.x }),
      flatSize(
        at(-f.side.find(({ id }) => id === 'waist')!.width, f.length - f.levels.waist),
        at(f.side.find(({ id }) => id === 'waist')!.width, f.length - f.levels.waist),
      ),
    ],
  }
}
