/** What cloth is of, as far as washing, flame and terms go by it; `other` is whatever else a maker calls it. */
export const FIBRES = ['linen', 'cotton', 'wool', 'silk', 'other'] as const
export type Fibre = (typeof FIBRES)[number]

/** What a maker may call a fibre, in the languages of the planner. */
const WORDS: Record<Exclude<Fibre, 'other'>, RegExp> = {
  linen: /linen|flax|hemp|ramie|nettle|leinen|flachs|hanf|nessel/i,
  cotton: /cotton|fustian|calico|muslin|baumwoll|barchent|kattun|musselin/i,
  wool: /(?<!baum)wool|(?<!baum)woll|worsted|mohair|cashmere|kaschmir|alpa[ck]a|camel|kamel|felt|filz|loden/i,
  silk: /silk|tussah|seide/i,
}

/** The fibres that a maker's words name; `other` where none of them is known. */
export function fibresOf(words: string): Fibre[] {
  const found = FIBRES.filter((one) => one !== 'other' && WORDS[one].test(words))
  return found.length > 0 ? found : ['other']
}

type Clothed = {
  cloth: { fibre?: string }
  others?: Readonly<Partial<Record<string, { fibre?: string }>>> | undefined
}

/** What the maker calls the fibre of each cloth a garment is cut from. */
export const fibreWords = ({ cloth, others = {} }: Clothed): string[] =>
  [cloth, ...Object.values(others)].map((one) => one?.fibre ?? '')
