import { plainLetters } from '../../core/words/plain-letters.ts'

/** Words as they are compared; a number with its strokes is one. */
const plainWords = (text: string): string[] => plainLetters(text).match(/[\p{L}\p{N}-]+/gu) ?? []

/**
 * How a typed text stands to what something is called: how many of its words begin a word of it, and what is left of the
 * text, as it was typed. In `new quote ann` two words call for a new quote, and `ann` says for whom.
 */
export function matched(text: string, called: string): { words: number; rest: string } {
  const names = plainWords(called)
  const typed = text.split(/\s+/).filter((word) => word !== '')
  const rest = typed.filter((word) => {
    const [plain = ''] = plainWords(word)
    return plain === '' || !names.some((name) => name.startsWith(plain))
  })
  return { words: typed.length - rest.length, rest: rest.join(' ') }
}
