import type { Choices } from '../../choices.ts'

/** What the maker may set. Lengths in mm; a length without a default is worked out from the body. */
export const CHOICES = {
  hemLevel: { kind: 'option', options: ['midCalf', 'ankle'], default: 'ankle' },
  length: { kind: 'length', range: [600, 1800] },
  lacedAt: { kind: 'option', options: ['front', 'side'], default: 'front' },
  openingLength: { kind: 'length', range: [120, 900] },
  lacingGap: { kind: 'length', range: [0, 80], default: 20 },
  eyeletSpacing: { kind: 'length', range: [12, 50], default: 25 },
  bustEase: { kind: 'length', range: [0, 60], default: 5 },
  waistEase: { kind: 'length', range: [0, 80], default: 15 },
  hipEase: { kind: 'length', range: [0, 300], default: 80 },
  neckEase: { kind: 'length', range: [20, 200], default: 90 },
  neckDepth: { kind: 'length', range: [60, 260], default: 150 },
  kirtleSleeve: { kind: 'option', options: ['none', 'elbow', 'wrist'], default: 'wrist' },
  armEase: { kind: 'length', range: [0, 160], default: 60 },
  wristWidth: { kind: 'length', range: [150, 800] },
  goresAt: { kind: 'option', options: ['sides', 'sidesAndMiddle'], default: 'sidesAndMiddle' },
  goreSpread: { kind: 'length', range: [50, 1400] },
  lined: { kind: 'yesNo', default: true },
  interlined: { kind: 'yesNo', default: false },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'open' },
  bottomHem: { kind: 'length', range: [4, 40] },
  wristHem: { kind: 'length', range: [4, 30], default: 8 },
  edgeHem: { kind: 'length', range: [3, 20], default: 8 },
} as const satisfies Choices
