import { QUARTERS } from '../places.ts'
import { straightEdgeGore } from '../shapes/gore.ts'
import type { SeamFinish, Span } from '../types.ts'
import type { Assembly } from './assembly.ts'
import { quarterGores } from './quarter-gores.ts'

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
  const sizes = { longEdge: radius, hemArc: radius * angle }
  return quarterGores({ sides, sizes, toPanel: 'right', outer: 'left', finish, side })
}

/** The angle of four gores that brings straight panels to a sweep, kept where a gore still hangs well. Radians. */
export const angleFor = (sweep: number, straight: number, radius: number, most: number): number =>
  Math.min(most, Math.max(0.2, (sweep - straight) / (QUARTERS.length * radius)))
