import type { Hem } from '../draft/types.ts'
import type { StitchId } from '../words/stitches.ts'
import type { Row } from './types.ts'

/** What a row of stitches is for, as a maker asks for it: the order in which she meets it. */
export const WORKED = [
  'gathers',
  'seams',
  'felling',
  'edges',
  'laid',
  'neck',
  'hemsSeen',
  'hemsHidden',
  'tacked',
  'reinforced',
] as const
export type Worked = (typeof WORKED)[number]

/**
 * Neck, slit and the edge of their facing are worked in the hand; what is turned in and laid on another cloth is felled
 * to it; the rest is a hem, seen or hidden.
 */
export function hemWorked({ kind, seen }: Pick<Hem, 'kind' | 'seen'>): Worked {
  if (kind === 'tacked') return 'tacked'
  if (kind === 'neck' || kind === 'slit' || kind === 'facingEdge') return 'neck'
  if (kind === 'lining' || kind === 'laidOn') return 'laid'
  return seen ? 'hemsSeen' : 'hemsHidden'
}

const OF_PURPOSE: Record<Exclude<Row['purpose'], 'hem'>, Worked> = {
  ...{ gather: 'gathers', join: 'seams', fell: 'felling', edge: 'edges', reinforce: 'reinforced' },
}

/** The stitches these rows are sewn in, each with what it is used for, once. */
export function stitchesUsed(
  rows: readonly Pick<Row, 'of' | 'purpose' | 'stitch'>[],
  hems: readonly Hem[],
): { worked: Worked; stitch: StitchId }[] {
  const used = rows.map(({ of, purpose, stitch }) => {
    const hem = hems.find(({ id }) => id === of)
    return {
      worked: purpose !== 'hem' ? OF_PURPOSE[purpose] : hem === undefined ? 'hemsSeen' : hemWorked(hem),
      stitch,
    }
  })
  return WORKED.flatMap((worked) => {
    const stitches = new Set(used.filter((one) => one.worked === worked).map(({ stitch }) => stitch))
    return [...stitches].map((stitch) => ({ worked, stitch }))
  })
}
