import type { OperationId } from '../draft/types.ts'
import type { StitchId } from '../words/stitches.ts'
import type { Skill } from './types.ts'

/** Work that is not a row of stitches. Names stand under `sew.operation.<id>`. */
export type Operation = {
  unit: 'squareMetre' | 'metre' | 'piece' | 'each'
  /** Minutes of hands-on work for one unit; soaking, drying and hanging go on by themselves. */
  minutes: number
  skill: Skill
  /** Thread it takes: so many mm of a stitch for one unit. */
  sewn?: { stitch: StitchId; mm: number }
}

/**
 * Around the garment itself: what is talked over, sought out, written and put right. Not steps of the making, but
 * hours all the same, and paid like them.
 */
export const ATTENDANCE = ['consult', 'source', 'office', 'putRight'] as const
export type AttendanceId = (typeof ATTENDANCE)[number]

/** Everything with a time of its own that is not a stitch. */
export type TimedId = OperationId | AttendanceId

/**
 * Default minutes, and lengths of stitching in a buttonhole of 20 mm worked along both sides and ends, an
 * eyelet 5 mm wide and what holds a button, hook or tape: common practice; a workroom's own logged times
 * are to replace the minutes.
 */
export const OPERATION: Record<TimedId, Operation> = {
  consult: { unit: 'each', minutes: 45, skill: 'attending' },
  source: { unit: 'each', minutes: 30, skill: 'attending' },
  office: { unit: 'each', minutes: 30, skill: 'attending' },
  prewash: { unit: 'squareMetre', minutes: 5, skill: 'pressing' },
  press: { unit: 'squareMetre', minutes: 5, skill: 'pressing' },
  layOut: { unit: 'piece', minutes: 4, skill: 'cutting' },
  cutOut: { unit: 'metre', minutes: 1.5, skill: 'cutting' },
  cutPiece: { unit: 'piece', minutes: 0.5, skill: 'cutting' },
  clipNeck: { unit: 'metre', minutes: 8, skill: 'handSewing' },
  reinforceSlit: { unit: 'each', minutes: 10, skill: 'handSewing' },
  setGusset: { unit: 'each', minutes: 6, skill: 'handSewing' },
  pressSeams: { unit: 'metre', minutes: 1.2, skill: 'pressing' },
  tryOn: { unit: 'each', minutes: 30, skill: 'fitting' },
  hangBias: { unit: 'each', minutes: 5, skill: 'fitting' },
  levelHem: { unit: 'metre', minutes: 6, skill: 'fitting' },
  setGathers: { unit: 'metre', minutes: 12, skill: 'handSewing' },
  setPleat: { unit: 'each', minutes: 1.5, skill: 'handSewing' },
  sewButton: { unit: 'each', minutes: 5, skill: 'handSewing', sewn: { stitch: 'stab', mm: 60 } },
  workButtonhole: { unit: 'each', minutes: 15, skill: 'handSewing', sewn: { stitch: 'buttonhole', mm: 48 } },
  workEyelet: { unit: 'each', minutes: 9, skill: 'handSewing', sewn: { stitch: 'eyelet', mm: 16 } },
  threadLace: { unit: 'each', minutes: 8, skill: 'handSewing' },
  sewHook: { unit: 'each', minutes: 6, skill: 'handSewing', sewn: { stitch: 'overcast', mm: 40 } },
  sewTape: { unit: 'each', minutes: 5, skill: 'handSewing', sewn: { stitch: 'backstitch', mm: 60 } },
  toile: { unit: 'each', minutes: 150, skill: 'machineSewing' },
  fitToile: { unit: 'each', minutes: 60, skill: 'fitting' },
  growthTuck: { unit: 'metre', minutes: 10, skill: 'handSewing', sewn: { stitch: 'running', mm: 1000 } },
  sewTrim: { unit: 'metre', minutes: 15, skill: 'handSewing', sewn: { stitch: 'slipstitch', mm: 2000 } },
  unpick: { unit: 'metre', minutes: 6, skill: 'handSewing' },
  darn: { unit: 'each', minutes: 25, skill: 'handSewing', sewn: { stitch: 'running', mm: 1500 } },
  drawCord: { unit: 'each', minutes: 8, skill: 'handSewing' },
  finalPress: { unit: 'squareMetre', minutes: 4, skill: 'pressing' },
  pack: { unit: 'each', minutes: 10, skill: 'attending' },
  putRight: { unit: 'each', minutes: 20, skill: 'fitting' },
}
