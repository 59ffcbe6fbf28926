import type { FinishPlanId } from '../words/stitches.ts'
import type { FinishPlan } from './types.ts'

/** The usual ways of sewing a garment throughout. Names stand under `sew.finishPlan.<id>`. */
export const FINISH_PLANS: Record<FinishPlanId, FinishPlan> = {
  machineWhereHidden: {
    seams: 'lockstitch301',
    felling: 'felling',
    edges: 'zigzag304',
    hemsSeen: 'hemming',
    hemsHidden: 'lockstitch301',
    neck: 'hemming',
  },
  allByHand: {
    seams: 'halfBackstitch',
    felling: 'felling',
    edges: 'overcast',
    hemsSeen: 'hemming',
    hemsHidden: 'hemming',
    neck: 'hemming',
  },
  allByMachine: {
    seams: 'lockstitch301',
    felling: 'lockstitch301',
    edges: 'zigzag304',
    hemsSeen: 'lockstitch301',
    hemsHidden: 'lockstitch301',
    neck: 'lockstitch301',
  },
}
