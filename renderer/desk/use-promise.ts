import { startTransition, useEffect, useState } from 'react'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { useHouse } from '../workroom.tsx'

/** By which day a garment would be done if it were accepted now. */
export type Promised = {
  /** Nothing until it was asked for the first time; its day is null where it would never be done. */
  readyBy: OutputOf<'garment.promise'> | undefined
  /** Whether it is the answer to what was wanted before. */
  old: boolean
}

/** So long after the last change she is thought to have done with changing, ms. */
const SETTLED = 400

/**
 * The day that can be promised for a garment. It is reckoned from all open work and takes longer than a price: so it
 * is asked only when the estimate stands and nothing has changed for a while.
 */
export function usePromise(wanted: InputOf<'garment.promise'>, settled: boolean): Promised {
  const { workroom } = useHouse()
  const [answer, setAnswer] = useState<{ key: string; readyBy: OutputOf<'garment.promise'> }>()
  const key = JSON.stringify(wanted)
  useEffect(() => {
    if (!settled) return
    let current = true
    const later = setTimeout(() => {
      workroom.ask('garment.promise', JSON.parse(key) as InputOf<'garment.promise'>).then(
        (readyBy) => current && startTransition(() => setAnswer({ key, readyBy })),
        // What refuses the garment stands above the bill already.
        () => {},
      )
    }, SETTLED)
    return () => {
      current = false
      clearTimeout(later)
    }
  }, [workroom, key, settled])
  return { readyBy: answer?.readyBy, old: answer?.key !== key }
}
