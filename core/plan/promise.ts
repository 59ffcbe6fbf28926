import type { Minutes } from '../sew/types.ts'
import { addDays, type Day } from '../words/dates.ts'

/**
 * The day by which work is done four times in five, if it is begun today and nothing else is taken on: its hours
 * at so many a week. Waiting that needs no hands is not in it.
 */
export const doneBy = (today: Day, { p80 }: Pick<Minutes, 'p80'>, hoursPerWeek: number): Day =>
  addDays(today, Math.ceil((7 * p80) / 60 / hoursPerWeek))
