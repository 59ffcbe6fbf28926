import { numberFormat } from '../../core/words/formats.ts'
import type { OutputOf } from '../../core/workroom.ts'

/** How long a kind of work takes, minutes for one unit, and a logged time that is thought wrong. */
export type Rate = OutputOf<'rates.list'>['rates'][number]
export type Doubtful = OutputOf<'rates.list'>['doubtful'][number]

/** Less than half a minute is nothing that was logged. */
const NOTHING = 0.5 / 60

/** Whether anything was logged of a kind of work, though it may have been thought wrong. */
export const isLogged = ({ hours, points }: Rate): boolean => hours > NOTHING || points.length > 0

/** Minutes for one unit, as fine as one would say them: 0.75, 6.5, 32. */
export const printRate = (minutes: number, locale: string): string =>
  numberFormat(locale, {
    maximumFractionDigits: minutes < 2 ? 2 : minutes < 20 ? 1 : 0,
    useGrouping: false,
  }).format(minutes)

/** A standard as it stands in its field: as it was written, cleaned of what reckoning back and forth leaves. */
export const writtenRate = (minutes: number, locale: string): string =>
  numberFormat(locale, { maximumFractionDigits: 2, useGrouping: false }).format(minutes)
