import { join } from 'node:path'
import { Worker } from 'node:worker_threads'
import { phrase } from '../core/words/phrase.ts'
import type { Answer } from '../core/workroom.ts'
import type { FromStore, JobEvent, ToStore, Which } from './messages.ts'
import { sayHere } from './tongue.ts'

type Without<T> = T extends unknown ? Omit<T, 'id'> : never

/** The shell's side of the store's thread. */
export type StoreHost = {
  ask(name: string, payload: unknown): Promise<Answer>
  cancel(job: string): Promise<Answer>
  /** Where the file of a printed paper lies. */
  paper(document: string): Promise<Answer<{ path: string; name: string }>>
  /** Goes over to the maker's own workroom or to the sample. */
  enter(which: Which): Promise<Answer>
  /** Hears of jobs until the returned function is called. */
  listen(hear: (event: JobEvent) => void): () => void
  close(): Promise<void>
}

/** Files of the two workrooms in the planner's folder. */
export const STORE_FILES: Record<Which, string> = { own: 'workroom.ellwand', sample: 'tenter-lane.ellwand' }

/**
 * Starts the thread that has the store.
 * @param folder where the workrooms lie
 * @param thread the thread's entry: its source, or what the build made of it
 */
export function startStore(folder: string, thread: URL): StoreHost {
  const worker = new Worker(thread)
  const waiting = new Map<number, (answer: Answer) => void>()
  const listeners = new Set<(event: JobEvent) => void>()
  let next = 0
  worker.on('message', (message: FromStore) => {
    if (message.kind === 'event') {
      for (const hear of listeners) hear(message.event)
      return
    }
    waiting.get(message.id)?.(message.answer)
    waiting.delete(message.id)
  })
  // Should the thread ever end by a fault, whoever waits for it is told, and so is whoever asks afterwards.
  let ended = false
  worker.on('error', (error) => console.error(error))
  worker.on('exit', () => {
    ended = true
    for (const answer of waiting.values()) answer(gone())
    waiting.clear()
  })
  const send = (message: Without<ToStore>): Promise<Answer> =>
    new Promise((resolve) => {
      if (ended) {
        resolve(gone())
        return
      }
      const id = next++
      waiting.set(id, resolve)
      worker.postMessage({ ...message, id } as ToStore)
    })
  return {
    ask: (name, payload) => send({ kind: 'ask', name, payload }),
    cancel: (job) => send({ kind: 'cancel', job }),
    paper: (document) => send({ kind: 'paper', document }) as Promise<Answer<{ path: string; name: string }>>,
    enter: (which) =>
      send({ kind: 'open', path: join(folder, STORE_FILES[which]), sample: which === 'sample' }),
    listen: (hear) => {
      listeners.add(hear)
      return () => listeners.delete(hear)
    },
    close: async () => {
      await send({ kind: 'close' })
      await worker.terminate()
    },
  }
}

const gone = (): Answer => {
  const sentence = phrase('refusal.shell.gone')
  return { ok: false, error: { code: sentence.code, message: sayHere(sentence) } }
}
