import type { Dye } from '../draw/ink.ts'
import { asShaped, ISOLATES, inSight, levelsOf } from './bidi.ts'
import { characters, plainText, runsOf, textWidth } from './fonts.ts'
import type { FaceId } from './page.ts'
import type { Look } from './style.ts'

/** Words, all in one look or parts of them in a face or dye of their own. */
export type Span = { text: string; face?: FaceId; dye?: Dye }
export type Words = string | readonly Span[]

/** Words of one face, dye and direction within a line, `x` mm from the line's left end. */
export type LineRun = { text: string; face: FaceId; dye: Dye; x: number; width: number }
/** `text` is what the line says, in the order it is read; its runs stand in the order they are seen. */
export type Line = { text: string; runs: LineRun[]; width: number }

/** A part of a word in one style and direction; words end where a line may break. */
type Part = { text: string; face: FaceId; dye: Dye; level: number }
type Word = Part[]

/** Words on one line, as wide as they are; `size` in points. */
export const oneLine = (text: string, look: Look): Line => setLine(wordsOf([{ text }], look).flat(), look)

/** One line; of what does not fit the end is left out, and three points say so. */
export function shortened(text: string, look: Look, width: number): Line {
  const [line, more] = breakLines(text, look, width)
  if (more === undefined) return line!
  const kept = breakLines(text, look, width - textWidth(' …', look.face, look.size))[0]!
  return oneLine(`${kept.text.trimEnd()}\u00a0…`, look)
}

/**
 * Breaks words into lines no wider than `width` mm: at spaces and after hyphens between letters, and
 * within a word only when the word alone is wider than the line. A line feed starts a new line.
 *
 * @throws Refusal for a character that no font has
 */
export function breakLines(words: Words, look: Look, width: number): Line[] {
  const spans = typeof words === 'string' ? [{ text: words }] : words
  return hardLines(spans).flatMap((line) => fill(wordsOf(line, look), look, width))
}

/** The same spans, parted at line feeds. */
function hardLines(spans: readonly Span[]): Span[][] {
  const lines: Span[][] = [[]]
  for (const span of spans) {
    const [first = '', ...more] = span.text.split(/\r\n?|\n/)
    lines.at(-1)!.push({ ...span, text: first })
    for (const text of more) lines.push([{ ...span, text }])
  }
  return lines
}

/** Figures and their units on one line: `56 cm`, `3 h 20`. */
const held = (text: string): string =>
  text.replace(/(?<=\d|[½⅛¼⅜⅝¾⅞]) (?=(?:mm|cm|in|m|min|h)\b)|(?<=\d h) (?=\d\d\b)/g, '\u00a0')

function wordsOf(spans: readonly Span[], look: Look): Word[] {
  const typed = spans.map((span) => ({ ...span, text: held(plainText(span.text, ISOLATES)) }))
  const levels = levelsOf(typed.map(({ text }) => text).join(''))
  const plain = typed.map((span) => ({ ...span, text: span.text.replace(ISOLATES, '') }))
  const words: Word[] = []
  let open = false
  let at = 0
  for (const { text, face = look.face, dye = look.dye } of plain) {
    const pieces = text.match(/[^ ]+ ?| /g) ?? []
    for (const piece of pieces.flatMap((p) => p.split(/(?<=\p{L}-)(?=\p{L})/u))) {
      const parts = runsOf(piece, face).flatMap((run) => {
        const own = byLevel(run.text, at, levels)
        at += run.text.length
        return own.map((one): Part => ({ ...one, face: run.face, dye }))
      })
      if (open) words.at(-1)!.push(...parts)
      else words.push(parts)
      open = !/[ -]$/.test(piece)
    }
  }
  return words
}

/** A text cut where its direction changes; `at` is where it begins in the line whose levels are given. */
function byLevel(text: string, at: number, levels: readonly number[] | undefined) {
  if (levels === undefined) return [{ text, level: 0 }]
  const parts: { text: string; level: number }[] = []
  for (let i = 0; i < text.length; i++) {
    const level = levels[at + i]!
    const last = parts.at(-1)
    if (last?.level === level) last.text += text[i]
    else parts.push({ text: text[i]!, level })
  }
  return parts
}

function fill(words: readonly Word[], look: Look, width: number): Line[] {
  const lines: Line[] = []
  let current: Word = []
  const close = () => {
    lines.push(withSpace(setLine(current, look), current))
    current = []
  }
  for (const word of words) {
    if (current.length > 0 && setLine([...current, ...word], look).width > width) close()
    if (setLine(word, look).width <= width) {
      current.push(...word)
      continue
    }
    for (const part of word.flatMap((p) => characters(p.text).map((text) => ({ ...p, text })))) {
      if (current.length > 0 && setLine([...current, part], look).width > width) close()
      current.push(part)
    }
  }
  lines.push(setLine(current, look))
  return lines
}

/**
 * A line that runs on into the next keeps the space between their words, unseen at its end: read aloud or
 * copied, the words would run together without it.
 */
function withSpace(line: Line, parts: readonly Part[]): Line {
  const last = line.runs.at(-1)
  if (last === undefined || !parts.at(-1)!.text.endsWith(' ') || parts.some(({ level }) => level > 0))
    return line
  return { ...line, runs: [...line.runs.slice(0, -1), { ...last, text: `${last.text} ` }] }
}

/** A line's parts joined where they share a style and direction, in the order they are seen, without the spaces at its ends. */
function setLine(parts: readonly Part[], look: Look): Line {
  const joined: Part[] = []
  for (const part of parts) {
    const last = joined.at(-1)
    if (last?.face === part.face && last.dye === part.dye && last.level === part.level) last.text += part.text
    else joined.push({ ...part })
  }
  const [first, last] = [joined[0], joined.at(-1)]
  if (first !== undefined) first.text = first.text.replace(/^ +/, '')
  if (last !== undefined) last.text = last.text.replace(/ +$/, '')
  const kept = joined.filter(({ text }) => text !== '')
  let x = 0
  const runs = inSight(kept).map(({ text, level, face, dye }): LineRun => {
    const shaped = asShaped(text, level)
    const width = textWidth(shaped, face, look.size)
    x += width
    return { text: shaped, face, dye, x: x - width, width }
  })
  return { text: kept.map(({ text }) => text).join(''), runs, width: x }
}
