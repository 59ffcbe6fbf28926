import { type PhraseCode, phrase } from '../../../words/phrase.ts'
import { HANDS, type Hand, PARTS, type Part, QUARTERS } from '../../places.ts'
import { FACING, ROLL } from '../../practice.ts'
import { hem, seam, wholeEdge } from '../../seams.ts'
import type { Hem, Piece, Seam, SeamFinish, Span } from '../../types.ts'
import type { Figures } from './figures.ts'
import { sideGoreEdges } from './gores.ts'
import { isRolled, PANEL, panelEdge, sideSpan } from './panels.ts'
import { sleeveSpan } from './sleeves.ts'

/** Every seam of the tunic, in sewing order. */
export function seamsOf(f: Figures, pieces: readonly Piece[]): Seam[] {
  const whole = (piece: string, copy: string, edge: string) => wholeEdge(pieces, piece, copy, edge)
  const finish: SeamFinish = f.chosen.seamFinish
  const name = (code: string, place: string) =>
    phrase('draft.seam.placed', {
      seam: phrase(`draft.seam.${code}` as PhraseCode),
      place: phrase(`draft.place.${place}` as PhraseCode),
    })

  const shoulders = (f.chosen.shoulder === 'seam' ? HANDS : []).map((hand) => {
    const edge = (part: Part) => ((part === 'front') === (hand === 'left') ? 'shoulderRight' : 'shoulderLeft')
    const [front, back] = PARTS.map((part) => whole(PANEL[part], PANEL[part], edge(part)))
    return seam({
      id: `shoulder-${hand}`,
      kind: 'shoulder',
      name: name('shoulder', hand),
      a: [front!],
      b: [back!],
      finish,
    })
  })

  const underarm = HANDS.flatMap((hand) => [
    ...PARTS.map((part) =>
      seam({
        id: `gusset-sleeve-${part}-${hand}`,
        kind: 'gusset',
        name: name('gussetSleeve', part === 'front' ? hand : `${hand}Again`),
        a: [whole('gusset', hand, part === 'front' ? 'sleeveFront' : 'sleeveBack')],
        b: [sleeveSpan(f, hand, part, 'gusset')],
        finish,
      }),
    ),
    seam({
      id: `underarm-${hand}`,
      kind: 'underarm',
      name: name('underarm', hand),
      a: [sleeveSpan(f, hand, 'front', 'underarm')],
      b: [sleeveSpan(f, hand, 'back', 'underarm')],
      finish,
    }),
  ])

  const armholes = HANDS.flatMap((hand) => [
    seam({
      id: `armhole-${hand}`,
      kind: 'armhole',
      name: name('armhole', hand),
      a: [whole('sleeve', hand, 'head')],
      b: PARTS.map((part) => sideSpan(f, part, hand, 'armhole')),
      finish,
    }),
    ...PARTS.map((part) =>
      seam({
        id: `gusset-body-${part}-${hand}`,
        kind: 'gusset',
        name: name('gussetBody', `${part}${hand === 'left' ? 'Left' : 'Right'}`),
        a: [whole('gusset', hand, part === 'front' ? 'bodyFront' : 'bodyBack')],
        b: [sideSpan(f, part, hand, 'gusset')],
        finish,
      }),
    ),
  ])

  const sides =
    f.side > 0
      ? HANDS.map((hand) =>
          seam({
            id: `side-${hand}`,
            kind: 'side',
            name: name('side', hand),
            a: [sideSpan(f, 'back', hand, 'side')],
            b: [sideSpan(f, 'front', hand, 'side')],
            finish,
          }),
        )
      : []

  return [
    ...shoulders,
    ...goreSeams(f, whole, name, finish),
    ...underarm,
    ...armholes,
    ...sides,
    ...facingSeams(f, whole),
  ]
}

type Whole = (piece: string, copy: string, edge: string) => Span
type Name = (code: string, place: string) => Seam['name']

function goreSeams(f: Figures, whole: Whole, name: Name, finish: SeamFinish): Seam[] {
  if (f.skirt.gores === 2) {
    return HANDS.flatMap((hand) =>
      PARTS.map((part) => {
        const edge = (part === 'front') === (hand === 'left') ? 'left' : 'right'
        const place = `${part}${hand === 'left' ? 'Left' : 'Right'}`
        const [a, b] = [[whole('gore', hand, edge)], [sideSpan(f, part, hand, 'gore')]]
        return seam({ id: `gore-${place}`, kind: 'gore', name: name('gore', place), a, b, finish })
      }),
    )
  }
  const toBody = QUARTERS.map(({ id, part, hand }) => {
    const [a, b] = [[whole('gore', id, sideGoreEdges(f, id).body)], [sideSpan(f, part, hand, 'gore')]]
    return seam({ id: `gore-${id}`, kind: 'gore', name: name('gore', id), a, b, finish })
  })
  const together = HANDS.map((hand) => {
    const [front, back] = QUARTERS.filter((quarter) => quarter.hand === hand).map(({ id }) =>
      whole('gore', id, sideGoreEdges(f, id).outer),
    )
    return seam({
      id: `gore-to-gore-${hand}`,
      kind: 'goreToGore',
      name: name('goreToGore', hand),
      a: [back!],
      b: [front!],
      finish,
    })
  })
  return [...toBody, ...centreGoreSeams(f, whole, name, finish), ...together]
}

