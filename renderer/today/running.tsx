import { createContext, type ReactNode, useCallback, useContext, useEffect, useState } from 'react'
import { say } from '../../core/words/say.ts'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { useUndoing } from '../undo/undoing.tsx'
import { useHouse, useQuery, useTell } from '../workroom.tsx'

/** The timer that runs, on which steps and since when. */
export type RunningTimer = NonNullable<OutputOf<'timer.get'>['timer']>
type On = InputOf<'timer.start'>
type Running = {
  timer: RunningTimer | undefined
  /** What the timer last came to, in a sentence, until another is started or she goes elsewhere. */
  said: string
  start: (on: On) => Promise<void>
  /** Stops and logs; another time stands in the place of the one that ran. */
  stop: (minutes?: string | number) => Promise<void>
  drop: () => Promise<void>
}
const RunningContext = createContext<Running | undefined>(undefined)

const MINUTE = 60_000
/** A timer that is stopped before is taken for a slip, minutes. */
const TOO_SHORT = 0.5

/** One timer for the whole house: the strip shows it, and any step may start it. */
export function TimerProvider({ children }: { children: ReactNode }) {
  const { workroom, changed } = useHouse()
  const { value, reload } = useQuery('timer.get', {})
  const nameOf = useTimerName()
  const tell = useTell()
  const { turn } = useUndoing()
  /** What is told, and after how many undoings: what was undone is told no more. */
  const [told, setTold] = useState({ words: '', turn })
  const said = told.turn === turn ? told.words : ''
  const setSaid = useCallback((words: string) => setTold({ words, turn }), [turn])
  const timer = value?.timer ?? undefined
  useEffect(() => {
    // Another window may have stopped it meanwhile.
    addEventListener('focus', reload)
    const forget = () => setSaid('')
    addEventListener('hashchange', forget)
    return () => {
      removeEventListener('focus', reload)
      removeEventListener('hashchange', forget)
    }
  }, [reload, setSaid])
  const runs = timer !== undefined
  useEffect(() => {
    if (!runs) return
    const every = setInterval(reload, MINUTE)
    return () => clearInterval(every)
  }, [runs, reload])
  const start = async (on: On) => {
    await workroom.ask('timer.start', on)
    setSaid('')
    changed()
  }
  const stop = async (minutes?: string | number) => {
    // A press too many is no work: what it kept would teach the pace that everything is done in no time.
    const now = (await workroom.ask('timer.get', {})).timer
    // Another press, or another window, has stopped it already.
    if (minutes === undefined && now === null) return changed()
    if (minutes === undefined && now !== null && now.minutes < TOO_SHORT) {
      await workroom.ask('timer.drop', {})
      setSaid(tell('timer.tooShort'))
      changed()
      return
    }
    const { time } = await workroom.ask('timer.stop', minutes === undefined ? {} : { minutes })
    const step = timer === undefined ? '' : nameOf(timer)
    setSaid(tell('timer.logged', { time: { minutes: time.minutes }, step }))
    changed()
  }
  const drop = async () => {
    await workroom.ask('timer.drop', {})
    setSaid(tell('timer.dropped'))
    changed()
  }
  return <RunningContext value={{ timer, said, start, stop, drop }}>{children}</RunningContext>
}

/** The timer, for any screen. @throws Error outside of what gives it */
export function useRunning(): Running {
  const running = useContext(RunningContext)
  if (running === undefined) throw new Error('no timer here')
  return running
}

/** What a timer runs on, in few words. */
export function useTimerName() {
  const { reader } = useHouse()
  const tell = useTell()
  return useCallback(
    ({ steps }: Pick<RunningTimer, 'steps'>): string => {
      const first = say(steps[0]!, reader)
      return steps.length === 1 ? first : tell('timer.more', { step: first, count: steps.length - 1 })
    },
    [reader, tell],
  )
}
