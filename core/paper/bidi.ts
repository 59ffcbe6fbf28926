import bidiFactory from 'bidi-js'
import { characters } from './fonts.ts'

// Its types are those of a CommonJS module; what Node loads is the ES one, whose default is the factory itself.
const bidi = (bidiFactory as unknown as typeof bidiFactory.default)()

/** Letters that are written from right to left: without one of them nothing of a text is turned round. */
const LEFTWARD = /[\p{Script=Hebrew}\p{Script=Arabic}]/u

/** Signs that set a stretch of text apart from the direction around it; they are not seen. */
export const ISOLATES = /[\u2066-\u2069]/g

/**
 * The level of every UTF-16 unit of a line by the Unicode Bidirectional Algorithm (UAX #9), in a sheet that is read from
 * left to right; those of isolates are left out. Odd levels run from right to left.
 */
export function levelsOf(text: string): number[] | undefined {
  if (!LEFTWARD.test(text)) return undefined
  const { levels } = bidi.getEmbeddingLevels(text, 'ltr')
  return Array.from(levels).filter((_, i) => text[i]!.search(ISOLATES) === -1)
}

/** Parts of one line in the order they stand on the sheet from the left (UAX #9, rule L2). */
export function inSight<P extends { level: number }>(parts: readonly P[]): P[] {
  const order = [...parts]
  const highest = Math.max(0, ...order.map(({ level }) => level))
  for (let level = highest; level > 0; level--) {
    for (let from = 0; from < order.length; from++) {
      if (order[from]!.level < level) continue
      let to = from
      while (to + 1 < order.length && order[to + 1]!.level >= level) to++
      order.splice(from, to - from + 1, ...order.slice(from, to + 1).reverse())
      from = to
    }
  }
  return order
}

/**
 * The text of a run as the font engine takes it. It turns letters of Hebrew and Arabic round by itself; brackets are
 * turned to face the other way (rule L4), and a run of nothing but signs is put in order here.
 */
export function asShaped(text: string, level: number): string {
  if (level % 2 === 0) return text
  const faced = characters(text).map((one) => bidi.getMirroredCharacter(one) ?? one)
  return (LEFTWARD.test(text) ? faced : faced.reverse()).join('')
}
