import { polygon } from '../../geometry/path.ts'
import { along, direction, distance } from '../../geometry/point.ts'
import { line } from '../../geometry/segment.ts'
import type { Path } from '../../geometry/types.ts'
import { symmetricalGore } from '../shapes/gore.ts'
import { box } from '../shapes/rectangle.ts'
import { quarterRing } from '../shapes/round.ts'
import type { OwnShape } from './definition.ts'

type Sized = Readonly<Record<string, number>>
type Sides = { id: string; path: Path }[]

/** What each shape is measured by, and its sides in order, anticlockwise. mm. */
export const SHAPES: Record<
  OwnShape,
  { dimensions: readonly string[]; edges: readonly string[]; sides: (by: Sized) => Sides }
> = {
  rectangle: {
    ...{ dimensions: ['width', 'length'], edges: ['bottom', 'right', 'top', 'left'] },
    sides: ({ width, length }) => box(width!, length!),
  },
  taperedPanel: {
    ...{ dimensions: ['topWidth', 'bottomWidth', 'length'], edges: ['bottom', 'right', 'top', 'left'] },
    sides: ({ topWidth, bottomWidth, length }) => {
      const [t, b] = [topWidth! / 2, bottomWidth! / 2]
      const corners = [
        { x: -b, y: 0 },
        { x: b, y: 0 },
        { x: t, y: length! },
        { x: -t, y: length! },
      ]
      return polygon(corners).map((side, i) => ({ id: ['bottom', 'right', 'top', 'left'][i]!, path: [side] }))
    },
  },
  gore: {
    ...{ dimensions: ['longEdge', 'spread'], edges: ['hem', 'right', 'left'] },
    sides: ({ longEdge, spread }) =>
      Object.entries(symmetricalGore(longEdge!, spread! / longEdge!)).map(([id, path]) => ({ id, path })),
  },
  gusset: {
    ...{ dimensions: ['side'], edges: ['bottom', 'right', 'top', 'left'] },
    sides: ({ side }) => box(side!, side!),
  },
  sector: {
    ...{ dimensions: ['innerRadius', 'outerRadius'], edges: ['weft', 'hem', 'warp', 'neck'] },
    sides: ({ innerRadius, outerRadius }) =>
      Object.entries(quarterRing(innerRadius!, outerRadius!)).map(([id, path]) => ({ id, path })),
  },
  band: {
    ...{ dimensions: ['length', 'depth'], edges: ['bottom', 'right', 'top', 'left'] },
    sides: ({ length, depth }) => box(2 * depth!, length!),
  },
}

/** Sides with the marked straight ones in the parts between their marks: `right-1`, `right-2`. */
export const markedSides = (sides: Sides, marks: readonly { edge: string; at: number }[]): Sides =>
  sides.flatMap(({ id, path }) => {
    const own = marks.filter(({ edge }) => edge === id).map(({ at }) => at)
    const [straight] = path
    if (own.length === 0 || straight === undefined || straight.kind !== 'line' || path.length > 1)
      return [{ id, path }]
    const { from, to } = straight
    const whole = distance(from, to)
    const way = direction(from, to)
    const stops = [0, ...own.filter((at) => at > 0 && at < whole).sort((a, b) => a - b), whole]
    const at = (mm: number) => (mm === 0 ? from : mm === whole ? to : along(from, way, mm))
    return stops.slice(1).map((end, i) => ({ id: `${id}-${i + 1}`, path: [line(at(stops[i]!), at(end))] }))
  })
