import { breakLines, type Line, type Words } from './lines.ts'
import type { Mark, TagRole } from './page.ts'
import type { Laid, Strip, Tagger } from './strip.ts'
import { type Look, POINT } from './style.ts'

/** To which side of its column a line of words is set. */
export type Align = 'left' | 'right' | 'centre'

/** Height of one line of a look, mm. */
export const lineHeight = (look: Look): number => look.size * look.leading * POINT

/** From the top of a line down to its baseline: capitals stand in the middle of the line. */
export const baseline = (look: Look): number => lineHeight(look) / 2 + 0.34 * look.size * POINT

/** The marks of one line in a column of `width`, its top at `top`. */
export function lineMarks(
  line: Line,
  look: Look,
  width: number,
  align: Align,
  top: number,
  tag: number | null,
): Mark[] {
  const start = align === 'left' ? 0 : align === 'right' ? width - line.width : (width - line.width) / 2
  return line.runs.map(({ text, face, dye, x, width: own }) => ({
    kind: 'text',
    x: start + x,
    y: top + baseline(look),
    text,
    face,
    size: look.size,
    dye,
    width: own,
    angle: 0,
    tag,
  }))
}

/**
 * A paragraph or heading as strips, a line each. Neither its first nor its last line is left alone on a
 * page.
 */
export function paragraph(
  tagger: Tagger,
  words: Words,
  look: Look,
  width: number,
  options: { before: number; align?: Align; role?: TagRole; keepWithNext?: boolean },
): Laid {
  const tag = tagger.tag(options.role ?? 'P')
  const lines = breakLines(words, look, width)
  const strips = lines.map(
    (line, i): Strip => ({
      before: i === 0 ? options.before : 0,
      height: lineHeight(look),
      keep: i === lines.length - 1 ? options.keepWithNext === true : i === 0 || i === lines.length - 2,
      marks: lineMarks(line, look, width, options.align ?? 'left', 0, tag.id),
    }),
  )
  return { strips, tags: [tag] }
}
