import { moveSegment } from '../../../geometry/segment.ts'
import { named, pair } from '../../names.ts'
import { type Assembly, assembled } from '../../parts/assembly.ts'
import { interliningOf } from '../../parts/lining.ts'
import { cutPiece, type Side } from '../../pieces.ts'
import { HANDS, type Hand, PARTS, type Part } from '../../places.ts'
import { allowancesFor, hemmed } from '../../practice.ts'
import { edgesOn, hem, part as partOf, seam, turnedHem } from '../../seams.ts'
import { symmetricalGore } from '../../shapes/gore.ts'
import type { Hem, Seam, SeamFinish, Span } from '../../types.ts'
import { type Figures, quarterEdges } from './figures.ts'

const PANEL = { front: 'kirtleFront', back: 'kirtleBack' } as const
const LINING = { front: 'liningFront', back: 'liningBack' } as const
const TURNED_IN = 10

/** Four quarters and their gores, sleeves if there are any, the bodice’s lining, and what stiffens that. */
export function sewnKirtle(f: Figures): Assembly {
  const lined = f.chosen.lined ? [lining(f)] : []
  const stiffened = f.chosen.interlined ? lined.map((one) => interliningOf(one, Object.values(LINING))) : []
  return assembled([bodyOf(f), ...(f.sleeve === undefined ? [] : [sleeves(f)]), ...stiffened, ...lined])
}

