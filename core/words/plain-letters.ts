/** Letters that are no plain letter with a mark on it, as whoever has not the key for them types them. */
const WRITTEN: Record<string, string> = {
  ...{ ł: 'l', ø: 'o', đ: 'd', ð: 'd', þ: 'th', æ: 'ae', œ: 'oe', ß: 'ss', ı: 'i', ħ: 'h' },
}

/** A name as it is typed without capitals and marks, to find it by. */
export const plainLetters = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[łøđðþæœßıħ]/g, (letter) => WRITTEN[letter]!)

/** Whether each word that is typed begins a word of the name. */
export function namedSo(name: string, typed: string): boolean {
  const words = wordsOf(name)
  return wordsOf(typed).every((sought) => words.some((word) => word.startsWith(sought)))
}

const wordsOf = (text: string): string[] => plainLetters(text).match(/[\p{L}\p{N}]+/gu) ?? []
