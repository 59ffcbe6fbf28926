import { phrase } from '../../words/phrase.ts'
import { seam } from '../seams.ts'
import type { Hem, Piece, Seam, Span } from '../types.ts'
import { alone, rectangle } from './rectangle.ts'

/** A band that is folded along its middle, with ties in one with it at both ends. Finished, mm. */
export type Band = { length: number; depth: number; tie: number }

/** Turned in along every edge of a band (common practice), mm. */
const TURNED_IN = 10

const TIED = 'tiedBand'

/** The band and its ties, one strip along the selvedge. */
export function bandPiece({ length, depth, tie }: Band): Piece {
  const all = { allowance: TURNED_IN }
  const name = phrase('draft.piece.tiedBand')
  return rectangle({
    ...{ id: TIED, name, copies: alone(TIED, name), width: 2 * depth, length: length + 2 * tie },
    sides: { bottom: all, right: all, top: all, left: all },
  })
}

/**
 * How a band is sewn on: a gathered edge to its one long edge, the other felled down inside, and the ties closed
 * along their length and at their ends.
 *
 * @param gathered the edges that go into it, in order, longer than the band by the fullness
 */
export function bandSewn(
  { length, depth, tie }: Band,
  gathered: Span[],
  rows: number,
): { seams: Seam[]; hems: Hem[] } {
  const on = (edge: string, from: number, to: number): Span => ({ piece: TIED, copy: TIED, edge, from, to })
  const whole = length + 2 * tie
  const inside = on('left', tie, tie + length)
  const full = gathered.reduce((sum, { from, to }) => sum + to - from, 0)
  const ties = tie > 0 ? [0, 1] : []
  const end = (edge: 'bottom' | 'top'): Seam =>
    seam({
      ...{ id: `${TIED}-end-${edge}`, kind: 'band', name: phrase('draft.seam.tieEnd'), finish: 'faced' },
      a: [on(edge, 0, depth)],
      b: [on(edge, depth, 2 * depth)],
    })
  return {
    seams: [
      {
        ...seam({
          ...{ id: 'band', kind: 'band', name: phrase('draft.seam.band'), finish: 'faced' },
          a: gathered,
          b: [on('right', tie, tie + length)],
        }),
        ratio: full / length,
        ...(rows > 0 ? { gathers: rows } : {}),
      },
      ...ties.map((side) =>
        seam({
          ...{ id: `${TIED}-tie-${side}`, kind: 'band', name: phrase('draft.seam.tie'), finish: 'faced' },
          // The long edges run opposite ways: what begins one ends the other.
          a: [on('right', side === 0 ? 0 : tie + length, side === 0 ? tie : whole)],
          b: [on('left', side === 0 ? tie + length : 0, side === 0 ? whole : tie)],
        }),
      ),
      end('bottom'),
      end('top'),
    ],
    hems: [
      {
        ...{ id: 'band-inside', kind: 'band', name: phrase('draft.hem.band'), spans: [inside], length },
        ...{ depth: TURNED_IN, allowance: TURNED_IN, seen: false, fullness: 0 },
      },
    ],
  }
}
