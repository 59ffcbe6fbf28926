import { addressOf } from '../router.ts'

/** The sheets of the settings, top to bottom. */
export const SHEETS = [
  ...(['papers', 'money', 'year', 'threads', 'notions', 'mark', 'people', 'daysOff'] as const),
  ...(['safekeeping', 'takeOut', 'lookRound'] as const),
] as const
export type Sheet = (typeof SHEETS)[number]
/** Single fields that are found by words of their own. */
export const FOUND_FIELDS = ['clothMargin'] as const
/** Single fields that are led to from elsewhere. */
type Field = 'address' | 'target' | 'deposit' | (typeof FOUND_FIELDS)[number]

/** The address of a sheet of the settings, or of one field of them. */
export const settingAt = (place: Sheet | Field): string => addressOf('workroom', undefined, { at: place })

/** What each sheet is found by on the page. */
export const idOf = (sheet: Sheet): string => `${ON_PAGE}${sheet}`
/** With this the id of every sheet begins. */
export const ON_PAGE = 'settings-'
