import type { Drawing } from '../draw/drawing.ts'
import { line } from '../geometry/segment.ts'
import { rule, type Table } from './cells.ts'
import { figureRows } from './figure.ts'
import { type Label, labelRows } from './label-rows.ts'
import type { Words } from './lines.ts'
import type { Mark, PathMark, Tag } from './page.ts'
import { type Laid, type Strip, shifted, silent, stacked, type Tagger } from './strip.ts'
import { BEFORE, HEADINGS, LOOKS, type LookId, PANEL, type RULES } from './style.ts'
import { layTable } from './table.ts'
import { type Align, paragraph } from './words.ts'

/** What a sheet is made of, in reading order, before it has any place on a page. */
export type Block =
  | { kind: 'heading'; level: 1 | 2 | 3; words: Words }
  | { kind: 'paragraph'; words: Words; look?: LookId; align?: Align; before?: number; keepWithNext?: boolean }
  /** A dash before each, and the words beside it. */
  | { kind: 'list'; items: readonly Words[] }
  | ({ kind: 'table' } & Omit<Table, 'before'> & { before?: number })
  | { kind: 'figures'; drawings: readonly Drawing[] }
  /** A picture, as large as the width and `most` mm of height allow. */
  | { kind: 'picture'; hash: string; width: number; height: number; most: number; alt: string }
  /** Labels to cut apart, in rows. */
  | { kind: 'labels'; labels: readonly Label[] }
  /** Two columns; `share` is the left one's part of the width. Never broken over pages. */
  | { kind: 'beside'; left: readonly Block[]; right: readonly Block[]; share: number; before?: number }
  /** Blocks on a tinted ground with a bar at the left. */
  | { kind: 'panel'; bar: 'madder' | 'woad'; blocks: readonly Block[] }
  /** Lines to write on by hand, side by side, each with a label beneath. */
  | { kind: 'write'; labels: readonly { words: string; share: number }[]; before: number }
  | { kind: 'rule'; rule: keyof typeof RULES; before: number }
  | { kind: 'space'; height: number }
  /** Blocks that stand on one page together. */
  | { kind: 'together'; blocks: readonly Block[] }

/** Lays blocks in a column of `width` mm. */
export function layBlocks(tagger: Tagger, blocks: readonly Block[], width: number): Laid {
  const laid = blocks.map((block) => layBlock(tagger, block, width))
  return { strips: laid.flatMap((l) => l.strips), tags: laid.flatMap((l) => l.tags) }
}

function layBlock(tagger: Tagger, block: Block, width: number): Laid {
  switch (block.kind) {
    case 'heading':
      return paragraph(tagger, block.words, LOOKS[HEADINGS[block.level]], width, {
        before: BEFORE[block.level],
        role: `H${block.level}`,
        keepWithNext: true,
      })
    case 'paragraph': {
      const { words, look = 'prose', before = BEFORE.paragraph, ...options } = block
      return paragraph(tagger, words, LOOKS[look], width, { before, ...options })
    }
    case 'list':
      return list(tagger, block.items, width)
    case 'table':
      return layTable(tagger, { ...block, before: block.before ?? BEFORE.table }, width)
    case 'figures':
      return figureRows(tagger, block.drawings, width, BEFORE.figure)
    case 'picture':
      return picture(tagger, block, width)
    case 'labels':
      return labelRows(tagger, block.labels, width)
    case 'beside':
      return beside(tagger, block, width)
    case 'panel':
      return panel(tagger, block, width)
    case 'write':
      return writeLines(tagger, block, width)
    case 'rule':
      return silently({ before: block.before, height: 0, keep: true, marks: [rule(block.rule, 0, width, 0)] })
    case 'space':
      return silently({ before: block.height, height: 0, keep: true, marks: [] })
    case 'together': {
      const { strips, tags } = layBlocks(tagger, block.blocks, width)
      return { strips: strips.map((strip, i) => ({ ...strip, keep: i < strips.length - 1 })), tags }
    }
  }
}

const silently = (strip: Strip): Laid => ({ strips: [strip], tags: [] })

