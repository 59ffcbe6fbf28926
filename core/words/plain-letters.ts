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

/** So many ways of writing a word are tried at most: names have few such letters. */
const MOST_SPELLINGS = 64

/** Every way in which a word may be written that was typed in plain letters, the word as it was typed among them. */
export function spellingsOf(typed: string): string[] {
  const spellings = Array.from({ length: typed.length + 1 }, (): string[] => [])
  spellings[0]!.push('')
  for (let i = 0; i < typed.length; i++) {
    const [plain, ...others] = [typed[i]!, ...lettersAt(typed, i)]
    spellings[i + 1]!.unshift(...spellings[i]!.map((one) => one + plain))
    for (const letter of others)
      spellings[i + WRITTEN[letter]!.length]!.push(...spellings[i]!.map((one) => one + letter))
    for (const further of spellings.slice(i + 1)) further.splice(MOST_SPELLINGS)
  }
  return spellings[typed.length]!
}

/** The letters that what stands at a place of a word may be typed for. */
const lettersAt = (typed: string, at: number): string[] =>
  Object.entries(WRITTEN).flatMap(([letter, plain]) => (typed.startsWith(plain, at) ? [letter] : []))
