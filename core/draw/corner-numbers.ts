import { distance, samePoint } from '../geometry/point.ts'
import { boxOf, directionAt, pathBox } from '../geometry/segment.ts'
import type { Path, Point, Rectangle } from '../geometry/types.ts'
import type { DrawItem, Lettering } from './drawing.ts'
import { boxesCross, lettersCorners } from './letters.ts'
import { corners } from './placed.ts'
import { inside, pointsOf } from './room.ts'

/** Free space at both ends of a number, mm of the sheet: two of them side by side would read as one. Where it is narrow, less. */
const AIR = 0.5
/** From a corner to the middle of its number, mm of the sheet, nearest first. */
const REACHES = [1.7, 2, 2.3, 2.7, 3.1, 3.5, 4]
/** Turns from the way straight out of a corner, degrees, the least first. */
const TURNS = [0, 15, -15, 30, -30, 45, -45, 60, -60, 75, -75, 90, -90, 110, -110, 130, -130, 155, -155, 180]

/**
 * The numbers of the corners of a cut line, each nearer to its own corner than to any other, outside of the line where there is
 * room and else within it. World mm of the piece.
 *
 * @param first which corner is number 1; the others follow in the order of `corners`
 * @param drawn what is drawn already, and kept clear of
 */
export function cornerNumbers(
  cut: Path,
  first: number,
  drawn: readonly DrawItem[],
  scale: number,
): Lettering[] {
  const points = corners(cut)
  const shape = pointsOf(cut)
  const taken = drawn.flatMap((item): Rectangle[] => {
    if (item.kind === 'lettering') return [boxOf(lettersCorners(item, scale))]
    return item.line === 'dimension' ? item.paths.map(pathBox) : []
  })
  return points.flatMap((corner, i) => {
    const text = String(((i - first + points.length) % points.length) + 1)
    const out = wayOut(cut, corner)
    const places = REACHES.flatMap((reach) =>
      TURNS.map((turn): Lettering => {
        const angle = out + (turn * Math.PI) / 180
        const at = {
          x: corner.x + (reach * Math.cos(angle)) / scale,
          y: corner.y + (reach * Math.sin(angle)) / scale,
        }
        return { kind: 'lettering', at, text, anchor: 'middle', angle: 0, size: 'note' }
      }),
    )
    const own = ({ at }: Lettering) =>
      points.every((other) => other === corner || distance(at, corner) < distance(at, other))
    const stands = (air: number) => (one: Lettering) => {
      const box = boxOf(lettersCorners(one, scale, air))
      return own(one) && clearOfLine(box, shape) && !taken.some((other) => boxesCross(other, box))
    }
    const place = places.find(stands(AIR)) ?? places.find(stands(0))
    if (place === undefined) return []
    taken.push(boxOf(lettersCorners(place, scale)))
    return [place]
  })
}

/** The way out of the cloth at a corner, halfway between its two sides, radians. */
function wayOut(cut: Path, corner: Point): number {
  const at = cut.findIndex(({ from }) => samePoint(from, corner))
  const [came, goes] = [directionAt(cut[(at + cut.length - 1) % cut.length]!, 1), directionAt(cut[at]!, 0)]
  const [back, on] = [Math.atan2(-came.y, -came.x), Math.atan2(goes.y, goes.x)]
  // The cut line goes round anticlockwise, with the cloth at its left: outside lies from the way back round to the way on.
  const open = (((on - back) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)
  return back + open / 2
}

/** Whether a box lies wholly on one side of a closed line. */
function clearOfLine(box: Rectangle, shape: readonly Point[]): boolean {
  const rim = [0, 0.25, 0.5, 0.75, 1].flatMap((t) => [
    { x: box.x + t * box.width, y: box.y },
    { x: box.x + t * box.width, y: box.y + box.height },
    { x: box.x, y: box.y + t * box.height },
    { x: box.x + box.width, y: box.y + t * box.height },
  ])
  const within = inside(rim[0]!, shape)
  return (
    rim.every((p) => inside(p, shape) === within) &&
    !shape.some(({ x, y }) => x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height)
  )
}
