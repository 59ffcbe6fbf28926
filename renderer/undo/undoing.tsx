import { createContext, type ReactNode, useCallback, useContext, useEffect, useRef, useState } from 'react'
import type { PhraseCode } from '../../core/words/phrase.ts'
import type { InputOf, RequestName } from '../../core/workroom.ts'
import { sentenceOf, useHouse, useTell } from '../workroom.tsx'
import { WAYS } from './acts.ts'
import { ANOTHER_BOOK, FINAL, type Final } from './final.ts'
import type { Step, Way } from './way.ts'

/** Something that was done, and what takes it back; `final` when nothing does. */
type Done = { name: keyof typeof WAYS; steps: readonly Step[] } | { name: Final; steps: 'final' }

type Undoing = {
  /** What would be undone, in a few words; undefined when there is nothing. */
  last: string | undefined
  /** What came of undoing, in a sentence. */
  said: string
  busy: boolean
  undo: () => void
  /** How often something was undone: what a screen shows is then opened anew. */
  turn: number
  /** Forgets what was done: another book is open. */
  forget: () => void
}
const UndoingContext = createContext<Undoing | undefined>(undefined)

/** So many acts are remembered. */
const MOST = 100

/** Remembers what is done through the screens, as long as the planner is open, and takes it back in turn. */
export function UndoProvider({ children }: { children: ReactNode }) {
  const { workroom, changed } = useHouse()
  const tell = useTell()
  const [done, setDone] = useState<readonly Done[]>([])
  const [said, setSaid] = useState('')
  const [busy, setBusy] = useState(false)
  const [turn, setTurn] = useState(0)
  const revisions = useRef(new Map<string, number>())
  useEffect(() => {
    workroom.watch = async (name, payload) => {
      const before = await WAYS[name]?.before?.(payload as never, (of, given) =>
        workroom.askUnseen(of, given),
      )
      return (answer) => {
        noteRevisions(revisions.current, name, answer)
        if (ANOTHER_BOOK.includes(name)) return setDone([])
        const act = actOf(name, payload, answer, before)
        if (act === undefined) return
        setSaid('')
        setDone((all) =>
          takesBack(act.asked, all.at(-1)) ? all.slice(0, -1) : [...all, act.done].slice(-MOST),
        )
      }
    }
    return () => {
      workroom.watch = undefined
    }
  }, [workroom])
  useEffect(() => {
    const forget = () => setSaid('')
    addEventListener('hashchange', forget)
    return () => removeEventListener('hashchange', forget)
  }, [])
  const forget = useCallback(() => setDone([]), [])
  const last = done.at(-1)
  const what =
    last === undefined || last.steps === 'final' ? undefined : tell(`undo.did.${last.name}` as PhraseCode)
  const undo = useCallback(() => {
    if (busy) return
    if (last?.steps === 'final') return setSaid(tell('undo.final', { why: tell(FINAL[last.name as Final]) }))
    if (last === undefined || what === undefined) return setSaid(tell('undo.none'))
    const { steps } = last
    setBusy(true)
    void (async () => {
      try {
        for (const { name, payload } of steps) {
          const answer = await workroom.askUnseen(name, withRevision(name, payload, revisions.current))
          noteRevisions(revisions.current, name, answer)
        }
        setSaid(tell('undo.undone', { what }))
      } catch (error) {
        setSaid(sentenceOf(error))
      }
      // What was refused once would be refused again, and stand in the way of what was done before it.
      setDone((all) => all.filter((one) => one !== last))
      setBusy(false)
      setTurn((n) => n + 1)
      changed()
    })()
  }, [busy, last, what, tell, workroom, changed])
  return <UndoingContext value={{ last: what, said, busy, undo, turn, forget }}>{children}</UndoingContext>
}

/** What can be taken back, for any screen. @throws Error outside of what gives it */
export function useUndoing(): Undoing {
  const undoing = useContext(UndoingContext)
  if (undoing === undefined) throw new Error('nothing is undone here')
  return undoing
}

type Acted = { asked: Step; done: Done }

function actOf(name: RequestName, payload: unknown, answer: unknown, before: unknown): Acted | undefined {
  const asked = { name, payload } as Step
  if (name in FINAL) return { asked, done: { name: name as Final, steps: 'final' } }
  const way: Way | undefined = WAYS[name]
  if (way === undefined) return undefined
  const steps = way.back({ given: payload as never, answer: answer as never, before: before as never })
  return steps.length === 0 ? undefined : { asked, done: { name, steps } }
}

/** Whether a request does what would have undone the last one: then there is nothing more to undo of it. */
function takesBack(asked: Step, last: Done | undefined): boolean {
  if (last === undefined || last.steps === 'final' || last.steps.length !== 1) return false
  const bare = ({ name, payload }: Step) => JSON.stringify([name, { ...payload, revision: 0 }])
  return bare(asked) === bare(last.steps[0]!)
}

/** The settings have no id of their own. */
const SETTINGS: readonly RequestName[] = ['settings.set', 'mark.set']

/** Writes down which revision of each thing an answer shows: what is undone in turn goes by the newest of her own. */
function noteRevisions(revisions: Map<string, number>, name: RequestName, answer: unknown): void {
  const of = answer as Record<string, unknown>
  if (SETTINGS.includes(name)) revisions.set('settings', of.revision as number)
  for (const one of [of, ...Object.values(of)]) {
    const { id, revision } = (one ?? {}) as { id?: unknown; revision?: unknown }
    if (typeof id === 'string' && typeof revision === 'number') revisions.set(id, revision)
  }
}

function withRevision<N extends RequestName>(
  name: N,
  payload: InputOf<N>,
  revisions: ReadonlyMap<string, number>,
): InputOf<N> {
  if (!('revision' in payload)) return payload
  const id = SETTINGS.includes(name) ? 'settings' : (payload as { id: string }).id
  return { ...payload, revision: revisions.get(id) ?? payload.revision }
}
