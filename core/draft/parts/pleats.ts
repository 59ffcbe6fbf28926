import type { TakenUp } from '../seams.ts'
import type { Pleats } from '../types.ts'

/** Rows of gathering thread at a waist, and rows that hold cartridge pleats (common practice). */
const ROWS = { gathered: 3, cartridge: 2 }
/** Depth of a pleat unless it is asked otherwise: of a folded one, and of a cartridge (common practice), mm. */
const DEPTH = { folded: 25, cartridge: 8 }

/**
 * How `cloth` mm are taken up into a band: drawn on threads; in folds, each of which takes twice its depth (knife:
 * L = F + 2dn) or four times it (box: two folds against each other); or in cartridges, standing tubes on two threads.
 * The depth asked for is changed a little, so that whole pleats come out even.
 */
export function takenUp(
  way: 'gathered' | Pleats['kind'],
  cloth: number,
  band: number,
  asked?: number | undefined,
): TakenUp {
  if (way === 'gathered') return { gathers: ROWS.gathered }
  if (way === 'cartridge') {
    const depth = asked ?? DEPTH.cartridge
    const count = Math.max(1, Math.round(cloth / (2 * depth)))
    return { pleats: { kind: way, depth, count }, gathers: ROWS.cartridge }
  }
  const folds = way === 'knife' ? 2 : 4
  const count = Math.max(1, Math.round((cloth - band) / (folds * (asked ?? DEPTH.folded))))
  return { pleats: { kind: way, depth: (cloth - band) / (folds * count), count } }
}
