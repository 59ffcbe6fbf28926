import { type Phrase, type PhraseCode, phrase } from '../words/phrase.ts'
import { fibresOf } from './fibres.ts'

const BURNING = ['linen', 'cotton', 'silk', 'wool', 'synthetic', 'other'] as const
type Burning = (typeof BURNING)[number]

/**
 * How each fibre takes fire. Linen, cotton and thin silk flare, synthetics melt (common practice); wool is slow to:
 * 16 CFR 1610.1(d) exempts it from the test of clothing whatever its weight (from memory).
 */
const BURNS: Record<Burning, PhraseCode> = {
  linen: 'caution.burns.linen',
  cotton: 'caution.burns.cotton',
  silk: 'caution.burns.silk',
  wool: 'caution.burns.wool',
  synthetic: 'caution.burns.synthetic',
  other: 'caution.burns.other',
}

/** What a maker may call what melts, in the languages of the planner. */
const MELTS = /poly|nylon|acryl|elastan|lycra|spandex|synthetic|synthetik|kunstfaser/i

function burningOf(words: string): Burning[] {
  const fibres = fibresOf(words)
  return MELTS.test(words) ? [...fibres.filter((one) => one !== 'other'), 'synthetic'] : fibres
}

/** What to say of flame for a garment of these cloths, each by the words its maker has for its fibre, and of no other. */
export function flameOf(cloths: readonly string[]): Phrase {
  const found = new Set(cloths.flatMap(burningOf))
  const burns = BURNING.filter((one) => found.has(one)).map((one) => phrase(BURNS[one]))
  const [first = phrase(BURNS.other), ...rest] = burns
  const all = rest.reduce((before, next) => phrase('caution.burns.and', { before, next }), first)
  return phrase('caution.flame', { burns: all })
}

/** The cautions of a draft, which knows no cloth, as they are said of these cloths. */
export const saidOfCloths = (cautions: readonly Phrase[], cloths: readonly string[]): Phrase[] =>
  cautions.map((one) => (one.code === 'draft.caution.flame' ? flameOf(cloths) : one))
