import type { PhraseCode } from '../words/phrase.ts'
import type { Reader } from '../words/say.ts'

/** What has an id and a name in the catalogue. */
export type NameKind =
  | 'measure'
  | 'choice'
  | 'choiceValue'
  | 'stitch'
  | 'operation'
  | 'stage'
  | 'construction'

/** Where the catalogue keeps the names of each kind: code prefixes, tried in order. */
const PREFIXES: Record<NameKind, readonly string[]> = {
  measure: ['measure.name', 'measure'],
  choice: ['draft.choice', 'choice'],
  choiceValue: ['draft.value', 'draft.choice.value'],
  stitch: ['sew.stitch', 'stitch'],
  operation: ['sew.operation', 'operation'],
  stage: ['paper.stage'],
  construction: ['draft.construction', 'construction'],
}

/**
 * The name of a measure, choice, stitch, operation or stage as the catalogue has it. An id that came from a
 * snapshot older than the catalogue is spelt out in words, so an old order still prints.
 */
export function nameOf(kind: NameKind, id: string, reader: Reader): string {
  const known = PREFIXES[kind]
    .flatMap((prefix) => [`${prefix}.${id}`, `${prefix}.${id}.name`])
    .find((code): code is PhraseCode => Object.hasOwn(reader.catalogue, code))
  return known === undefined ? spelt(id) : reader.catalogue[known]
}

/** `upperArmGirth` → `upper arm girth`; `lockstitch301` → `lockstitch 301`. */
const spelt = (id: string): string => id.replace(/(?<=[a-z])(?=[A-Z0-9])/g, ' ').toLowerCase()

/** A name as it begins a line. */
export const capital = (name: string): string => name.slice(0, 1).toUpperCase() + name.slice(1)
