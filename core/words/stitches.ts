/** Stitches by the trade's names; machine stitches by their ISO 4915 numbers. */
export const STITCHES = [
  'running',
  'backstitch',
  'halfBackstitch',
  'stab',
  'felling',
  'hemming',
  'slipstitch',
  'overcast',
  'rolledHem',
  'blanket',
  'buttonhole',
  'eyelet',
  'gathering',
  'tacking',
  'lockstitch301',
  'zigzag304',
  'chainstitch101',
  'chainstitch401',
  'overlock504',
] as const
export type StitchId = (typeof STITCHES)[number]

/** Whether a stitch is named by its number, as those of machines are. */
export const isMachineStitch = (stitch: StitchId): boolean => /\d{3}$/.test(stitch)

/** The usual ways of sewing a garment throughout; `core/sew` says what each stands for. */
export const FINISH_PLAN_IDS = ['machineWhereHidden', 'allByHand', 'allByMachine'] as const
export type FinishPlanId = (typeof FINISH_PLAN_IDS)[number]