function bodyOf(f: Figures): Assembly {
  const finish = f.chosen.seamFinish
  const { wide, narrow } = allowancesFor(finish)
  const turned = hemmed(f.chosen.edgeHem)
  const panels = PARTS.map((part) => {
    const added: Record<string, Pick<Side, 'allowance'> & { turned?: boolean }> = {
      ...{
        hem: hemmed(f.hems.bottom),
        neck: turned,
        arm: f.sleeve === undefined ? turned : { allowance: narrow },
      },
    }
    const sides = Object.entries(quarterEdges(f, part, false)).map(([id, path]) => ({
      ...{ id, path },
      ...(added[id] ?? { allowance: part === 'back' ? wide : narrow }),
    }))
    const sizes = { width: f.hipWidth, length: f.length }
    return cutPiece(
      PANEL[part],
      { sides },
      { copies: pair(PANEL[part], true), keptWhole: ['neck', 'arm'], sizes },
    )
  })
  const gore = symmetricalGore(f.gore.radius, f.gore.angle)
  const middle = f.gore.count === 4
  const places = [...HANDS, ...(middle ? PARTS : [])]
  const gores = cutPiece(
    'gore',
    {
      sides: [
        { id: 'hem', path: gore.hem, ...hemmed(f.hems.bottom) },
        { id: 'right', path: gore.right, allowance: wide },
        { id: 'left', path: gore.left, allowance: wide },
      ],
    },
    {
      copies: places.map((place) => ({ id: place, name: named('piece', 'gore', place), mirrored: false })),
      sizes: { longEdge: f.gore.radius, hemArc: f.gore.radius * f.gore.angle },
    },
  )
  const pieces = [...panels, gores]
  const edge = edgesOn(pieces)
  const of = (part: Part, id: string, hand: Hand) => edge(PANEL[part], id, hand)
  const sewn = (id: string, kind: Seam['kind'], code: string, place: string, a: Span[], b: Span[]) =>
    seam({ id, kind, name: named('seam', code, place), finish, a, b })
  // The middle runs down from the neck: opening, seam, gore.
  const down = (part: Part, hand: Hand, from: number, to: number) =>
    partOf(of(part, 'centre', hand), from, to)
  const end = (part: Part) => of(part, 'centre', 'left').to
  const goreFrom = (part: Part) => (middle ? end(part) - f.gore.radius : end(part))
  const open = (part: Part) => (part === 'front' && f.lacedAt === 'front' ? f.opening : 0)
  // A side laced at the left is open from the armhole down; drawn upward, its end is at the armhole.
  const sideOpen = (hand: Hand) => (f.lacedAt === 'side' && hand === 'left' ? f.opening : 0)
  const side = (part: Part, hand: Hand, which: 'sewn' | 'open') => {
    const whole = of(part, 'side', hand)
    const mark = whole.to - sideOpen(hand)
    return which === 'sewn' ? partOf(whole, 0, mark) : partOf(whole, mark, whole.to)
  }
  const seams: Seam[] = [
    ...HANDS.map((hand) =>
      sewn(
        `shoulder-${hand}`,
        'shoulder',
        'shoulder',
        hand,
        [of('front', 'shoulder', hand)],
        [of('back', 'shoulder', hand)],
      ),
    ),
    ...PARTS.map((part) =>
      sewn(
        `centre-${part}`,
        'centre',
        `centre.${part}`,
        part,
        [down(part, 'left', open(part), goreFrom(part))],
        [down(part, 'right', open(part), goreFrom(part))],
      ),
    ),
    ...HANDS.map((hand) =>
      sewn(`side-${hand}`, 'side', 'side', hand, [side('back', hand, 'sewn')], [side('front', hand, 'sewn')]),
    ),
    // A side gore's right edge goes to the panel drawn at its right when it hangs: the back at the left hand.
    ...HANDS.flatMap((hand) =>
      PARTS.map((part) => {
        const right = (part === 'front') === (hand === 'right')
        return sewn(
          `gore-${hand}-${part}`,
          'gore',
          'gore',
          `${part}${hand === 'left' ? 'Left' : 'Right'}`,
          [edge('gore', right ? 'right' : 'left', hand)],
          [of(part, 'skirt', hand)],
        )
      }),
    ),
    ...(middle
      ? PARTS.flatMap((part) =>
          HANDS.map((hand) => {
            const right = (part === 'front') === (hand === 'left')
            return sewn(
              `gore-middle-${part}-${hand}`,
              'gore',
              'middleGore',
              `${part}${hand === 'left' ? 'Left' : 'Right'}`,
              [edge('gore', right ? 'right' : 'left', part)],
              [down(part, hand, goreFrom(part), end(part))],
            )
          }),
        )
      : []),
  ]
  const depth = f.chosen.edgeHem
  const opening: Span[] =
    f.lacedAt === 'front'
      ? HANDS.map((hand) => down('front', hand, 0, f.opening))
      : PARTS.map((part) => side(part, 'left', 'open'))
  const hems: Hem[] = [
    turnedHem({
      ...{ id: 'neck', kind: 'neck', name: named('hem', 'neck'), depth },
      spans: PARTS.flatMap((part) => HANDS.map((hand) => of(part, 'neck', hand))),
    }),
    turnedHem({
      id: 'opening',
      kind: 'slit',
      name: named('hem', 'lacedEdges'),
      depth: narrow / 2,
      allowance: narrow,
      spans: opening,
    }),
    ...(f.sleeve === undefined
      ? HANDS.map((hand) =>
          turnedHem({
            ...{ id: `armhole-${hand}`, kind: 'edge', name: named('hem', 'armhole', hand), depth },
            spans: PARTS.map((part) => of(part, 'arm', hand)),
          }),
        )
      : []),
    turnedHem({
      ...{ id: 'bottom', kind: 'bottom', name: named('hem', 'bottom'), depth: f.hems.bottom },
      fullness: (2 * f.hems.bottom) / f.gore.radius,
      spans: [
        ...PARTS.flatMap((part) => HANDS.map((hand) => of(part, 'hem', hand))),
        ...places.map((place) => edge('gore', 'hem', place)),
      ],
    }),
  ]
  return { pieces, seams, hems }
}

