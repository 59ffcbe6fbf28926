import { createContext, type ReactNode, useCallback, useContext, useRef, useState } from 'react'
import { useHouse } from '../workroom.tsx'

const KeptContext = createContext<string | undefined>(undefined)

/** Under which name that is kept which is half filled here: the screen, and within it the form. */
function useScope(): string {
  const [screen] = useState(() => location.hash.replace(/^#\/?/, '').split('?')[0] || 'desk')
  return useContext(KeptContext) ?? screen
}

/** Keeps what is half filled in one form apart from that of every other. */
export function KeptApart({ name, children }: { name: string; children: ReactNode }) {
  const scope = useScope()
  return <KeptContext value={`${scope} > ${name}`}>{children}</KeptContext>
}

/**
 * What stands in a field or form of this screen: it is there again when the maker comes back to the screen, until it is
 * kept for good or given up: then `forget` leaves it where it stands, and nothing of it is there when she comes back.
 *
 * @param asked stands there whatever was there before: the address asks for it
 */
export function useHalfFilled<T>(name: string, first: T | (() => T), asked?: T) {
  const { kept } = useHouse()
  const key = `${useScope()} > ${name}`
  const [value, setValue] = useState<T>(() => {
    if (asked !== undefined) kept.set(key, asked)
    if (kept.has(key)) return kept.get(key) as T
    return first instanceof Function ? first() : first
  })
  const now = useRef(value)
  const fill = useCallback(
    (next: T | ((before: T) => T)) => {
      now.current = next instanceof Function ? next(now.current) : next
      kept.set(key, now.current)
      setValue(now.current)
    },
    [kept, key],
  )
  const forget = useCallback(() => void kept.delete(key), [kept, key])
  return [value, fill, forget] as const
}

/** Gives up all that is half filled in this form. */
export function useForgetAll(): () => void {
  const { kept } = useHouse()
  const scope = useScope()
  return useCallback(() => {
    for (const key of [...kept.keys()]) if (key.startsWith(`${scope} > `)) kept.delete(key)
  }, [kept, scope])
}

/** Whether anything is half filled in a form of this screen. */
export function useHalfFilledIn(): (name: string) => boolean {
  const { kept } = useHouse()
  const scope = useScope()
  return (name) => [...kept.keys()].some((key) => key.startsWith(`${scope} > ${name} > `))
}
