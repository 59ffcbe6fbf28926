import type { OperationId } from '../draft/types.ts'
import type { Skill } from './types.ts'

/** Work that is not a row of stitches. Names stand under `sew.operation.<id>`. */
export type Operation = {
  unit: 'squareMetre' | 'metre' | 'piece' | 'each'
  /** Minutes of hands-on work for one unit; soaking, drying and hanging go on by themselves. */
  minutes: number
  skill: Skill
}

/** Default minutes are common practice; a workroom's own logged times are to replace them. */
export const OPERATION: Record<OperationId, Operation> = {
  prewash: { unit: 'squareMetre', minutes: 5, skill: 'pressing' },
  press: { unit: 'squareMetre', minutes: 5, skill: 'pressing' },
  layOut: { unit: 'piece', minutes: 4, skill: 'cutting' },
  cutOut: { unit: 'metre', minutes: 1.5, skill: 'cutting' },
  clipNeck: { unit: 'metre', minutes: 8, skill: 'handSewing' },
  reinforceSlit: { unit: 'each', minutes: 10, skill: 'handSewing' },
  setGusset: { unit: 'each', minutes: 6, skill: 'handSewing' },
  pressSeams: { unit: 'metre', minutes: 1.2, skill: 'pressing' },
  tryOn: { unit: 'each', minutes: 30, skill: 'fitting' },
  hangBias: { unit: 'each', minutes: 5, skill: 'fitting' },
  levelHem: { unit: 'metre', minutes: 6, skill: 'fitting' },
  setGathers: { unit: 'metre', minutes: 12, skill: 'handSewing' },
  setPleat: { unit: 'each', minutes: 1.5, skill: 'handSewing' },
  sewButton: { unit: 'each', minutes: 5, skill: 'handSewing' },
  workButtonhole: { unit: 'each', minutes: 15, skill: 'handSewing' },
  workEyelet: { unit: 'each', minutes: 9, skill: 'handSewing' },
  sewHook: { unit: 'each', minutes: 6, skill: 'handSewing' },
  sewTape: { unit: 'each', minutes: 5, skill: 'handSewing' },
  toile: { unit: 'each', minutes: 150, skill: 'machineSewing' },
  fitToile: { unit: 'each', minutes: 60, skill: 'fitting' },
  growthTuck: { unit: 'metre', minutes: 10, skill: 'handSewing' },
  sewTrim: { unit: 'metre', minutes: 15, skill: 'handSewing' },
  unpick: { unit: 'metre', minutes: 6, skill: 'handSewing' },
  darn: { unit: 'each', minutes: 25, skill: 'handSewing' },
  drawCord: { unit: 'each', minutes: 8, skill: 'handSewing' },
  finalPress: { unit: 'squareMetre', minutes: 4, skill: 'pressing' },
}
