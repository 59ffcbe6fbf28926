import { ATTENDANCE, type AttendanceId } from '../sew/operations.ts'
import { minutesOf } from '../sew/sewing.ts'
import type { Ways } from '../sew/types.ts'
import type { Work } from '../sew/work.ts'

/** How often each is done: once for the whole order, or once for each garment. */
const FOR: Record<AttendanceId, 'order' | 'garment'> = {
  consult: 'order',
  source: 'order',
  office: 'order',
  putRight: 'garment',
}

/** Of mending there is less to talk over, and nothing to put right (common practice). */
const MENDING: Record<AttendanceId, number> = { consult: 0.2, source: 0, office: 0.35, putRight: 0 }

/**
 * The time around one garment, in minutes of the catalogue: its share of what is talked over, sought out and written for the whole
 * order, and the small alterations that are included.
 *
 * @param garments on the same order
 */
export function attendanceOf(garments: number, mending: boolean, ways: Pick<Ways, 'minutes'>): Work {
  const part = (id: AttendanceId) => (FOR[id] === 'order' ? 1 / garments : 1) * (mending ? MENDING[id] : 1)
  return Object.fromEntries(ATTENDANCE.map((id) => [id, minutesOf(id, ways) * part(id)]))
}
