import type { Hem, Seam } from '../draft/types.ts'
import type { StitchId } from '../words/stitches.ts'
import { timeOf } from './pace/time-of.ts'
import { LAYERS, MINUTES_PER_ROW } from './parameters.ts'
import { STITCH } from './stitches.ts'
import type { FinishPlan, Row, Ways } from './types.ts'
import { hemWorked } from './worked.ts'

/** What is sewn, and how: thickness of one layer of the cloth in mm. */
export type Sewn = { thickness: number; ways: Ways }

/** Rows that sew a seam: gathering threads where it has them, the joining line, then the fell, or both raw edges where they are kept from fraying. */
export function seamRows(
  step: string,
  { id, length, finish, ratio, gathers = 0 }: Seam,
  plan: FinishPlan,
  sewn: Sewn,
): TimedRow[] {
  const row = (purpose: Row['purpose'], stitch: StitchId, mm: number) =>
    rowOf(step, id, purpose, stitch, mm, sewn)
  // Gathering threads are run by hand under every plan: they are drawn up, and stay until the seam is sewn.
  const drawn = Array.from({ length: gathers }, () => row('gather', 'gathering', length * ratio))
  const joined = [...drawn, row('join', plan.seams, length)]
  if (finish === 'felled') return [...joined, row('fell', plan.felling, length)]
  return finish === 'open' && plan.edges !== null ? [...joined, row('edge', plan.edges, 2 * length)] : joined
}

/** The one row that sews a hem, in the stitch of what it is worked as. */
export function hemRows(step: string, hem: Hem, plan: FinishPlan, sewn: Sewn): TimedRow[] {
  const worked = hemWorked(hem)
  const stitch =
    worked === 'tacked'
      ? 'tacking'
      : worked === 'laid'
        ? plan.felling
        : worked === 'neck' || worked === 'hemsSeen'
          ? plan[worked]
          : plan.hemsHidden
  return [rowOf(step, hem.id, 'hem', stitch, hem.length, sewn)]
}

/** One row, and its minutes by the catalogue. */
export type TimedRow = { row: Row; standard: number }

function rowOf(
  step: string,
  of: string,
  purpose: Row['purpose'],
  stitch: StitchId,
  length: number,
  { thickness, ways }: Sewn,
): TimedRow {
  const density = ways.density[stitch] ?? STITCH[stitch].density
  const stitches = (length / 10) * density
  const standard = stitches / STITCH[stitch].pace + MINUTES_PER_ROW
  const through = thickness * LAYERS[purpose]
  return {
    standard,
    row: {
      ...{ step, of, purpose, stitch, length, density },
      thread: length * STITCH[stitch].thread(10 / density, through),
      minutes: timeOf(ways.pace, [{ [stitch]: standard }]),
    },
  }
}
