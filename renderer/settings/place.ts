import { useEffect } from 'react'
import { addressOf, usePlace } from '../router.ts'

/** The sheets of the settings, top to bottom. */
export const SHEETS = [
  ...(['papers', 'money', 'year', 'threads', 'notions', 'mark', 'people', 'safekeeping', 'takeOut'] as const),
  'lookRound',
] as const
export type Sheet = (typeof SHEETS)[number]
/** Single fields that are led to from elsewhere. */
type Field = 'address' | 'target' | 'deposit'

/** The address of a sheet of the settings, or of one field of them. */
export const settingAt = (place: Sheet | Field): string => addressOf('workroom', undefined, { at: place })

/** What each sheet is found by on the page. */
export const idOf = (sheet: Sheet): string => `settings-${sheet}`

/** Leads to the sheet or field that the address asks for, as soon as it is there. */
export function useLedTo(): void {
  const at = usePlace().query.get('at')
  useEffect(() => {
    if (at === null) return
    const until = performance.now() + 5000
    let asked = 0
    const look = () => {
      const field = document.querySelector<HTMLElement>(`main input[name="${CSS.escape(at)}"]`)
      const found = field ?? document.getElementById(`settings-${at}`)
      if (found === null) {
        if (performance.now() < until) asked = requestAnimationFrame(look)
        return
      }
      found.scrollIntoView({ block: field === null ? 'start' : 'center' })
      found.focus({ preventScroll: true })
    }
    look()
    return () => cancelAnimationFrame(asked)
  }, [at])
}