function sleeves(f: Figures): Assembly {
  const finish = f.chosen.seamFinish
  const { wide, narrow } = allowancesFor(finish)
  const { head, wrist, length, cap } = f.sleeve!
  const [w, h] = [wrist / 2, head / 2]
  const at = (x: number, y: number) => ({ x, y })
  const lifted = cap.map((s) => moveSegment(s, { x: 0, y: length }))
  const sides: Side[] = [
    { id: 'wrist', path: [{ kind: 'line', from: at(-w, 0), to: at(w, 0) }], ...hemmed(f.chosen.wristHem) },
    { id: 'front', path: [{ kind: 'line', from: at(w, 0), to: at(h, length) }], allowance: wide },
    { id: 'head', path: lifted, allowance: wide },
    { id: 'back', path: [{ kind: 'line', from: at(-h, length), to: at(-w, 0) }], allowance: narrow },
  ]
  const pieces = [
    cutPiece(
      'sleeve',
      { sides },
      { copies: pair('sleeve', true), keptWhole: [], sizes: { head, wrist, length } },
    ),
  ]
  const edge = edgesOn(pieces)
  return {
    pieces,
    seams: HANDS.flatMap((hand) => [
      seam({
        ...{ id: `underarm-${hand}`, kind: 'underarm', name: named('seam', 'underarm', hand), finish },
        ...{ a: [edge('sleeve', 'front', hand)], b: [edge('sleeve', 'back', hand)] },
      }),
      seam({
        ...{ id: `armhole-${hand}`, kind: 'armhole', name: named('seam', 'armhole', hand), finish },
        a: [edge('sleeve', 'head', hand)],
        b: PARTS.map((part) => ({
          piece: PANEL[part],
          copy: hand,
          edge: 'arm',
          from: 0,
          to: edge('sleeve', 'head', hand).to / 2,
        })),
      }),
    ]),
    hems: HANDS.map((hand) =>
      turnedHem({
        ...{
          id: `wrist-${hand}`,
          kind: 'wrist',
          name: named('hem', 'wrist', hand),
          depth: f.chosen.wristHem,
        },
        spans: [edge('sleeve', 'wrist', hand)],
      }),
    ),
  }
}

/** The bodice again to the hip, on firm cloth of its own, turned in and felled to every edge. */
function lining(f: Figures): Assembly {
  const open = 12
  const finish: SeamFinish = 'open'
  const sewnEdges = ['side', 'shoulder', 'centre']
  const panels = PARTS.map((part) =>
    cutPiece(
      LINING[part],
      {
        sides: Object.entries(quarterEdges(f, part, true)).map(([id, path]) => ({
          ...{ id, path },
          allowance: sewnEdges.includes(id) ? open : TURNED_IN,
        })),
      },
      {
        ...{ cloth: 'lining', copies: pair(LINING[part], true), keptWhole: ['neck', 'arm'] },
        sizes: { width: f.hipWidth, length: f.levels.hip },
      },
    ),
  )
  const edge = edgesOn(panels)
  const of = (part: Part, id: string, hand: Hand) => edge(LINING[part], id, hand)
  const front = f.lacedAt === 'front'
  const sewn = (id: string, kind: Seam['kind'], code: string, place: string, a: Span, b: Span) =>
    seam({ id: `lining-${id}`, kind, name: named('seam', code, place), finish, a: [a], b: [b] })
  const felled = (id: string, code: string, spans: Span[]): Hem =>
    hem({
      ...{ id: `lining-${id}`, kind: 'lining', name: named('hem', code), seen: false, fullness: 0 },
      ...{ depth: TURNED_IN, allowance: TURNED_IN, spans },
    })
  const all = (id: string) => PARTS.flatMap((part) => HANDS.map((hand) => of(part, id, hand)))
  const openSide = PARTS.map((part) => of(part, 'side', 'left'))
  return {
    pieces: panels,
    seams: [
      ...HANDS.map((hand) =>
        sewn(
          `shoulder-${hand}`,
          'shoulder',
          'liningShoulder',
          hand,
          of('front', 'shoulder', hand),
          of('back', 'shoulder', hand),
        ),
      ),
      ...HANDS.filter((hand) => front || hand === 'right').map((hand) =>
        sewn(`side-${hand}`, 'side', 'liningSide', hand, of('back', 'side', hand), of('front', 'side', hand)),
      ),
      ...PARTS.filter((part) => !front || part === 'back').map((part) =>
        sewn(
          `centre-${part}`,
          'centre',
          'liningCentre',
          part,
          of(part, 'centre', 'left'),
          of(part, 'centre', 'right'),
        ),
      ),
    ],
    hems: [
      felled('neck', 'liningNeck', all('neck')),
      felled('arms', 'liningArms', all('arm')),
      felled('opening', 'liningOpening', front ? HANDS.map((hand) => of('front', 'centre', hand)) : openSide),
      felled('bottom', 'liningBottom', all('hem')),
    ],
  }
}
