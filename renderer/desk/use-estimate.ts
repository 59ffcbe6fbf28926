import { startTransition, useEffect, useRef, useState } from 'react'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { Refused } from '../bridge/ask.ts'
import { sentenceOf, useHouse } from '../workroom.tsx'

/** What a garment comes to: its draft, lay, sewing and price. */
export type Estimate = OutputOf<'garment.estimate'>
type Wanted = InputOf<'garment.estimate'>

/**
 * Reckons a garment whenever what is wanted changes. While one reckoning is under way only the latest wish
 * waits, so that fast typing never piles up; the last good answer stays until there is a better one.
 */
export function useEstimate(wanted: Wanted) {
  const { workroom } = useHouse()
  const [estimate, setEstimate] = useState<Estimate>()
  const [refused, setRefused] = useState<{ message: string; field: string | undefined }>()
  const [busy, setBusy] = useState(true)
  const waiting = useRef<string | undefined>(undefined)
  const working = useRef(false)
  const key = JSON.stringify(wanted)
  useEffect(() => {
    waiting.current = key
    if (working.current) return
    const work = async () => {
      working.current = true
      setBusy(true)
      while (waiting.current !== undefined) {
        const next = waiting.current
        waiting.current = undefined
        try {
          const found = await workroom.ask('garment.estimate', JSON.parse(next) as Wanted)
          show(() => {
            setEstimate((before) => keepingSame(before, found))
            setRefused(undefined)
          })
        } catch (error) {
          show(() =>
            setRefused({
              message: sentenceOf(error),
              field: error instanceof Refused ? error.field : undefined,
            }),
          )
        }
      }
      working.current = false
    }
    // The next key is painted before what the last one led to, and nobody is told that it is there before it is.
    const show = (what: () => void) =>
      startTransition(() => {
        what()
        if (waiting.current === undefined) setBusy(false)
      })
    void work()
  }, [workroom, key])
  return { estimate, refused, busy }
}

/** A new estimate with those parts of the one before in it that came out the same, so that nothing of them is drawn again. */
function keepingSame(before: Estimate | undefined, found: Estimate): Estimate {
  if (before === undefined) return found
  const same = (Object.keys(found) as (keyof Estimate)[]).filter(
    (part) => JSON.stringify(before[part]) === JSON.stringify(found[part]),
  )
  return { ...found, ...Object.fromEntries(same.map((part) => [part, before[part]])) }
}
