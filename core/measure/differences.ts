import type { Body } from './body.ts'
import { MEASURE_IDS, type MeasureId } from './vocabulary.ts'

/** How a measure of one set differs from that of another; a side it was not taken on is missing. mm */
export type Difference = { measure: MeasureId; before?: number; after?: number; by?: number }

/** Nearer than this, no tape tells them apart, mm. */
const SAME = 0.5

/** What has changed from one set of measures to another, in the order one takes them. */
export function differences(before: Body['measures'], after: Body['measures']): Difference[] {
  return MEASURE_IDS.flatMap((measure): Difference[] => {
    const [was, is] = [before[measure]?.mm, after[measure]?.mm]
    if (was === undefined && is === undefined) return []
    if (was === undefined) return [{ measure, after: is! }]
    if (is === undefined) return [{ measure, before: was }]
    return Math.abs(is - was) < SAME ? [] : [{ measure, before: was, after: is, by: is - was }]
  })
}
