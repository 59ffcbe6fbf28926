import { type Cut, cutOf, type Habits, type Wanted } from '../price/estimate.ts'

/** Garments that are kept drafted and laid: those of one evening at the quote desk. */
const KEPT = 24
const CUTS = new Map<string, Cut>()

/**
 * A garment drafted and laid; the same one asked for again, with another price or sewn otherwise, is not laid again.
 * Nothing but what is in the key decides on the outcome, so it may be kept for as long as one likes.
 */
export function cutFor(wanted: Wanted, habits: Habits): Cut {
  const { construction, body, choices, extras, cloth, others, lay } = wanted
  const { unit, buying } = habits
  const id = typeof construction === 'string' ? construction : construction.id
  // What a maker wrote herself is told by its definition and not by its id, which another store may use too.
  if (id.startsWith('own:')) return cutOf(wanted, habits)
  const key = JSON.stringify([id, body, choices, extras, cloth, others, lay, unit, buying])
  const known = CUTS.get(key)
  const cut = known ?? cutOf(wanted, habits)
  CUTS.delete(key)
  CUTS.set(key, cut)
  for (const oldest of CUTS.keys()) {
    if (CUTS.size <= KEPT) break
    CUTS.delete(oldest)
  }
  return cut
}
