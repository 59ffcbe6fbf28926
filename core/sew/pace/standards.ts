import { OPERATION, type TimedId } from '../operations.ts'
import { STITCH } from '../stitches.ts'
import type { Standards } from '../types.ts'
import { isStitch, WORK_IDS, type WorkId } from '../work.ts'
import { type Pace, UNKNOWN_PACE } from './pace.ts'

type Own = Pick<Standards, 'perMinute' | 'minutes'>

/** What the workroom's own standard is of the catalogue's: 1 where it has set none. */
export const ownStandard = (id: WorkId, { perMinute, minutes }: Own): number =>
  isStitch(id)
    ? STITCH[id].pace / (perMinute[id] ?? STITCH[id].pace)
    : ownMinutes(id, minutes) / OPERATION[id].minutes

const ownMinutes = (id: TimedId, minutes: Own['minutes']): number => {
  const own = minutes[id]
  // None at all is no time to take a logarithm of: what is not done has no pace either.
  return own === undefined || own === 0 ? OPERATION[id].minutes : own
}

/** The pace of a workroom that has logged nothing: its own standards where it has set some, the catalogue's elsewhere. */
export const paceBefore = (own: Own): Pace => ({
  ...UNKNOWN_PACE,
  mean: WORK_IDS.map((id, i) => UNKNOWN_PACE.mean[i]! + Math.log(ownStandard(id, own))),
})
