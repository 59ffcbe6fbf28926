import { sumMinutes } from '../sew/minutes.ts'
import type { Minutes } from '../sew/types.ts'
import type { FollowedStep } from './steps.ts'

/** What is left to do, in minutes with their spread, over the steps of one garment or of many. */
export const timeLeft = (steps: readonly Pick<FollowedStep, 'minutes' | 'doneAt'>[]): Minutes =>
  sumMinutes(steps.filter(({ doneAt }) => doneAt === null).map(({ minutes }) => minutes))
