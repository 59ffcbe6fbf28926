import { line } from '../geometry/segment.ts'
import type { Point } from '../geometry/types.ts'
import type { PathMark } from './page.ts'
import { RULES, TICK_BOX } from './style.ts'

/** A box to tick with its top left corner at (x, y), ticked or not. */
export function tickBox(x: number, y: number, ticked: boolean, tag: number): PathMark[] {
  const at = (u: number, v: number): Point => ({ x: x + u * TICK_BOX, y: y + v * TICK_BOX })
  const corners = [at(0, 0), at(1, 0), at(1, 1), at(0, 1)]
  const sides = corners.map((corner, i) => line(corner, corners[(i + 1) % 4]!))
  const box: PathMark = { kind: 'path', paths: [sides], stroke: RULES.tick, tag }
  if (!ticked) return [box]
  const stroke = [line(at(0.2, 0.55), at(0.42, 0.8)), line(at(0.42, 0.8), at(0.85, 0.15))]
  return [box, { kind: 'path', paths: [stroke], stroke: { dye: 'woad', weight: 0.6, dash: [] }, tag }]
}
