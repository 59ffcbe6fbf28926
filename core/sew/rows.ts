import type { Hem, Seam } from '../draft/types.ts'
import type { StitchId } from '../words/stitches.ts'
import { minutesOf } from './minutes.ts'
import { LAYERS, MINUTES_PER_ROW, SPREAD } from './parameters.ts'
import { STITCH } from './stitches.ts'
import type { FinishPlan, Row } from './types.ts'

/** Rows that sew a seam: the joining line, then the fell, or both raw edges where they are kept from fraying. */
export function seamRows(
  step: string,
  { id, length, finish }: Seam,
  plan: FinishPlan,
  thickness: number,
): Row[] {
  const row = (purpose: Row['purpose'], stitch: StitchId, mm: number) =>
    rowOf(step, id, purpose, stitch, mm, thickness)
  const join = row('join', plan.seams, length)
  if (finish === 'felled') return [join, row('fell', plan.felling, length)]
  return finish === 'open' && plan.edges !== null ? [join, row('edge', plan.edges, 2 * length)] : [join]
}

/** The one row that sews a hem: neck, slit and the edge of their facing are worked by their own stitch, the rest as seen or hidden. */
export function hemRows(
  step: string,
  { id, kind, length, seen }: Hem,
  plan: FinishPlan,
  thickness: number,
): Row[] {
  const inTheHand = kind === 'neck' || kind === 'slit' || kind === 'facingEdge'
  const stitch = inTheHand ? plan.neck : seen ? plan.hemsSeen : plan.hemsHidden
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
