import { halfTurned, through } from '../../geometry/path.ts'
import type { Path, Point } from '../../geometry/types.ts'
import { named } from '../names.ts'
import { cutPiece, type Side } from '../pieces.ts'
import { HANDS, type Hand, type Part } from '../places.ts'
import { edgesOn, partFromEnd, part as partOf, seam } from '../seams.ts'
import { type Dip, neckEdge } from '../shapes/neckline.ts'
import type { Piece, Seam, SeamFinish, Slit, Span } from '../types.ts'

/** The body of a garment that hangs from the shoulders: straight panels, which may flare below the arm. mm. */
export type BodyFigures = {
  /** One length of cloth over the shoulder, or a front and a back with a seam there. */
  inOne: boolean
  /** Width of each panel down to the end of `arm`. */
  width: number
  /** From the shoulder line to the hem. */
  front: number
  back: number
  /** How far down from the shoulder the straight part of the side reaches. */
  arm: number
  /** What the panel gains on each side from there to the hem. */
  flare: number
  /** An opening with its dips, or a straight cut across the shoulder line. */
  neck: { width: number; front: Dip; back: Dip } | { cut: number }
  /** Down the middle of the front from the neck. */
  slit: number
  finish: SeamFinish
  allowances: { narrow: number; wide: number; neck: number; hem: { allowance: number; turned: true } }
}

/** A body as the rest of a garment is sewn to it. */
export type SewnBody = {
  pieces: Piece[]
  /** Shoulder seams, where there are any. */
  seams: Seam[]
  /** Straight part of a side, between two marks down from the shoulder. */
  arm: (part: Part, hand: Hand, from: number, to: number) => Span
  /** The rest of a side down to the hem, between two marks down from the end of `arm`. */
  skirt: (part: Part, hand: Hand, from?: number, to?: number) => Span
  /** Length of that rest. */
  skirtLength: (part: Part) => number
  neck: (part: Part) => Span[]
  slit: Span[]
  hem: Span[]
}

/**
 * Panels lie face up with the hem below: what is drawn at the right is worn at the left in front, at the right
 * behind. A body in one lies with its front below and its back above the shoulder line.
 */
export function bodyOf(f: BodyFigures): SewnBody {
  const pieces = f.inOne ? [inOne(f)] : [panel(f, 'front'), panel(f, 'back')]
  const edge = edgesOn(pieces)
  const on = (part: Part) => (f.inOne ? 'body' : part)
  const drawnRight = (part: Part, hand: Hand) => (part === 'front') === (hand === 'left')
  const arm = (part: Part, hand: Hand, from: number, to: number): Span => {
    const drawn = f.inOne ? hand === 'left' : drawnRight(part, hand)
    const whole = edge(on(part), drawn ? 'armRight' : 'armLeft')
    // Drawn right edges run up, left ones down; over the shoulder the back lies upside down beyond the front.
    if (!f.inOne) return drawn ? partFromEnd(whole, from, to) : partOf(whole, from, to)
    const first = (part === 'front') === drawn
    return first ? partOf(whole, f.arm - to, f.arm - from) : partOf(whole, f.arm + from, f.arm + to)
  }
  const skirtLength = (part: Part) => Math.hypot(f[part] - f.arm, f.flare)
  const skirt = (part: Part, hand: Hand, from = 0, to = skirtLength(part)): Span => {
    const drawn = f.inOne ? hand === 'left' : drawnRight(part, hand)
    const back = f.inOne && part === 'back' ? 'Back' : ''
    const whole = edge(on(part), `skirt${back}${drawn ? 'Right' : 'Left'}`)
    const upward = back === '' ? drawn : !drawn
    return upward ? partFromEnd(whole, from, to) : partOf(whole, from, to)
  }
  const neck = (part: Part): Span[] => {
    if ('width' in f.neck) return [edge(on(part), f.inOne && part === 'back' ? 'neckBack' : 'neck')]
    return ['neckRight', 'neckLeft'].map((slit) =>
      edge('body', `${slit}${(part === 'front') === (slit === 'neckRight') ? 'Right' : 'Left'}`),
    )
  }
  return {
    ...{ pieces, arm, skirt, skirtLength, neck },
    seams: f.inOne ? [] : HANDS.map((hand) => shoulder(f, edge, hand)),
    slit: f.slit > 0 ? [edge(on('front'), 'neckSlitRight'), edge(on('front'), 'neckSlitLeft')] : [],
    hem: f.inOne
      ? [edge('body', 'hem'), edge('body', 'hemBack')]
      : [edge('front', 'hem'), edge('back', 'hem')],
  }
}

