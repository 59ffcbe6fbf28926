import type { Stage } from '../draft/types.ts'
import type { StitchId } from '../words/stitches.ts'
import type { TimedId } from './operations.ts'
import type { Pace } from './pace/pace.ts'
import type { Work } from './work.ts'

/** Which stitch sews which class of work. Ids are of the stitch catalogue. */
export type FinishPlan = {
  /** Seams no one sees: the joining line. */
  seams: StitchId
  /** The second row of a felled seam. */
  felling: StitchId
  /** The raw edges of an open seam; null leaves them. */
  edges: StitchId | null
  hemsSeen: StitchId
  hemsHidden: StitchId
  /** Neck and slit hems and the edge of a facing, small and curved work with its own stitch. */
  neck: StitchId
}

/** A time with its spread, in minutes. p50 and p80: as likely over as under; kept four times in five. */
export type Minutes = { mean: number; sd: number; p50: number; p80: number }

/** The kinds of labour a workroom may pay differently. */
export const SKILLS = ['handSewing', 'machineSewing', 'cutting', 'pressing', 'fitting', 'attending'] as const
export type Skill = (typeof SKILLS)[number]

/** One row of stitches: which stitch, how far, how much thread without wastage (mm), minutes. */
export type Row = {
  step: string
  /** Seam or hem sewn. */
  of: string
  purpose: 'gather' | 'join' | 'fell' | 'edge' | 'hem' | 'reinforce'
  stitch: StitchId
  length: number
  /** Stitches per centimetre. */
  density: number
  thread: number
  minutes: Minutes
}

/** What one step takes, minutes, in all and by the kind of labour; kinds it has nothing of are not there. */
export type StepTime = {
  step: string
  stage: Stage
  /** Its kinds of work by the catalogue, for logged time to teach from. Quotes of old have none. */
  work?: Work
  bySkill: Partial<Record<Skill, Minutes>>
  total: Minutes
}

/** Thread of one sort: what the rows hold, what tails, joins and wastage add, and the reels to buy. */
export type ThreadUse = {
  work: 'hand' | 'machine'
  /** In the seams, m. */
  sewn: number
  /** Tails, needleful ends and wastage, m. */
  wasted: number
  /** sewn + wasted, m. */
  metres: number
}

/** All the stitching and the work of a garment: rows in the order they are sewn, thread, minutes. */
export type Sewing = {
  rows: Row[]
  steps: StepTime[]
  threads: ThreadUse[]
  total: Minutes
  bySkill: Partial<Record<Skill, Minutes>>
}

/** The workroom's habits with thread. Lengths in mm, waste in parts of one. */
export type ThreadRules = {
  /** Length of thread in the needle. */
  needleful: number
  /** Of each needleful, what goes into fastening on and off and is lost. */
  needlefulLost: number
  /** Machine thread cut off at each end of each row. */
  machineEnd: number
  /** Part of machine thread wasted (breaks, tests, bobbin ends). */
  machineWaste: number
  /** Hand stitches sewn with the thread double. Settings of old have none. */
  doubled?: readonly StitchId[]
  /** Whether thread is drawn over wax, which lets the needleful be longer. */
  waxed?: boolean
}

/** What the workroom has set in the place of the catalogue's figures. */
export type Standards = {
  /** Stitches to the centimetre. */
  density: Partial<Record<StitchId, number>>
  /** Stitches a minute, all told. */
  perMinute: Partial<Record<StitchId, number>>
  /** Minutes for one unit of an operation; none at all, and it is not done here. */
  minutes: Partial<Record<TimedId, number>>
}

/** How the workroom sews, and how fast: standards of its own, and what was learnt, are both in the pace. */
export type Ways = Pick<Standards, 'density' | 'minutes'> & { pace: Pace }
