import { createContext, type ReactNode, useCallback, useContext, useEffect, useState } from 'react'
import { type PhraseCode, type PhraseValue, phrase } from '../core/words/phrase.ts'
import { type Reader, say } from '../core/words/say.ts'
import type { InputOf, OutputOf, RequestName } from '../core/workroom.ts'
import { Refused, type Workroom } from './bridge/ask.ts'
import { machineLocale } from './parts/machine-locale.ts'
import { readerFor } from './reader.ts'

type House = {
  workroom: Workroom
  reader: Reader
  refresh: () => void
  /** Has the screens speak in a locale from here on, until the settings say so or otherwise. */
  speak: (locale: string) => void
  /** What a screen has half filled, for when the maker comes back to it. */
  kept: Map<string, unknown>
  /** How often something was changed from outside the room she is in; what is shown there is then asked for anew. */
  turn: number
  changed: () => void
}
const HouseContext = createContext<House | undefined>(undefined)

type Props = {
  workroom: Workroom
  /** Who reads until the settings say so or otherwise. */
  first: Reader
  children: ReactNode
}

/** Gives every screen the workroom and the reader that the workroom's settings make. */
export function HouseProvider({ workroom, first, children }: Props) {
  const [reader, setReader] = useState(first)
  const [kept] = useState(() => new Map<string, unknown>())
  const [turn, setTurn] = useState(0)
  const changed = useCallback(() => setTurn((n) => n + 1), [])
  const refresh = useCallback(() => {
    void workroom.ask('settings.get', {}).then(async ({ settings, revision }) => {
      // Until she has said anything, the machine's language is the best guess at hers.
      const locale = revision === 0 ? machineLocale() : settings.letterhead.locale
      setReader(await readerFor({ ...settings.letterhead, locale }))
    })
  }, [workroom])
  useEffect(refresh, [refresh])
  const { unit } = reader
  const speak = useCallback((locale: string) => void readerFor({ locale, unit }).then(setReader), [unit])
  useEffect(() => {
    document.documentElement.lang = reader.locale
  }, [reader.locale])
  return (
    <HouseContext value={{ workroom, reader, refresh, speak, kept, turn, changed }}>{children}</HouseContext>
  )
}

/** The workroom and its reader, for any screen. @throws Error outside of what gives them */
export function useHouse(): House {
  const house = useContext(HouseContext)
  if (house === undefined) throw new Error('outside the house')
  return house
}

/** State that outlives its screen: it is there again when the maker comes back. */
export function useKept<T>(name: string, first: T): [T, (value: T) => void] {
  const { kept } = useHouse()
  const [value, setValue] = useState<T>(() => (kept.has(name) ? (kept.get(name) as T) : first))
  const keep = useCallback(
    (next: T) => {
      kept.set(name, next)
      setValue(next)
    },
    [kept, name],
  )
  return [value, keep]
}

/** Says a sentence or name of the catalogue to the reader. */
export function useTell() {
  const { reader } = useHouse()
  return useCallback(
    (code: PhraseCode, params?: Record<string, PhraseValue>) => say(phrase(code, params), reader),
    [reader],
  )
}

/** What a query came to: no value while it is on its way, and the sentence that refused it if one did. */
export type Loaded<T> = { value: T | undefined; refused: string | undefined; reload: () => void }

/** Asks a query when the screen opens and when its payload changes; `reload` asks again. */
export function useQuery<N extends RequestName>(name: N, payload: InputOf<N>): Loaded<OutputOf<N>> {
  const { workroom, turn: outside } = useHouse()
  const [value, setValue] = useState<OutputOf<N>>()
  const [refused, setRefused] = useState<string>()
  const [turn, setTurn] = useState(0)
  const key = JSON.stringify(payload)
  // biome-ignore lint/correctness/useExhaustiveDependencies: `turn` and `outside` ask again, and `key` stands for the payload
  useEffect(() => {
    let current = true
    workroom.ask(name, JSON.parse(key) as InputOf<N>).then(
      (result) => {
        if (!current) return
        setValue(result)
        setRefused(undefined)
      },
      (error: unknown) => current && setRefused(sentenceOf(error)),
    )
    return () => {
      current = false
    }
  }, [workroom, name, key, turn, outside])
  const reload = useCallback(() => setTurn((n) => n + 1), [])
  return { value, refused, reload }
}

/** What to show of whatever was thrown: a refusal's own sentence. */
export const sentenceOf = (error: unknown): string => (error instanceof Error ? error.message : String(error))

/** How a deed is going; `field` is where what was refused stands in a form. */
export type Doing = {
  busy: boolean
  refused: { message: string; field: string | undefined } | undefined
  /** Runs `work`; what refuses it is shown. Answers whether it was done. */
  run: (work: () => Promise<unknown>) => Promise<boolean>
}

/** One thing a maker does: busy while it runs, and the sentence that refused it. */
export function useDoing(): Doing {
  const [busy, setBusy] = useState(false)
  const [refused, setRefused] = useState<Doing['refused']>()
  const run = useCallback(async (work: () => Promise<unknown>) => {
    setBusy(true)
    try {
      await work()
      setRefused(undefined)
      return true
    } catch (error) {
      setRefused({ message: sentenceOf(error), field: error instanceof Refused ? error.field : undefined })
      return false
    } finally {
      setBusy(false)
    }
  }, [])
  return { busy, refused, run }
}
