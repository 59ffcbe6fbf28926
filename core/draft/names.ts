import { type Phrase, type PhraseCode, phrase } from '../words/phrase.ts'
import { HANDS } from './places.ts'
import type { Copy, Draft } from './types.ts'

/** The catalogue's word for a piece, seam or hem, with its place where there are several: `side seam, left`. */
export function named(thing: 'piece' | 'seam' | 'hem', code: string, place?: string): Phrase {
  const name = phrase(`draft.${thing}.${code}` as PhraseCode)
  if (place === undefined) return name
  return phrase(`draft.${thing}.placed`, {
    [thing]: name,
    place: phrase(`draft.place.${place}` as PhraseCode),
  })
}

/** The only copy of a piece. */
export const one = (id: string, code = id): Copy[] => [{ id, name: named('piece', code), mirrored: false }]

/** A left and a right copy; mirror images where the shape or its allowances differ from side to side. */
export const pair = (code: string, mirrored: boolean): Copy[] =>
  HANDS.map((hand) => ({
    ...{ id: hand, name: named('piece', code, hand) },
    mirrored: mirrored && hand === 'left',
  }))

/** Finished sizes of a garment by the catalogue's words for them, mm. */
export const finishedSizes = (sizes: Readonly<Record<string, number>>): Draft['sizes'] =>
  Object.entries(sizes).map(([id, mm]) => ({ id, name: phrase(`draft.finished.${id}` as PhraseCode), mm }))

/** One of a garment's finished sizes, to be told in a sentence. */
export const sizeIn = ({ sizes }: Pick<Draft, 'sizes'>, id: string): { mm: number } => ({
  mm: sizes.find((size) => size.id === id)!.mm,
})
