import { type PhraseCode, phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'

/** What can be looked for by an id, named in the catalogue under `store.kind.<id>`. */
export type Kind =
  | 'client'
  | 'measurementSet'
  | 'cloth'
  | 'quote'
  | 'commission'
  | 'garment'
  | 'step'
  | 'document'
  | 'remnant'
  | 'ownConstruction'
  | 'timeEntry'
  | 'person'
  | 'absence'
  | 'note'
  | 'picture'
  | 'fitting'
  | 'stockLength'
  | 'payment'
  | 'invoice'

/** @throws Refusal at `field` when nothing was found under that id */
export function found<T>(row: T | undefined, kind: Kind, id: string, field = 'id'): T {
  if (row !== undefined) return row
  throw new Refusal(
    phrase('refusal.store.notFound', { kind: phrase(`store.kind.${kind}` as PhraseCode), id }),
    field,
  )
}

/**
 * Holds an update against the revision the maker saw.
 * @throws Refusal when someone else has changed the row meanwhile
 */
export function refuseStale(row: { revision: number }, seen: number): void {
  if (row.revision !== seen) throw new Refusal(phrase('refusal.store.stale'), 'revision')
}
