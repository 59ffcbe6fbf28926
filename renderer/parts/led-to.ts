import { useEffect } from 'react'
import { usePlace } from '../router.ts'

/** So long what stands above may still come and push it down, ms. */
const SETTLING = 3000

/**
 * Leads to the part of a screen or the field that the address asks for, as soon as it is there, and stays with it until she
 * moves; again when she takes a way there that the address already speaks of.
 *
 * @param begins with this the ids of what can be led to begin
 */
export function useLedTo(begins: string): void {
  const at = usePlace().query.get('at')
  useEffect(() => {
    if (at === null) return
    let leave = stayWith(begins, at)
    // The address does not change by such a way, so nothing else would tell of it.
    const again = ({ target }: MouseEvent) => {
      if (!(target instanceof Element) || target.closest('a')?.hash !== location.hash) return
      leave()
      leave = stayWith(begins, at)
    }
    addEventListener('click', again)
    return () => {
      removeEventListener('click', again)
      leave()
    }
  }, [at, begins])
}

/** Brings a place into sight, and keeps it there while what stands above it still comes. @returns what ends that */
function stayWith(begins: string, at: string): () => void {
  let reached: Element | undefined
  const look = () => {
    const field = document.querySelector<HTMLElement>(`main input[name="${CSS.escape(at)}"]`)
    const found = field ?? document.getElementById(`${begins}${at}`)
    found?.scrollIntoView({ block: field === null ? 'start' : 'center' })
    if (found !== null && found !== reached) found.focus({ preventScroll: true })
    reached = found ?? undefined
  }
  const watch = new ResizeObserver(look)
  const moved = ['wheel', 'pointerdown', 'keydown'] as const
  const leave = () => {
    clearTimeout(timer)
    watch.disconnect()
    for (const one of moved) removeEventListener(one, leave)
  }
  const timer = setTimeout(leave, SETTLING)
  look()
  watch.observe(document.body)
  for (const one of moved) addEventListener(one, leave)
  return leave
}
