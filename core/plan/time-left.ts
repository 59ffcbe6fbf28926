import { minutesOf } from '../sew/minutes.ts'
import type { Pace } from '../sew/pace/pace.ts'
import { timeOf } from '../sew/pace/time-of.ts'
import type { Minutes } from '../sew/types.ts'
import { entriesOf } from '../sew/work.ts'
import type { FollowedStep } from './steps.ts'

/**
 * What is left to do at the workroom's pace, over the steps of one garment or of many. Steps of old, whose kinds
 * of work nobody wrote down, keep the time they were quoted with; their spread is added in full, for caution.
 */
export function timeLeft(
  steps: readonly Pick<FollowedStep, 'work' | 'minutes' | 'doneAt'>[],
  pace: Pace,
): Minutes {
  const open = steps.filter(({ doneAt }) => doneAt === null)
  const known = open.filter(({ work }) => entriesOf(work).length > 0)
  const now = timeOf(
    pace,
    known.map(({ work }) => work),
  )
  const old = open.filter((step) => !known.includes(step)).map(({ minutes }) => minutes)
  return minutesOf(
    old.reduce((sum, { mean }) => sum + mean, now.mean),
    old.reduce((sum, { sd }) => sum + sd, now.sd),
  )
}
