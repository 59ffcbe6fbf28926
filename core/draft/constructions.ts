import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import type { Construction } from './construction.ts'
import { goredUndertunic } from './constructions/gored-undertunic.ts'

/** Every garment the planner can draft. */
export const CONSTRUCTIONS: readonly Construction[] = [goredUndertunic]

/** @throws Refusal when there is no such construction */
export function constructionOf(id: string): Construction {
  const found = CONSTRUCTIONS.find((construction) => construction.id === id)
  if (found !== undefined) return found
  throw new Refusal(
    phrase('refusal.draft.unknownConstruction', { id, known: CONSTRUCTIONS.map((c) => c.id).join(', ') }),
  )
}
