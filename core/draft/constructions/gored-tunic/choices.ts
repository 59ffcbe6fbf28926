import type { Choices, Chosen } from '../../choices.ts'

/**
 * What the maker may set. Lengths in mm; a length without a default is worked out from the body. Ranges are
 * common practice: the widest in which the cut is still this garment.
 */
export const CHOICES = {
  hemLevel: { kind: 'option', options: ['knee', 'midCalf', 'ankle'], default: 'midCalf' },
  length: { kind: 'length', range: [250, 1800] },
  chestEase: { kind: 'length', range: [60, 250], default: 120 },
  shoulder: { kind: 'option', options: ['seam', 'cutInOne'], default: 'seam' },
  shoulderSlope: { kind: 'length', range: [0, 40], default: 0 },
  neck: { kind: 'option', options: ['keyhole', 'round', 'boat', 'square'], default: 'keyhole' },
  neckEase: { kind: 'length', range: [0, 300], default: 20 },
  neckDepth: { kind: 'length', range: [15, 260] },
  slitLength: { kind: 'length', range: [0, 450] },
  neckFinish: { kind: 'option', options: ['facing', 'rolled'], default: 'facing' },
  armholeEase: { kind: 'length', range: [20, 260] },
  gusset: { kind: 'length', range: [40, 160] },
  sleeve: { kind: 'option', options: ['wrist', 'elbow'], default: 'wrist' },
  sleeveLength: { kind: 'length', range: [80, 1000] },
  sleeveEase: { kind: 'length', range: [0, 120], default: 20 },
  taper: { kind: 'yesNo', default: true },
  wristWidth: { kind: 'length', range: [80, 800] },
  gores: { kind: 'count', options: [2, 4, 6, 8], default: 4 },
  goreTop: { kind: 'option', options: ['waist', 'highHip', 'hip'] },
  goreSpread: { kind: 'length', range: [50, 1600] },
  sweep: { kind: 'length', range: [600, 8000] },
  goreCut: { kind: 'option', options: ['straightEdge', 'symmetrical'], default: 'straightEdge' },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'felled' },
  seamAllowance: { kind: 'length', range: [6, 25], default: 12 },
  bottomHem: { kind: 'length', range: [5, 60] },
  wristHem: { kind: 'length', range: [5, 40], default: 15 },
} as const satisfies Choices

/** The choices once they are made: undefined is left to be worked out from the body. */
export type UndertunicChoices = Chosen<typeof CHOICES>
