import { startTransition, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import type { InputOf, OutputOf, Progress } from '../../core/workroom.ts'
import { useHalfFilled } from '../parts/kept.tsx'
import { type Doing, useDoing, useHouse } from '../workroom.tsx'

type Asked = Omit<InputOf<'lay.best'>, 'lay' | 'seconds' | 'seed'>
/** How a lay is asked for; its parts below, flaws and places in mm of washed cloth. */
export type LayWish = NonNullable<InputOf<'lay.best'>['lay']>
type Lay = OutputOf<'lay.best'>['lay']
/** How the cloth lies, ground no piece may cover, and where a copy lies. */
export type Manner = NonNullable<LayWish['manner']>
export type Flaw = NonNullable<LayWish['flaws']>[number]
export type Placement = NonNullable<LayWish['placements']>[number]

/** The running search: how far it is, and the best lay so far. */
type Running = { done: number; best?: Lay }

/** A lay that is being worked on: how it is wished for, and what changes that. */
export type LayTable = {
  /** How the garment is to be laid out at present. */
  wish: LayWish
  manner: Manner
  locked: Placement[]
  flaws: Flaw[]
  running: Running | undefined
  /** What the last search came to. */
  found: OutputOf<'lay.best'> | undefined
  doing: Doing
  setManner: (manner: Manner) => void
  setFlaws: (flaws: Flaw[]) => void
  /** Takes places that the workroom has judged good. */
  place: (placements: Placement[], locked: Placement[]) => void
  search: () => void
  stop: () => void
  /** Back to the first lay. */
  clear: () => void
}

type Settled = { for: string; locked: Placement[]; placements?: Placement[]; tears?: number[] }

/**
 * How one garment is laid out on its cloth: by a first lay until a search or the maker's hand has settled the
 * places, and again as soon as the garment or the cloth is another.
 */
export function useLay(asked: Asked): LayTable {
  const { workroom } = useHouse()
  const [manner, setManner] = useHalfFilled<Manner>('manner', 'single')
  // They are in the cloth, whatever is cut from it.
  const [marked, setMarked] = useHalfFilled<{ cloth: string | undefined; flaws: Flaw[] } | undefined>(
    'flaws',
    undefined,
  )
  const flaws = useMemo(
    () => (marked !== undefined && marked.cloth === asked.clothId ? marked.flaws : []),
    [marked, asked.clothId],
  )
  const key = JSON.stringify([asked, manner, flaws])
  const [settled, setSettled] = useHalfFilled<Settled>('settled', { for: key, locked: [] })
  const [running, setRunning] = useState<Running>()
  const [found, setFound] = useState<OutputOf<'lay.best'>>()
  const doing = useDoing()
  const stop = useRef<AbortController>(undefined)
  const { locked, placements, tears }: Settled = settled.for === key ? settled : { for: key, locked: [] }
  const wish: LayWish = {
    ...{ manner, locked, flaws },
    ...(placements === undefined ? {} : { placements }),
    ...(tears === undefined ? {} : { tears }),
  }
  // A search for a garment or cloth that is no longer wanted is of no use to anybody.
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` stands for the garment and the cloth
  useEffect(() => () => stop.current?.abort(), [key])
  const settle = useCallback((to: Omit<Settled, 'for'>) => setSettled({ for: key, ...to }), [key, setSettled])
  const search = () => {
    stop.current = new AbortController()
    const { signal } = stop.current
    setRunning({ done: 0 })
    const told = ({ done, best }: Progress) =>
      startTransition(() =>
        setRunning({ done, ...(best === undefined ? {} : { best: (best as { lay: Lay }).lay }) }),
      )
    void doing
      .run(async () => {
        const result = await workroom.ask('lay.best', { ...asked, lay: wish }, told, signal)
        setFound(result)
        const { placements, tears } = result.lay
        settle({ locked, placements, ...(tears === undefined ? {} : { tears }) })
      })
      .finally(() => setRunning(undefined))
  }
  return {
    ...{ wish, manner, locked, flaws, running, doing, setManner, search },
    setFlaws: (flaws) => setMarked({ cloth: asked.clothId, flaws }),
    found: placements === undefined ? undefined : found,
    place: (placements, locked) => {
      setFound(undefined)
      settle({ placements, locked })
    },
    stop: () => stop.current?.abort(),
    clear: () => {
      setFound(undefined)
      settle({ locked: [] })
    },
  }
}
