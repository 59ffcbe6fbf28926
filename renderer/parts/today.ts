import { type Day, dayAt } from '../../core/words/dates.ts'

/** The day it is where the maker sits, for a field that most often holds it. */
export const todayHere = (): Day =>
  dayAt(new Date().toISOString(), Intl.DateTimeFormat().resolvedOptions().timeZone)