/** Centre gores in their slits: one to a slit, or two halves that meet on the centre line. */
function centreGoreSeams(f: Figures, whole: Whole, name: Name, finish: SeamFinish): Seam[] {
  const count = f.skirt.gores
  if (count < 6) return []
  return PARTS.flatMap((part) => {
    const slit = (drawn: 'Right' | 'Left') => {
      const { piece, edge } = panelEdge(f, part, `goreSlit${drawn}`)
      return [whole(piece, piece, edge)]
    }
    const sewn = (drawn: 'Right' | 'Left', copy: string, edge: string) => {
      const hand = (part === 'front') === (drawn === 'Right') ? 'Left' : 'Right'
      const a = [whole('centreGore', copy, edge)]
      return seam({
        id: `centre-gore-${part}${hand}`,
        kind: 'gore',
        name: name('centreGore', `${part}${hand}`),
        a,
        b: slit(drawn),
        finish,
      })
    }
    if (count === 6) return [sewn('Right', part, 'right'), sewn('Left', part, 'left')]
    const half = (hand: 'Left' | 'Right') => `${part}${hand}`
    const [atRight, atLeft] = part === 'front' ? (['Left', 'Right'] as const) : (['Right', 'Left'] as const)
    const meeting = seam({
      id: `centre-line-${part}`,
      kind: 'goreToGore',
      name: name('centreLine', part),
      a: [whole('centreGore', half(atRight), 'left')],
      b: [whole('centreGore', half(atLeft), 'left')],
      finish,
    })
    return [meeting, sewn('Right', half(atRight), 'right'), sewn('Left', half(atLeft), 'right')]
  })
}

/** The edges of the neck opening, slit included, on the tunic or on its facing. */
function neckEdges(f: Figures, whole: Whole, of: 'panel' | 'facing'): Span[] {
  const inOne = f.chosen.shoulder === 'cutInOne'
  const front = of === 'panel' ? panelEdge(f, 'front', 'neck').piece : inOne ? 'facing' : 'facingFront'
  const back = of === 'panel' ? panelEdge(f, 'back', 'neck').piece : inOne ? 'facing' : 'facingBack'
  return [whole(front, front, 'neck'), whole(back, back, inOne ? 'neckBack' : 'neck')]
}

function slitEdges(f: Figures, whole: Whole, of: 'panel' | 'facing'): Span[] {
  if (f.neck.slit === 0) return []
  const piece = neckEdges(f, whole, of)[0]!.piece
  return ['neckSlitRight', 'neckSlitLeft'].map((edge) => whole(piece, piece, edge))
}

function facingSeams(f: Figures, whole: Whole): Seam[] {
  if (isRolled(f)) return []
  const joins =
    f.chosen.shoulder === 'cutInOne'
      ? []
      : HANDS.map((hand) => {
          const [front, back] =
            hand === 'left' ? ['shoulderRight', 'shoulderLeft'] : ['shoulderLeft', 'shoulderRight']
          return seam({
            id: `facing-shoulder-${hand}`,
            kind: 'facingJoin',
            name: phrase('draft.seam.placed', {
              seam: phrase('draft.seam.facingJoin'),
              place: phrase(`draft.place.${hand}`),
            }),
            a: [whole('facingFront', 'facingFront', front!)],
            b: [whole('facingBack', 'facingBack', back!)],
            finish: 'faced',
          })
        })
  const [a, b] = (['facing', 'panel'] as const).map((of) => [
    ...neckEdges(f, whole, of),
    ...slitEdges(f, whole, of),
  ])
  return [
    ...joins,
    seam({
      id: 'neck-facing',
      kind: 'facing',
      name: phrase('draft.seam.facing'),
      a: a!,
      b: b!,
      finish: 'faced',
    }),
  ]
}

/** Every hem, in sewing order. */
export function hemsOf(f: Figures, pieces: readonly Piece[]): Hem[] {
  const whole: Whole = (piece, copy, edge) => wholeEdge(pieces, piece, copy, edge)
  return [
    ...neckHems(f, pieces, whole),
    ...HANDS.map((hand: Hand) =>
      hem({
        id: `wrist-${hand}`,
        kind: 'wrist',
        name: phrase('draft.hem.placed', {
          hem: phrase('draft.hem.wrist'),
          place: phrase(`draft.place.${hand}`),
        }),
        spans: [whole('sleeve', hand, 'wrist')],
        ...f.hems.wrist,
        seen: true,
      }),
    ),
    hem({
      id: 'bottom',
      kind: 'bottom',
      name: phrase('draft.hem.bottom'),
      spans: [
        ...PARTS.map((part) => {
          const { piece, edge } = panelEdge(f, part, 'hem')
          return whole(piece, piece, edge)
        }),
        ...pieces
          .filter(({ id }) => id === 'gore' || id === 'centreGore')
          .flatMap(({ id, copies }) => copies.map((copy) => whole(id, copy.id, 'hem'))),
      ],
      ...f.hems.bottom,
      seen: true,
    }),
  ]
}

function neckHems(f: Figures, pieces: readonly Piece[], whole: Whole): Hem[] {
  if (!isRolled(f)) {
    const spans = pieces.filter(({ id }) => id.startsWith('facing')).map(({ id }) => whole(id, id, 'outer'))
    const turned = { depth: FACING.turning, allowance: FACING.turning, fullness: 0 }
    return [
      hem({
        id: 'facing-edge',
        kind: 'facingEdge',
        name: phrase('draft.hem.facingEdge'),
        spans,
        ...turned,
        seen: false,
      }),
    ]
  }
  const rolled = { depth: ROLL.depth, allowance: ROLL.allowance, fullness: 0, seen: true }
  const slit = slitEdges(f, whole, 'panel')
  return [
    hem({
      id: 'neck',
      kind: 'neck',
      name: phrase('draft.hem.neck'),
      spans: neckEdges(f, whole, 'panel'),
      ...rolled,
    }),
    ...(slit.length === 0
      ? []
      : [hem({ id: 'slit', kind: 'slit', name: phrase('draft.hem.slit'), spans: slit, ...rolled })]),
  ]
}
