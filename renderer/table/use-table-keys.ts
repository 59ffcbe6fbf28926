import { useEffect } from 'react'

type Acts = {
  back: (() => void) | undefined
  next: (() => void) | undefined
  done: (() => void) | undefined
}

/** Where a key is for the control that has the focus, and not for the table. */
const TYPED = 'input, select, textarea'
const PRESSED = 'button, a, summary, label, [role="button"], [role="dialog"]'

/** Arrow right goes on, arrow left goes back, and space is done, wherever no control wants the key for itself. */
export function useTableKeys({ back, next, done }: Acts): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const { target } = event
      if (event.altKey || event.ctrlKey || event.metaKey || event.defaultPrevented) return
      if (!(target instanceof Element) || target.closest(TYPED) !== null) return
      const act =
        event.key === 'ArrowRight'
          ? next
          : event.key === 'ArrowLeft'
            ? back
            : event.key === ' ' && target.closest(PRESSED) === null
              ? done
              : undefined
      if (act === undefined) return
      event.preventDefault()
      if (!event.repeat) act()
    }
    addEventListener('keydown', press)
    return () => removeEventListener('keydown', press)
  }, [back, next, done])
}
