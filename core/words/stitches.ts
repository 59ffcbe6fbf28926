/** Stitches by the trade's names; machine stitches by their ISO 4915 numbers. */
export const STITCHES = [
  'running',
  'backstitch',
  'halfBackstitch',
  'felling',
  'hemming',
  'slipstitch',
  'overcast',
  'rolledHem',
  'lockstitch301',
  'zigzag304',
  'chainstitch401',
] as const
export type StitchId = (typeof STITCHES)[number]

/** The usual ways of sewing a garment throughout; `core/sew` says what each stands for. */
export const FINISH_PLAN_IDS = ['machineWhereHidden', 'allByHand', 'allByMachine'] as const
export type FinishPlanId = (typeof FINISH_PLAN_IDS)[number]
