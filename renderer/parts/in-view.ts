import { type RefObject, useLayoutEffect, useState } from 'react'

/** Rows shown above and below what can be seen, so that a quick turn of the wheel meets no empty place. */
const BEYOND = 10
/** What is shown changes by so many rows at once. */
const STEP = 10

type Rows = { first: number; last: number }

/**
 * Which rows of a long list are in view, for the others need not be there.
 *
 * @param body what the rows stand in; the page itself is scrolled
 * @param height of one row, px
 */
export function useInView(body: RefObject<HTMLElement | null>, height: number): Rows {
  const [rows, setRows] = useState<Rows>({ first: 0, last: 2 * BEYOND })
  useLayoutEffect(() => {
    const look = () => {
      if (body.current === null) return
      const above = -body.current.getBoundingClientRect().top / height
      const first = Math.max(0, Math.floor((above - BEYOND) / STEP) * STEP)
      const last = first + Math.ceil(innerHeight / height / STEP) * STEP + 2 * BEYOND + STEP
      setRows((now) => (now.first === first && now.last === last ? now : { first, last }))
    }
    look()
    addEventListener('scroll', look, { passive: true })
    addEventListener('resize', look)
    return () => {
      removeEventListener('scroll', look)
      removeEventListener('resize', look)
    }
  }, [body, height])
  return rows
}
