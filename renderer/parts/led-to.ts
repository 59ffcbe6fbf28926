import { useEffect } from 'react'
import { usePlace } from '../router.ts'

/** So long what stands above may still come and push it down, ms. */
const SETTLING = 3000

/**
 * Leads to the part of a screen or the field that the address asks for, as soon as it is there, and stays with it until she
 * moves. @param begins with this the ids of what can be led to begin
 */
export function useLedTo(begins: string): void {
  const at = usePlace().query.get('at')
  useEffect(() => {
    if (at === null) return
    let reached: Element | undefined
    const look = () => {
      const field = document.querySelector<HTMLElement>(`main input[name="${CSS.escape(at)}"]`)
      const found = field ?? document.getElementById(`${begins}${at}`)
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
  }, [at, begins])
}
