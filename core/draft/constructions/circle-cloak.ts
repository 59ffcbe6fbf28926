import { arc, line } from '../../geometry/segment.ts'
import type { Path, Point } from '../../geometry/types.ts'
import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { LengthUnit } from '../../words/units.ts'
import { hangingCautions } from '../cautions.ts'
import { type Asked, type Choices, readChoices, refuseBoth, settled } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { cordsUnsafe } from '../cords.ts'
import { clearsFloor, least, shouldersOf } from '../fit-trunk.ts'
import { overallSizes } from '../flat.ts'
import { levelsOf } from '../levels.ts'
import { makingOf, work, worthDoing } from '../making.ts'
import { finishedSizes, named, pair, sizeIn } from '../names.ts'
import { type Assembly, assembled } from '../parts/assembly.ts'
import { bandPiece, bandSewn } from '../parts/band.ts'
import { inLining, liningOf } from '../parts/lining.ts'
import { cutPiece } from '../pieces.ts'
import { HANDS } from '../places.ts'
import { allowancesFor, hemmed, TAKEN_UP, toFives } from '../practice.ts'
import { chainLength, edgesOn, hem, seam, takenUpSeam, totalsOf, turnedHem } from '../seams.ts'
import { rectangle } from '../shapes/rectangle.ts'
import { quarterRing } from '../shapes/round.ts'
import type { Copy, Draft, Flat, Notion, SeamFinish, Span } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  circle: { kind: 'option', options: ['half', 'threeQuarter', 'full'], default: 'half' },
  hemLevel: { kind: 'option', options: ['knee', 'midCalf', 'ankle'], default: 'midCalf' },
  cloakLength: { kind: 'length', range: [300, 1600] },
  neckFit: { kind: 'option', options: ['pleated', 'plain'] },
  bandDepth: { kind: 'length', range: [15, 80], default: 30 },
  hooded: { kind: 'yesNo', default: false },
  hoodWidth: { kind: 'length', range: [200, 450] },
  hoodHeight: { kind: 'length', range: [250, 500] },
  cloakClosing: { kind: 'option', options: ['clasp', 'ties', 'none'], default: 'clasp' },
  lined: { kind: 'yesNo', default: false },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'felled' },
  bottomHem: { kind: 'length', range: [4, 40], default: 12 },
  frontHem: { kind: 'length', range: [5, 60], default: 20 },
} as const satisfies Choices

/** The band beyond the neck base, and round the shoulders beyond them: by default and at least (common practice), mm. */
const BAND_EASE = 20
const SHOULDER_ROOM = 60
const LEAST_ROOM = 20
/** Rows that hold the neck, and tape beyond the band to tie. */
const ROWS = 2
const TO_TIE = 400
/** A hood is so deep from face to back, and so high, ÷ head girth (common practice). */
const HOOD = { width: 0.52, height: 0.66 }
const LEAST_HOOD = 0.48

const QUARTERS_IN = { half: 2, threeQuarter: 3, full: 4 } as const

/**
 * Half, three quarters or the whole of a circle, in quarters joined on the straight grain, the fronts on the warp;
 * pleated into a band at the neck where its own edge is longer.
 */
export const circleCloak: Construction = {
  id: 'circleCloak',
  // From memory.
  sources: [
    'E. Crowfoot, F. Pritchard, K. Staniland: Textiles and Clothing c.1150–c.1450',
    'D. K. Burnham: Cut My Cote',
  ],
  required: [
    ['neckBaseGirth'],
    ['shoulderLength'],
    ['bustGirth', 'chestGirth'],
    ['cervicalHeight'],
    ['waistHeight'],
  ],
  useful: ['kneeHeight', 'headGirth', 'stature'],
  choices: CHOICES,
  often: ['circle', 'hemLevel', 'cloakLength', 'hooded', 'lined', 'cloakClosing'],
  usualFibre: 'wool',
  finishPlan: 'machineWhereHidden',
  draft,
  describe: (made) => [
    phrase(`draft.describe.cloak.${made.choices.circle as Circle}`, {
      ...{ length: sizeIn(made, 'neckToHem'), sweep: sizeIn(made, 'sweep') },
    }),
    phrase(`draft.describe.cloakNeck.${made.choices.neckFit as 'pleated' | 'plain'}`),
    ...(made.choices.hooded === true ? [phrase('draft.describe.hooded')] : []),
    ...(made.choices.lined === true ? [phrase('draft.describe.lined')] : []),
  ],
}