function shoulder({ finish }: BodyFigures, edge: ReturnType<typeof edgesOn>, hand: Hand): Seam {
  const drawn = hand === 'left' ? ['shoulderRight', 'shoulderLeft'] : ['shoulderLeft', 'shoulderRight']
  return seam({
    ...{ id: `shoulder-${hand}`, kind: 'shoulder', name: named('seam', 'shoulder', hand), finish },
    a: [edge('front', drawn[0]!)],
    b: [edge('back', drawn[1]!)],
  })
}

const at = (x: number, y: number): Point => ({ x, y })

function panel(f: BodyFigures, part: Part): Piece {
  if ('cut' in f.neck) throw new Error('a straight cut for the neck lies on a shoulder without a seam')
  const { width, arm, flare, allowances, neck } = f
  const length = f[part]
  const [w, h, n] = [width / 2, width / 2 + flare, neck.width / 2]
  // Where a front meets a back with nothing between them, the back is folded over it.
  const skirt = { allowance: part === 'back' ? allowances.wide : allowances.narrow }
  const shoulderSeam = { allowance: part === 'back' ? allowances.wide : allowances.narrow }
  const sides: Side[] = [
    { id: 'hem', path: through([at(-h, 0), at(h, 0)]), ...allowances.hem },
    { id: 'skirtRight', path: through([at(h, 0), at(w, length - arm)]), ...skirt },
    { id: 'armRight', path: through([at(w, length - arm), at(w, length)]), allowance: allowances.narrow },
    { id: 'shoulderRight', path: through([at(w, length), at(n, length)]), ...shoulderSeam },
    { id: 'neck', path: neckEdge(neck.width, neck[part], length), allowance: allowances.neck },
    { id: 'shoulderLeft', path: through([at(-n, length), at(-w, length)]), ...shoulderSeam },
    { id: 'armLeft', path: through([at(-w, length), at(-w, length - arm)]), allowance: allowances.narrow },
    { id: 'skirtLeft', path: through([at(-w, length - arm), at(-h, 0)]), ...skirt },
  ]
  const slits = part === 'front' ? neckSlit(f, length, neck.front.depth) : []
  return cutPiece(part, { sides, slits }, { sizes: { width: 2 * h, length } })
}

function inOne(f: BodyFigures): Piece {
  const { width, arm, flare, allowances, neck, front, back } = f
  const [w, h, top] = [width / 2, width / 2 + flare, front + back]
  const skirt = { allowance: allowances.wide }
  const straight = { allowance: allowances.narrow }
  const sides: Side[] = [
    { id: 'hem', path: through([at(-h, 0), at(h, 0)]), ...allowances.hem },
    { id: 'skirtRight', path: through([at(h, 0), at(w, front - arm)]), ...skirt },
    { id: 'armRight', path: through([at(w, front - arm), at(w, front + arm)]), ...straight },
    { id: 'skirtBackRight', path: through([at(w, front + arm), at(h, top)]), ...skirt },
    { id: 'hemBack', path: through([at(h, top), at(-h, top)]), ...allowances.hem },
    { id: 'skirtBackLeft', path: through([at(-h, top), at(-w, front + arm)]), ...skirt },
    { id: 'armLeft', path: through([at(-w, front + arm), at(-w, front - arm)]), ...straight },
    { id: 'skirtLeft', path: through([at(-w, front - arm), at(-h, 0)]), ...skirt },
  ]
  const manners = { hangsBothWays: true, sizes: { width: 2 * h, length: top } } as const
  if ('cut' in neck) {
    const middle = at(0, front)
    const cut = (id: string, x: number): Slit => ({
      id,
      open: middle,
      apex: at(x, front),
      allowance: allowances.neck,
    })
    const slits = [cut('neckRight', neck.cut / 2), cut('neckLeft', -neck.cut / 2), ...neckSlit(f, front, 0)]
    return cutPiece('body', { sides, slits }, manners)
  }
  const hole = (id: string, path: Path): Side => ({ id, path, allowance: allowances.neck })
  const opening = [
    hole('neck', neckEdge(neck.width, neck.front, front)),
    hole('neckBack', halfTurned(neckEdge(neck.width, neck.back, front), front)),
  ]
  const slits = neckSlit(f, front, neck.front.depth)
  return cutPiece('body', { sides, openings: [{ id: 'opening', sides: opening }], slits }, manners)
}

function neckSlit({ slit, allowances }: BodyFigures, shoulderLine: number, depth: number): Slit[] {
  if (slit === 0) return []
  const open = at(0, shoulderLine - depth)
  return [{ id: 'neckSlit', open, apex: at(0, open.y - slit), allowance: allowances.neck }]
}
