import { useEffect, useState } from 'react'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { useHouse } from '../workroom.tsx'

/** What is doubted of a set of measures, each doubt with its sentence; and whether it is of somebody grown. */
export type Checked = OutputOf<'measures.check'>

/** A set is looked at again when nothing was typed for so long, ms. */
const PAUSE = 250

/** What the workroom thinks of the measures as they stand; what cannot be read yet is left out of account. */
export function useDoubts(asked: InputOf<'measures.check'>): Checked | undefined {
  const { workroom } = useHouse()
  const [checked, setChecked] = useState<Checked>()
  const key = JSON.stringify(asked)
  useEffect(() => {
    let current = true
    const later = setTimeout(() => {
      const ask = JSON.parse(key) as InputOf<'measures.check'>
      workroom.ask('measures.check', ask).then(
        (found) => current && setChecked(found),
        // Half a number is no measure yet: the field says so when the set is kept.
        () => {},
      )
    }, PAUSE)
    return () => {
      current = false
      clearTimeout(later)
    }
  }, [workroom, key])
  return checked
}
