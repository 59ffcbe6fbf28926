import { polygon } from '../geometry/path.ts'
import { line } from '../geometry/segment.ts'
import type { Path } from '../geometry/types.ts'
import { shortened } from './lines.ts'
import type { Mark, Tag } from './page.ts'
import { type Laid, type Strip, shifted, type Tagger } from './strip.ts'
import { LOOKS, type LookId, RULES } from './style.ts'
import { lineHeight, lineMarks } from './words.ts'

/** One label: its lines from the top, and which way the grain runs on the piece. */
export type Label = {
  lines: readonly { words: string; look: LookId }[]
  grain: 'straight' | 'bias'
  grainWord: string
}

/** Labels side by side, and how tall each is, mm. */
const BESIDE = 3
const HEIGHT = 34
const PADDING = 3
/** Room for the arrow of the grain at the right, mm. */
const ARROW = 10

/** Labels in rows, a hair line round each to cut by; what is too long for one is shortened. */
export function labelRows(tagger: Tagger, labels: readonly Label[], width: number): Laid {
  const own = width / BESIDE
  const rows = Array.from({ length: Math.ceil(labels.length / BESIDE) }, (_, i) =>
    labels.slice(i * BESIDE, (i + 1) * BESIDE),
  )
  const tags: Tag[] = []
  const strips = rows.map((row): Strip => {
    const marks = row.flatMap((label, i) => {
      const tag = tagger.tag('P')
      tags.push(tag)
      return shifted(labelMarks(label, own, tag.id), i * own, 0)
    })
    return { before: 0, height: HEIGHT, keep: false, marks }
  })
  return { strips, tags }
}

function labelMarks({ lines, grain, grainWord }: Label, width: number, tag: number): Mark[] {
  const room = width - 2 * PADDING - ARROW
  let y = PADDING
  const words = lines.flatMap(({ words, look }) => {
    const set = lineMarks(shortened(words, LOOKS[look], room), LOOKS[look], room, 'left', y, tag)
    y += lineHeight(LOOKS[look]) + 0.6
    return shifted(set, PADDING, 0)
  })
  const frame = polygon([
    { x: 0, y: 0 },
    { x: 0, y: HEIGHT },
    { x: width, y: HEIGHT },
    { x: width, y: 0 },
  ])
  const note = LOOKS.note
  const under = lineMarks(
    shortened(grainWord, note, ARROW + 6),
    note,
    ARROW,
    'centre',
    HEIGHT - PADDING - lineHeight(note),
    tag,
  )
  return [
    { kind: 'path', paths: [frame], stroke: RULES.row, tag: null },
    { kind: 'path', paths: arrow(width - PADDING - ARROW / 2, grain), stroke: RULES.head, tag: null },
    ...words,
    ...shifted(under, width - PADDING - ARROW, 0),
  ]
}

/** From its middle to its head, and the length of a barb, mm. */
const REACH = 9
const BARB = 1.6

/** A line with a head at both ends, upright, or leaning by 45° for what is cut on the bias. */
function arrow(x: number, grain: Label['grain']): Path[] {
  const lean = grain === 'bias' ? Math.SQRT1_2 * 0.9 : 0
  const rise = grain === 'bias' ? Math.SQRT1_2 * 0.9 : 1
  const middle = { x, y: PADDING + REACH + 1.5 }
  const end = (sense: number) => ({
    x: middle.x + sense * lean * REACH * 0.6,
    y: middle.y - sense * rise * REACH,
  })
  const barbs = (sense: number): Path[] => {
    const tip = end(sense)
    const back = { x: -sense * lean, y: sense * rise }
    return [1, -1].map((side) => [
      line(tip, {
        x: tip.x + BARB * (back.x + side * 0.6 * back.y),
        y: tip.y + BARB * (back.y - side * 0.6 * back.x),
      }),
    ])
  }
  return [[line(end(-1), end(1))], ...barbs(1), ...barbs(-1)]
}
