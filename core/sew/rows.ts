import type { Hem, Seam } from '../draft/types.ts'
import type { StitchId } from '../words/stitches.ts'
import { minutesOf } from './minutes.ts'
import { LAYERS, MINUTES_PER_ROW, SPREAD } from './parameters.ts'
import { STITCH } from './stitches.ts'
import type { FinishPlan, Row } from './types.ts'

/** Rows that sew a seam: gathering threads where it has them, the joining line, then the fell, or both raw edges where they are kept from fraying. */
export function seamRows(
  step: string,
  { id, length, finish, ratio, gathers = 0 }: Seam,
  plan: FinishPlan,
  thickness: number,
): Row[] {
  const row = (purpose: Row['purpose'], stitch: StitchId, mm: number) =>
    rowOf(step, id, purpose, stitch, mm, thickness)
  // Gathering threads are run by hand under every plan: they are drawn up, and stay until the seam is sewn.
  const drawn = Array.from({ length: gathers }, () => row('gather', 'running', length * ratio))
  const joined = [...drawn, row('join', plan.seams, length)]
  if (finish === 'felled') return [...joined, row('fell', plan.felling, length)]
  return finish === 'open' && plan.edges !== null ? [...joined, row('edge', plan.edges, 2 * length)] : joined
}

/**
 * The one row that sews a hem: neck, slit and the edge of their facing are worked by their own stitch, what is
 * turned in and laid on another cloth is felled, the rest sewn as seen or hidden.
 */
export function hemRows(
  step: string,
  { id, kind, length, seen }: Hem,
  plan: FinishPlan,
  thickness: number,
): Row[] {
  const inTheHand = kind === 'neck' || kind === 'slit' || kind === 'facingEdge'
  const laid = kind === 'lining' || kind === 'laidOn'
  const plain = laid ? plan.felling : seen ? plan.hemsSeen : plan.hemsHidden
  const stitch = kind === 'tacked' ? 'running' : inTheHand ? plan.neck : plain
  return [rowOf(step, id, 'hem', stitch, length, thickness)]
}

function rowOf(
  step: string,
  of: string,
  purpose: Row['purpose'],
  stitch: StitchId,
  length: number,
  thickness: number,
): Row {
  const { density, pace, thread, work } = STITCH[stitch]
  const stitches = (length / 10) * density
  const mean = stitches / pace + MINUTES_PER_ROW
  const through = thickness * LAYERS[purpose]
  return {
    ...{ step, of, purpose, stitch, length, density },
    thread: length * thread(10 / density, through),
    minutes: minutesOf(mean, mean * SPREAD[work]),
  }
}
