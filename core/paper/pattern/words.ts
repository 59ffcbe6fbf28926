import type { Point } from '../../geometry/types.ts'
import { oneLine } from '../lines.ts'
import type { Mark } from '../page.ts'
import { shifted } from '../strip.ts'
import { LOOKS, type LookId } from '../style.ts'
import { lineMarks } from '../words.ts'

/** A line of words anywhere on a sheet, its left end and top at `at`; a reader aloud skips it. */
export const placedWords = (words: string, look: LookId, at: Point): Mark[] => {
  const line = oneLine(words, LOOKS[look])
  return shifted(lineMarks(line, LOOKS[look], line.width, 'left', 0, null), at.x, at.y)
}
