import { useEffect, useRef, useState } from 'react'
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
          setEstimate(found)
          setRefused(undefined)
        } catch (error) {
          setRefused({
            message: sentenceOf(error),
            field: error instanceof Refused ? error.field : undefined,
          })
        }
      }
      working.current = false
      setBusy(false)
    }
    void work()
  }, [workroom, key])
  return { estimate, refused, busy }
}
