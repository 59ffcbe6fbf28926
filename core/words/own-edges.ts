import { type Phrase, phrase } from './phrase.ts'

/** The word for an edge of a piece of the maker's own; a part of a marked edge, `right-2`, has its number. */
export function edgeWord(edge: string): Phrase {
  const [name, number] = edge.split('-')
  const word = phrase(`own.edge.${name}` as 'own.edge.hem')
  return number === undefined ? word : phrase('own.edge.part', { edge: word, number: Number(number) })
}
