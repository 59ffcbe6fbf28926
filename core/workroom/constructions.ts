import type { Construction } from '../draft/construction.ts'
import { CONSTRUCTIONS, constructionOf } from '../draft/constructions.ts'
import { constructionFrom, ownId, ownOf } from '../draft/own/construct.ts'
import { getOwn, listOwn, type OwnRow } from '../store/own-constructions.ts'
import { refusingAt } from '../words/refusal.ts'
import type { Context } from './request.ts'

const made = ({ definition, family, version }: OwnRow): Construction =>
  constructionFrom(definition, ownId(family, version))

/**
 * A construction by its id, the planner's or one of the maker's own: of those the version named, else the latest.
 * @throws Refusal at `field` when there is none
 */
export function constructionFor(
  id: string,
  { store }: Pick<Context, 'store'>,
  field = 'construction',
): Construction {
  const own = ownOf(id)
  if (own !== undefined) return made(getOwn(store.db, own.family, own.version, field))
  return refusingAt(field, () => constructionOf(id))
}

/** Every construction there is: the planner's, then the maker's own in their latest version. */
export const allConstructions = ({ store }: Pick<Context, 'store'>): Construction[] => [
  ...CONSTRUCTIONS,
  ...listOwn(store.db).map((row) => ({ ...made(row), id: ownId(row.family) })),
]
