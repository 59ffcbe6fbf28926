import type { DrawItem, Drawing, Lettering } from '../draw/drawing.ts'
import { CAPITAL, INKS, LETTERS, TINTS } from '../draw/ink.ts'
import type { Path, Point } from '../geometry/types.ts'
import { oneLine } from './lines.ts'
import type { FaceId, Mark, PathMark, TextRun } from './page.ts'
import type { Laid, Strip, Tagger } from './strip.ts'
import { shifted } from './strip.ts'
import { POINT } from './style.ts'

/** Free space between figures side by side, mm. */
const GUTTER = 7

/** A drawing's size on the sheet, mm. */
export const sheetSize = ({ box, scale }: Drawing): { width: number; height: number } => ({
  width: box.width * scale,
  height: box.height * scale,
})

/** Drawings at their own scales, as many side by side as the width takes, standing on one line. */
export function figureRows(
  tagger: Tagger,
  drawings: readonly Drawing[],
  width: number,
  before: number,
): Laid {
  const rows: Drawing[][] = []
  let used = 0
  for (const drawing of drawings) {
    const own = sheetSize(drawing).width
    const row = rows.at(-1)
    if (row === undefined || used + GUTTER + own > width) {
      rows.push([drawing])
      used = own
    } else {
      row.push(drawing)
      used += GUTTER + own
    }
  }
  const laid = rows.map((row) => figureRow(tagger, row, width, before))
  return { strips: laid.flatMap((l) => l.strips), tags: laid.flatMap((l) => l.tags) }
}

function figureRow(tagger: Tagger, row: readonly Drawing[], width: number, before: number): Laid {
  const sizes = row.map(sheetSize)
  const height = Math.max(...sizes.map((size) => size.height))
  const spare = width - sizes.reduce((sum, size) => sum + size.width, 0)
  const gap = row.length === 1 ? 0 : Math.min(GUTTER * 2.5, spare / (row.length - 1))
  let x = row.length === 1 ? Math.max(0, Math.min(spare / 2, 0)) : 0
  const tags = row.map((drawing) => tagger.tag('Figure', [], { alt: drawing.label }))
  const marks = row.flatMap((drawing, i) => {
    const placed = shifted(drawingMarks(drawing, tags[i]!.id), x, height - sizes[i]!.height)
    x += sizes[i]!.width + gap
    return placed
  })
  const strip: Strip = { before, height, keep: false, marks }
  return { strips: [strip], tags }
}

/** A drawing as marks, the top left corner of its box at the origin. */
export function drawingMarks(drawing: Drawing, tag: number | null): Mark[] {
  const { box, scale, clip } = drawing
  const top = box.y + box.height
  const place = ({ x, y }: Point): Point => ({ x: (x - box.x) * scale, y: (top - y) * scale })
  const placePath = (path: Path): Path =>
    path.map((s) =>
      s.kind === 'line'
        ? { kind: 'line', from: place(s.from), to: place(s.to) }
        : { kind: 'arc', from: place(s.from), to: place(s.to), centre: place(s.centre), sweep: -s.sweep },
    )
  const window =
    clip === undefined
      ? undefined
      : {
          ...place({ x: clip.x, y: clip.y + clip.height }),
          width: clip.width * scale,
          height: clip.height * scale,
        }
  const strokes = (item: DrawItem & { kind: 'strokes' }): PathMark => ({
    kind: 'path',
    paths: item.paths.map(placePath),
    ...(item.line === null ? {} : { stroke: INKS[item.line] }),
    ...(item.fill === undefined ? {} : { fill: TINTS[item.fill] }),
    ...(item.clipped === true && window !== undefined ? { clip: window } : {}),
    tag,
  })
  return drawing.items.flatMap((item): Mark[] =>
    item.kind === 'strokes' ? [strokes(item)] : letters(item, place(item.at), tag),
  )
}

/** A word of a drawing set along its own line, its capitals centred on `at`. */
function letters({ text, anchor, angle, size }: Lettering, at: Point, tag: number | null): TextRun[] {
  const { em, dye } = LETTERS[size]
  const face: FaceId = size === 'name' ? 'sansBold' : 'sans'
  const { runs, width: whole } = oneLine(text, { face, size: em / POINT, leading: 1, dye })
  const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)]
  const from = anchor === 'start' ? 0 : anchor === 'middle' ? -whole / 2 : -whole
  const down = (em * CAPITAL) / 2
  return runs.map((run) => {
    const start = from + run.x
    return {
      kind: 'text',
      x: at.x + start * cos + down * sin,
      y: at.y - start * sin + down * cos,
      text: run.text,
      face: run.face,
      size: em / POINT,
      dye,
      width: run.width,
      angle,
      tag,
    }
  })
}
