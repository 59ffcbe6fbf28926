import { named } from '../names.ts'
import { cutPiece } from '../pieces.ts'
import { atRight, HANDS, QUARTERS } from '../places.ts'
import { edgesOn, seam } from '../seams.ts'
import { straightEdgeGore } from '../shapes/gore.ts'
import type { SeamFinish, Span } from '../types.ts'
import type { Assembly } from './assembly.ts'

type SideGores = {
  radius: number
  angle: number
  hem: { allowance: number; turned: true }
  finish: SeamFinish
  allowance: number
  /** The stretch of a panel's side that a gore goes to. */
  side: (quarter: (typeof QUARTERS)[number]) => Span
}

/** Four gores, two at each side: the bias edge to the straight side of a panel, the straight edges together. */
export function sideGores({ radius, angle, hem, finish, allowance, side }: SideGores): Assembly {
  const shape = straightEdgeGore(radius, angle)
  const sides = [
    { id: 'hem', path: shape.hem, ...hem },
    { id: 'right', path: shape.right, allowance },
    { id: 'left', path: shape.left, allowance },
  ]
  const copies = QUARTERS.map(({ id }) => ({ id, name: named('piece', 'gore', id), mirrored: atRight(id) }))
  const pieces = [
    cutPiece('gore', { sides }, { copies, sizes: { longEdge: radius, hemArc: radius * angle } }),
  ]
  const edge = edgesOn(pieces)
  return {
    pieces,
    seams: [
      ...QUARTERS.map((quarter) =>
        seam({
          ...{ id: `gore-${quarter.id}`, kind: 'gore', name: named('seam', 'gore', quarter.id), finish },
          a: [edge('gore', 'right', quarter.id)],
          b: [side(quarter)],
        }),
      ),
      ...HANDS.map((hand) => {
        const [front, back] = QUARTERS.filter((quarter) => quarter.hand === hand)
        return seam({
          ...{
            id: `gore-to-gore-${hand}`,
            kind: 'goreToGore',
            name: named('seam', 'goreToGore', hand),
            finish,
          },
          a: [edge('gore', 'left', back!.id)],
          b: [edge('gore', 'left', front!.id)],
        })
      }),
    ],
    hems: [],
  }
}

/** The hem edges of such gores. */
export const sideGoreHems = ({ pieces }: Assembly): Span[] =>
  QUARTERS.map(({ id }) => edgesOn(pieces)('gore', 'hem', id))

/** The angle of four gores that brings straight panels to a sweep, kept where a gore still hangs well. Radians. */
export const angleFor = (sweep: number, straight: number, radius: number, most: number): number =>
  Math.min(most, Math.max(0.2, (sweep - straight) / (QUARTERS.length * radius)))
