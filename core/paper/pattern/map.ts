import type { DrawItem, Drawing } from '../../draw/drawing.ts'
import { polygon } from '../../geometry/path.ts'
import { moveSegment } from '../../geometry/segment.ts'
import type { Rectangle } from '../../geometry/types.ts'
import type { Tiling } from './tiles.ts'
import type { WholePattern } from './whole.ts'

/** How the sheets lie beside each other, small: every sheet with its name, and the outlines of what it shows. */
export function pageMap(
  whole: WholePattern,
  { tiles }: Tiling,
  label: string,
  space: { width: number; height: number },
): Drawing {
  const right = Math.max(whole.width, ...tiles.map(({ window }) => window.x + window.width))
  const bottom = Math.max(whole.height, ...tiles.map(({ window }) => window.y + window.height))
  const scale = Math.min(space.width / right, space.height / bottom)
  // World millimetres run upward, those of the sheets downward.
  const framed = ({ x, y, width, height }: Rectangle) =>
    polygon([
      { x, y: -y - height },
      { x: x + width, y: -y - height },
      { x: x + width, y: -y },
      { x, y: -y },
    ])
  const outlines = whole.parts.map(({ part, drawing: { box }, x, y }) => {
    const by = { x: x - box.x, y: -y - box.y - box.height }
    return part.whole ? part.piece.cut.map((s) => moveSegment(s, by)) : framed({ x, y, ...sizeOf(box) })
  })
  const items: DrawItem[] = [
    { kind: 'strokes', paths: outlines, line: 'cut', fill: 'cloth' },
    { kind: 'strokes', paths: tiles.map(({ window }) => framed(window)), line: 'hidden' },
    ...tiles.map(
      ({ name, window }): DrawItem => ({
        ...{ kind: 'lettering', text: name, anchor: 'middle', angle: 0, size: 'name' },
        at: { x: window.x + window.width / 2, y: -window.y - window.height / 2 },
      }),
    ),
  ]
  const box = { x: 0, y: -bottom, width: right, height: bottom }
  return { box, scale, items, label }
}

const sizeOf = ({ width, height }: Rectangle) => ({ width, height })
