import type { Path } from '../geometry/types.ts'
import type { Mark, Tag, TagRole } from './page.ts'

/**
 * A band across the page that is never broken: one line of a paragraph, one row of a table, one row of
 * figures. Its marks are placed from its own top left corner.
 */
export type Strip = {
  /** Free space above, left out at the top of a page. */
  before: number
  height: number
  /** Must not be parted from the strip that follows. */
  keep: boolean
  marks: Mark[]
  /** Repeated above it when it comes to stand first on a page (a table's headings). */
  head?: Strip
}

/** Strips one under the other, with the elements of the reading order they belong to. */
export type Laid = { strips: Strip[]; tags: Tag[] }

/** Numbers the elements of one document. */
export class Tagger {
  #next = 0

  tag(role: TagRole, children: Tag[] = [], more: Pick<Tag, 'alt' | 'scope'> = {}): Tag {
    return { id: this.#next++, role, children, ...more }
  }
}

/** Marks moved across the page. */
export function shifted(marks: readonly Mark[], dx: number, dy: number): Mark[] {
  const move = <P extends { x: number; y: number }>(p: P): P => ({ ...p, x: p.x + dx, y: p.y + dy })
  const moved = (path: Path): Path =>
    path.map((s) =>
      s.kind === 'line'
        ? { kind: 'line', from: move(s.from), to: move(s.to) }
        : { ...s, from: move(s.from), to: move(s.to), centre: move(s.centre) },
    )
  return marks.map((mark) => {
    const clip = mark.clip === undefined ? {} : { clip: move(mark.clip) }
    return mark.kind === 'path'
      ? { ...mark, paths: mark.paths.map(moved), ...clip }
      : { ...move(mark), ...clip }
  })
}

/** The same marks, passed over by a reader aloud: headings printed a second time. */
export const silent = (strip: Strip): Strip => ({
  ...strip,
  marks: strip.marks.map((mark) => ({ ...mark, tag: null })),
})

/** Strips stacked into one that is never broken, their space between them kept. */
export function stacked(strips: readonly Strip[]): { height: number; marks: Mark[] } {
  const marks: Mark[] = []
  let y = 0
  strips.forEach((strip, i) => {
    if (i > 0) y += strip.before
    marks.push(...shifted(strip.marks, 0, y))
    y += strip.height
  })
  return { height: y, marks }
}
