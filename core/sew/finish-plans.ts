import type { FinishPlan } from './types.ts'

export const FINISH_PLAN_IDS = ['machineWhereHidden', 'allByHand', 'allByMachine'] as const
export type FinishPlanId = (typeof FINISH_PLAN_IDS)[number]

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
