import { useEffect, useRef, useState } from 'react'
import { sentenceOf, useHouse } from '../workroom.tsx'
import type { Definition, Tried } from './definition.ts'

/**
 * Tries the construction on a set of measures whenever it changes. The pieces of the last trial that gave some
 * stay, so that there is something to point at while a size is being written.
 */
export function useTrial(definition: Definition, measurementSetId: string | undefined) {
  const { workroom } = useHouse()
  const [tried, setTried] = useState<Tried>()
  const [refused, setRefused] = useState<string>()
  const turn = useRef(0)
  const key = JSON.stringify([definition, measurementSetId])
  useEffect(() => {
    const [definition, measurementSetId] = JSON.parse(key) as [Definition, string | undefined]
    if (measurementSetId === undefined) return
    const mine = ++turn.current
    workroom.ask('ownConstruction.try', { definition, measurementSetId }).then(
      (found) => {
        if (mine !== turn.current) return
        setRefused(undefined)
        setTried((last) =>
          found.pieces.length === 0 && definition.pieces.length > 0
            ? { ...found, pieces: last?.pieces ?? [] }
            : found,
        )
      },
      (error: unknown) => mine === turn.current && setRefused(sentenceOf(error)),
    )
  }, [workroom, key])
  return { tried, refused }
}
