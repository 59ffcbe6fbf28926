import { boxOf, pathBox } from '../geometry/segment.ts'
import type { Path, Point, Rectangle } from '../geometry/types.ts'
import { printLengthBare } from '../words/length.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { type Reader, say } from '../words/say.ts'
import { dimension } from './dimension.ts'
import type { DrawItem, Drawing } from './drawing.ts'
import { around } from './letters.ts'

/** A finished garment lying flat: where its cloth ends, its seams, what shows from behind, and its sizes. */
export type DrawnGarment = {
  view?: 'side' | 'spread' | 'unfolded'
  edges: readonly Path[]
  seams: readonly Path[]
  behind: readonly Path[]
  sizes: readonly { from: Point; to: Point; mm: number }[]
}

/** So much is left round the drawing for the weight of its lines, mm of the sheet. */
const EDGE = 0.4

const framed = ({ x, y, width, height }: Rectangle, by: number): Rectangle => ({
  ...{ x: x - by, y: y - by },
  ...{ width: width + 2 * by, height: height + 2 * by },
})

/** From the garment to a dimension line, and from the lowest figure to its name, mm of the sheet. */
const OFFSET = 4
const NAME_BELOW = 2.6

/** The scale at which a garment fits this much of a sheet, its figures beside it. mm. */
export function garmentScale({ edges }: DrawnGarment, space: { width: number; height: number }): number {
  const { width, height } = boxOf(
    edges.flatMap((path) => {
      const box = pathBox(path)
      return [
        { x: box.x, y: box.y },
        { x: box.x + box.width, y: box.y + box.height },
      ]
    }),
  )
  return Math.min((space.width - 16) / Math.max(1, width), (space.height - 16) / Math.max(1, height))
}

/** The garment from the front, to scale: edges heavy, seams thin, what lies behind dashed, key sizes beside. */
export function drawGarment(flat: DrawnGarment, name: Phrase, reader: Reader, scale: number): Drawing {
  const strokes = (paths: readonly Path[], line: 'cut' | 'sew' | 'hidden'): DrawItem[] =>
    paths.length === 0 ? [] : [{ kind: 'strokes', paths, line }]
  const items: DrawItem[] = [
    ...strokes(flat.behind, 'hidden'),
    ...strokes(flat.seams, 'sew'),
    ...strokes(flat.edges, 'cut'),
    ...flat.sizes.flatMap(({ from, to, mm }) =>
      dimension(from, to, OFFSET, printLengthBare(mm, reader.unit, reader.locale), scale),
    ),
  ]
  const box = around(items, scale)
  items.push({
    kind: 'lettering',
    at: { x: box.x + box.width / 2, y: box.y - NAME_BELOW / scale },
    text: say(phrase(`draw.garment.${flat.view ?? 'front'}`, { garment: name }), reader),
    ...{ anchor: 'middle', angle: 0, size: 'name' },
  })
  return {
    ...{ box: framed(around(items, scale), EDGE / scale), scale, items },
    label: say(phrase('draw.garment.label', { garment: name }), reader),
  }
}
