import { isSpoken, languageOf, localeOf, regionOf } from '../../core/words/languages.ts'

/** The first of the machine's languages that the planner speaks, with its region; British English if there is none. */
export function machineLocale(): string {
  const spoken = navigator.languages.find(isSpoken) ?? 'en-GB'
  return localeOf(languageOf(spoken), regionOf(spoken))
}