type Circle = keyof typeof QUARTERS_IN
type Figures = {
  quarters: number
  inner: number
  length: number
  band: { length: number; depth: number }
  hood: { width: number; height: number } | undefined
  finish: SeamFinish
  hems: { bottom: number; front: number }
  tie: number
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(circleCloak, body)
  refuseBoth(asked, 'hemLevel', 'cloakLength')
  const chosen = readChoices(CHOICES, asked, unit)
  const base = lengthOf(body, 'neckBaseGirth')!
  const shoulder = lengthOf(body, 'shoulderLength')!
  const head = lengthOf(body, 'headGirth')
  const levels = levelsOf(body)
  const length = chosen.cloakLength ?? toFives(levels.hems[chosen.hemLevel])
  const quarters = QUARTERS_IN[chosen.circle]
  const angle = (quarters * Math.PI) / 2
  const around = toFives(base + BAND_EASE)
  const shoulders = shouldersOf(body)
  /** Where the edge itself is the neck's length, and where the cloth meets in front over the shoulders. */
  const [close, meeting] = [around / angle, (shoulders + SHOULDER_ROOM) / angle - shoulder]
  const pleated = (chosen.neckFit ?? (meeting > close ? 'pleated' : 'plain')) === 'pleated'
  const inner = pleated ? Math.max(close, meeting) : close
  if (inner < LEAST_NECK) throw new Refusal(phrase('refusal.draft.neckTooSmall'), 'circle')
  const hooded = chosen.hooded
  if (hooded) refuseMissing({ required: [['headGirth']] }, body)
  const f: Figures = {
    ...{ quarters, inner, length, band: { length: around, depth: chosen.bandDepth } },
    hood: hooded
      ? {
          width: chosen.hoodWidth ?? toFives(head! * HOOD.width),
          height: chosen.hoodHeight ?? toFives(head! * HOOD.height),
        }
      : undefined,
    ...{ finish: chosen.seamFinish, hems: { bottom: chosen.bottomHem, front: chosen.frontHem }, tie: 0 },
  }
  const cloak = sewn(f)
  const lining = chosen.lined ? [liningOf(cloak, ['frontQuarter', 'backQuarter', 'cloakHood'])] : []
  const all = assembled([cloak, ...lining])
  const sweep = angle * (inner + length)
  const ties = chosen.cloakClosing === 'ties'
  const notions: Notion[] =
    chosen.cloakClosing === 'none'
      ? []
      : [ties ? { notion: 'tape', mm: 2 * TO_TIE } : { notion: 'clasp', count: 1 }]
  const { step, sewing, hemming, before, pressSeams, after } = makingOf(all.pieces, all.seams, all.hems)
  const outer = (pick: (id: string) => boolean) => sewing((one) => !inLining(one) && pick(one.id))
  const neckMetres = around / 1000
  return assertSewable({
    construction: circleCloak.id,
    choices: settled({
      ...chosen,
      ...{ cloakLength: length, neckFit: pleated ? 'pleated' : 'plain' },
      ...{ hoodWidth: f.hood?.width, hoodHeight: f.hood?.height },
    }),
    ...all,
    steps: worthDoing([
      ...before,
      step(
        'quarters',
        'sew',
        [],
        outer((id) => id.startsWith('quarter')),
      ),
      step(
        'hoodSeams',
        'sew',
        [],
        outer((id) => id.startsWith('hood-')),
      ),
      step('sewLining', 'sew', [], sewing(inLining)),
      pressSeams,
      step(
        'neckband',
        'sew',
        [
          ...(pleated || hooded ? [work('setGathers', neckMetres)] : []),
          ...(ties ? [work('sewTape', 2)] : chosen.cloakClosing === 'clasp' ? [work('sewHook', 1)] : []),
        ],
        {
          seams: outer((id) => id.startsWith('neckband') || id === 'set-hood').seams,
          hems: hemming(({ id, kind }) => kind === 'band' || id === 'band-ends').hems,
        },
      ),
      step('level', 'fit', [work('hangBias', 1), work('levelHem', sweep / 1000)]),
      step('tryOn', 'fit', [work('tryOn', 1)], { seams: [], hems: [] }, ['pins']),
      step(
        'edges',
        'hem',
        [],
        hemming(({ id, kind }) => kind !== 'band' && id !== 'band-ends' && kind !== 'lining'),
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
      least(body, 'cloakShoulders', angle * (inner + shoulder), () => shoulders + LEAST_ROOM, 'neckFit'),
      ...(f.hood === undefined
        ? []
        : [
            least(body, 'hoodAround', 2 * f.hood.width, () => head! * 2 * LEAST_HOOD, 'hoodWidth', [
              'headGirth',
            ]),
          ]),
      clearsFloor(body, levels, length, 'cloakLength'),
    ],
    cautions: [
      ...(angle * (inner + shoulder) < shoulders + LEAST_ROOM
        ? [
            phrase('draft.caution.frontGap', {
              gap: { mm: Math.round(shoulders - angle * (inner + shoulder)) },
            }),
          ]
        : []),
      ...(ties && cordsUnsafe(body) ? [phrase('draft.caution.cloakTies')] : []),
      phrase('draft.caution.weakClosing'),
      ...hangingCautions(cloak.hems, levels.cervicalHeight - length),
    ],
    notions,
    flat: flatCloak(f),
    sizes: finishedSizes({ neckToHem: length, sweep, neckBand: around }),
    totals: totalsOf(all.pieces, all.seams, all.hems),
  })
}

const LEAST_NECK = 20

/** Quarters from the wearer's left front round the back to her right front. */
function sewn({ quarters, inner, length, band, hood, finish, hems }: Figures): Assembly {
  const { wide } = allowancesFor(finish)
  const ring = quarterRing(inner, inner + length)
  const piece = (id: string, copies: Copy[], warp: { allowance: number; turned?: boolean }) =>
    cutPiece(
      id,
      {
        sides: [
          { id: 'weft', path: ring.weft, allowance: wide },
          { id: 'hem', path: ring.hem, ...hemmed(hems.bottom) },
          { id: 'warp', path: ring.warp, ...warp },
          { id: 'neck', path: ring.neck, allowance: TAKEN_UP },
        ],
      },
      { copies, joinsFreely: true, sizes: { radius: inner, length } },
    )
  const backs: Copy[] =
    quarters === 3
      ? [{ id: 'back', name: named('piece', 'backQuarter'), mirrored: false }]
      : pair('backQuarter', true)
  const pieces = [
    piece('frontQuarter', pair('frontQuarter', true), hemmed(hems.front)),
    ...(quarters > 2 ? [piece('backQuarter', backs, { allowance: wide })] : []),
    ...(hood === undefined
      ? [bandPiece({ ...band, tie: 0 }, 'neckband')]
      : [
          rectangle('neckband', { width: band.depth, length: band.length, added: { allowance: 10 } }),
          rectangle(
            'cloakHood',
            {
              ...{ width: hood.width, length: hood.height },
              added: {
                ...{ bottom: { allowance: TAKEN_UP }, right: { allowance: wide }, top: { allowance: wide } },
                left: hemmed(hems.front),
              },
            },
            { copies: pair('cloakHood', true) },
          ),
        ]),
  ]
  const edge = edgesOn(pieces)
  const front = (id: string, hand: string) => edge('frontQuarter', id, hand)
  const join = (id: string, a: Span, b: Span) =>
    seam({
      ...{ id: `quarter-${id}`, kind: 'centre', name: named('seam', 'quarter', id), finish },
      a: [a],
      b: [b],
    })
  const joins = {
    2: () => [join('back', front('weft', 'left'), front('weft', 'right'))],
    3: () => [
      join('left', front('weft', 'left'), edge('backQuarter', 'weft', 'back')),
      join('right', front('weft', 'right'), edge('backQuarter', 'warp', 'back')),
    ],
    4: () => [
      ...HANDS.map((hand) => join(hand, front('weft', hand), edge('backQuarter', 'warp', hand))),
      join('back', edge('backQuarter', 'weft', 'left'), edge('backQuarter', 'weft', 'right')),
    ],
  }[quarters as 2 | 3 | 4]()
  const copies = (id: string) => [
    front(id, 'left'),
    ...(quarters > 2 ? backs.map((copy) => edge('backQuarter', id, copy.id)) : []),
    front(id, 'right'),
  ]
  const neckline = copies('neck')
  const collar =
    hood === undefined
      ? bandSewn({ ...band, tie: 0 }, neckline, { gathers: ROWS }, { piece: 'neckband' })
      : hoodSewn(edge, neckline, finish)
  return {
    pieces,
    seams: [...joins, ...collar.seams],
    hems: [
      ...collar.hems,
      turnedHem({
        ...{ id: 'fronts', kind: 'edge', name: named('hem', 'fronts'), depth: hems.front },
        spans: HANDS.map((hand) => front('warp', hand)),
      }),
      turnedHem({
        ...{ id: 'bottom', kind: 'bottom', name: named('hem', 'bottom'), depth: hems.bottom },
        ...{ spans: copies('hem'), fullness: (2 * hems.bottom) / (inner + length) },
      }),
    ],
  }
}

/** A hood of two sides on a single band: cloak below, hood above, both taken up where they are longer. */
function hoodSewn(edge: ReturnType<typeof edgesOn>, neckline: Span[], finish: SeamFinish) {
  const shared = { kind: 'band', finish: 'faced' } as const
  const lower = HANDS.map((hand) => edge('cloakHood', 'bottom', hand))
  const onto = (id: string, code: string, a: Span[], b: Span[]) => {
    const parts = { id, ...shared, name: named('seam', code), a, b }
    const even = Math.abs(chainLength(a) - chainLength(b)) < 1e-6
    return even ? seam(parts) : takenUpSeam(parts, { gathers: ROWS })
  }
  const joined = (id: 'top' | 'right', code: string) =>
    seam({
      ...{ id: `hood-${id}`, kind: 'centre', name: named('seam', code), finish },
      a: [edge('cloakHood', id, 'left')],
      b: [edge('cloakHood', id, 'right')],
    })
  return {
    seams: [
      ...[joined('top', 'hood.crown'), joined('right', 'hood.back')],
      onto('neckband-set', 'band', neckline, [edge('neckband', 'right')]),
      onto('set-hood', 'hoodToBand', lower, [edge('neckband', 'left')]),
    ],
    hems: [
      hem({
        ...{ id: 'band-ends', kind: 'edge', name: named('hem', 'bandEnds'), seen: true, fullness: 0 },
        ...{ depth: 10, allowance: 10, spans: [edge('neckband', 'bottom'), edge('neckband', 'top')] },
      }),
      turnedHem({
        ...{ id: 'face', kind: 'edge', name: named('hem', 'face'), depth: 20 },
        spans: HANDS.map((hand) => edge('cloakHood', 'left', hand)),
      }),
    ],
  }
}

/** Spread out, the neck at the top, its joins drawn. */
function flatCloak({ quarters, inner, length }: Figures): Flat {
  const outer = inner + length
  const angle = (quarters * Math.PI) / 2
  const on = (radius: number, a: number): Point => ({ x: radius * Math.sin(a), y: -radius * Math.cos(a) })
  const from = -angle / 2
  const joint = (a: number): Path => [line(on(inner, a), on(outer, a))]
  const edges: Path[] = [
    [arc(on(outer, from), { x: 0, y: 0 }, angle)],
    [arc(on(inner, from), { x: 0, y: 0 }, angle)],
    ...(quarters === 4 ? [joint(Math.PI)] : [joint(from), joint(from + angle)]),
  ]
  const half = quarters === 2 ? outer : outer * Math.sin(Math.min(Math.PI / 2, angle / 2))
  return {
    view: 'spread',
    edges,
    seams: Array.from({ length: quarters - 1 }, (_, i) => joint(from + ((i + 1) * Math.PI) / 2)),
    behind: [],
    sizes: [
      ...overallSizes(edges, { top: quarters === 2 ? 0 : outer, bottom: -outer, half }),
      { from: on(inner, 0), to: on(outer, 0), mm: length },
    ],
  }
}
