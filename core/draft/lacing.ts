/** How an opening is laced: eyelets in all, from one to the next on a side, and from side to side. mm. */
export type Lacing = { eyelets: number; spacing: number; across: number }

/** In from the edge to the middle of an eyelet (common practice), mm. */
const INSET = 8
/** Lace to tie with and to open by, beyond what lies in the eyelets (common practice), mm. */
const TAILS = 600

/** Eyelets along both edges of an opening, set off against each other so that one lace runs in a spiral. */
export function lacingOf(opening: number, spacing: number, gap: number): Lacing {
  const side = Math.max(2, Math.floor(opening / spacing) + 1)
  return { eyelets: 2 * side, spacing, across: gap + 2 * INSET }
}

/**
 * Length of one lace spiralling through N eyelets, w apart across and p apart along each side: each turn crosses to
 * an eyelet half a spacing further on, (N − 1)·√(w² + (p ÷ 2)²), and the tails. mm.
 */
export const laceLength = ({ eyelets, spacing, across }: Lacing, tails = TAILS): number =>
  (eyelets - 1) * Math.hypot(across, spacing / 2) + tails
