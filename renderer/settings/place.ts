import { useEffect } from 'react'
import { addressOf, usePlace } from '../router.ts'

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
export const idOf = (sheet: Sheet): string => `settings-${sheet}`

/** So long what stands above may still come and push it down, ms. */
const SETTLING = 3000

/** Leads to the sheet or field that the address asks for, as soon as it is there, and stays with it until she moves. */
export function useLedTo(): void {
  const at = usePlace().query.get('at')
  useEffect(() => {
    if (at === null) return
    let reached: Element | undefined
    const look = () => {
      const field = document.querySelector<HTMLElement>(`main input[name="${CSS.escape(at)}"]`)
      const found = field ?? document.getElementById(`settings-${at}`)
      found?.scrollIntoView({ block: field === null ? 'start' : 'center' })
      if (found !== null && found !== reached) found.focus({ preventScroll: true })
      reached = found ?? undefined
    }
    const watch = new ResizeObserver(look)
    const leave = () => watch.disconnect()
    look()
    watch.observe(document.body)
    const timer = setTimeout(leave, SETTLING)
    for (const moved of ['wheel', 'pointerdown', 'keydown']) addEventListener(moved, leave, { once: true })
    return () => {
      clearTimeout(timer)
      leave()
    }
  }, [at])
}