function picture(tagger: Tagger, block: Block & { kind: 'picture' }, room: number): Laid {
  const { hash, alt, most } = block
  const scale = Math.min(room / block.width, most / block.height)
  const [width, height] = [block.width * scale, block.height * scale]
  const tag = tagger.tag('Figure', [], { alt })
  const mark = { kind: 'image' as const, hash, x: 0, y: 0, width, height, tag: tag.id }
  return { strips: [{ before: 0, height, keep: true, marks: [mark] }], tags: [tag] }
}

/** From the dash of a list to its words, mm. */
const INDENT = 4.6

function list(tagger: Tagger, items: readonly Words[], width: number): Laid {
  const laid = items.map((words): { strips: Strip[]; tag: Tag } => {
    const { strips, tags } = paragraph(tagger, words, LOOKS.prose, width - INDENT, {
      before: 1,
      role: 'LBody',
    })
    const dash = paragraph(tagger, '–', LOOKS.prose, width, { before: 0 }).strips[0]!
    const indented = strips.map((strip, i): Strip => {
      const moved = shifted(strip.marks, INDENT, 0)
      return { ...strip, marks: i === 0 ? [...silent(dash).marks, ...moved] : moved }
    })
    return { strips: indented, tag: tagger.tag('LI', tags) }
  })
  return {
    strips: laid.flatMap((l) => l.strips),
    tags: [
      tagger.tag(
        'L',
        laid.map((l) => l.tag),
      ),
    ],
  }
}

/** Free space between two columns, mm. */
const GAP = 8

function beside(tagger: Tagger, block: Block & { kind: 'beside' }, width: number): Laid {
  const leftWidth = (width - GAP) * block.share
  const left = layBlocks(tagger, block.left, leftWidth)
  const right = layBlocks(tagger, block.right, width - GAP - leftWidth)
  const [one, other] = [stacked(left.strips), stacked(right.strips)]
  const marks = [...one.marks, ...shifted(other.marks, leftWidth + GAP, 0)]
  const height = Math.max(one.height, other.height)
  return {
    strips: [{ before: block.before ?? 0, height, keep: false, marks }],
    tags: [...left.tags, ...right.tags],
  }
}

function panel(tagger: Tagger, block: Block & { kind: 'panel' }, width: number): Laid {
  const { padding, bar } = PANEL
  const inner = layBlocks(tagger, block.blocks, width - 2 * padding - bar)
  const strips = inner.strips.map((strip, i): Strip => {
    const above = i === 0 ? padding : strip.before
    const below = i === inner.strips.length - 1 ? padding : 0
    const height = above + strip.height + below
    // A hair's overlap keeps the seams between strips from showing as light lines.
    const ground = [
      surface(0, -0.05, width, height + 0.1, 'linen'),
      surface(0, -0.05, bar, height + 0.1, block.bar),
    ]
    const marks: Mark[] = [...ground, ...shifted(strip.marks, bar + padding, above)]
    return { ...strip, before: i === 0 ? BEFORE.figure : 0, height, marks }
  })
  return { strips, tags: inner.tags }
}

function surface(
  x: number,
  y: number,
  width: number,
  height: number,
  fill: 'linen' | 'madder' | 'woad',
): PathMark {
  const [a, b] = [
    { x, y },
    { x: x + width, y },
  ]
  const [c, d] = [
    { x: x + width, y: y + height },
    { x, y: y + height },
  ]
  return { kind: 'path', paths: [[line(a, b), line(b, c), line(c, d), line(d, a)]], fill, tag: null }
}

/** Height left above a line for the hand, mm. */
const HAND = 11

function writeLines(tagger: Tagger, block: Block & { kind: 'write' }, width: number): Laid {
  const shares = block.labels.reduce((sum, { share }) => sum + share, 0)
  const free = width - GAP * (block.labels.length - 1)
  let x = 0
  const marks: Mark[] = []
  const tags: Tag[] = []
  let height = 0
  for (const { words, share } of block.labels) {
    const own = (free * share) / shares
    const label = paragraph(tagger, words, LOOKS.label, own, { before: 0 })
    const set = stacked(label.strips)
    marks.push(rule('write', x, x + own, HAND), ...shifted(set.marks, x, HAND + 0.8))
    tags.push(...label.tags)
    height = Math.max(height, HAND + 0.8 + set.height)
    x += own + GAP
  }
  return { strips: [{ before: block.before, height, keep: false, marks }], tags }
}
