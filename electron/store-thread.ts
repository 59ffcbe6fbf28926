import { parentPort } from 'node:worker_threads'
import { phrase } from '../core/words/phrase.ts'
import { Refusal } from '../core/words/refusal.ts'
import {
  type Answer,
  answer,
  backUpIfDue,
  type Context,
  documentFile,
  lookThrough,
  openStoreOrSaved,
  readerOf,
  requests,
  type Store,
} from '../core/workroom.ts'
import { shellContext } from './context.ts'
import type { FromStore, ToStore } from './messages.ts'
import { sayHere, speakTo } from './tongue.ts'

// The one thread that has the store. It answers messages in the order they come; only jobs take their time beside.

const port = parentPort!
const tell = (message: FromStore) => port.postMessage(message)
const jobs = new Map<string, AbortController>()
let store: Store | undefined
let context: Context | undefined

port.on('message', async (message: ToStore) => {
  tell({ kind: 'answer', id: message.id, answer: await guarded(() => carryOut(message)) })
})

async function carryOut(message: ToStore): Promise<Answer> {
  switch (message.kind) {
    case 'open':
      return open(message.path, message.sample)
    case 'close':
      shut()
      return done({})
    case 'cancel':
      jobs.get(message.job)?.abort()
      return done({ cancelled: jobs.has(message.job) })
    case 'paper':
      return done(documentFile(opened(), message.document))
    case 'ask':
      return ask(message.name, message.payload)
  }
}

async function open(path: string, sample: boolean): Promise<Answer> {
  shut()
  store = openStoreOrSaved(path, { now: new Date().toISOString() })
  context = shellContext(store, () => {})
  ringFor(store, sample)
  const { result } = (await ask('workroom.describe', {})) as { result: { kind: string } }
  return sample && result.kind === 'new' && store.damaged === undefined
    ? ask('workroom.sample', {})
    : done({})
}

/** After opening, once the first screen has what it asks for; then every hour. */
const FIRST = 2000
const HOUR = 3_600_000
let bells: NodeJS.Timeout[] = []

/**
 * Looks through a large store and makes backups by itself, first the one and then the other, so that nothing broken takes
 * the place of a sound copy. What fails is told on the console, and work goes on.
 */
function ringFor(opened: Store, sample: boolean): void {
  const ring = (work: () => Promise<unknown>) => () =>
    void work().catch((error: unknown) => {
      if (store === opened) console.error(error)
    })
  const backUp = (why: 'start' | 'hourly') => backUpIfDue(opened, why, new Date().toISOString())
  const first = async () => {
    const sound = await lookThrough(opened)
    if (sound) return backUp('start')
    // From here on it is what was saved of it, and nothing more is written to the damaged file.
    if (store === opened) return open(opened.home, sample)
  }
  bells = [
    setTimeout(ring(first), FIRST),
    setInterval(
      ring(() => backUp('hourly')),
      HOUR,
    ),
  ]
}

function shut(): void {
  for (const bell of bells) clearTimeout(bell)
  for (const job of jobs.values()) job.abort()
  store?.close()
  store = undefined
  context = undefined
}

async function ask(name: string, payload: unknown): Promise<Answer> {
  const given = opened()
  const reader = readerOf(given)
  speakTo(reader)
  if (requests.find((entry) => entry.name === name)?.kind !== 'job') {
    return answer(requests, name, payload, given, reader)
  }
  const job = given.newId()
  const stop = new AbortController()
  jobs.set(job, stop)
  const beside: Context = {
    ...given,
    signal: stop.signal,
    report: (progress) => tell({ kind: 'event', event: { job, progress } }),
  }
  // Begun only when the name of the job is out, so that it can be stopped from its first moment.
  setImmediate(async () => {
    const answered = await guarded(() => answer(requests, name, payload, beside, reader))
    jobs.delete(job)
    tell({ kind: 'event', event: { job, answer: answered } })
  })
  return done({ job })
}

function opened(): Context {
  if (context === undefined) throw new Refusal(phrase('refusal.shell.notOpen'))
  return context
}

const done = (result: unknown): Answer => ({ ok: true, result })

/** A fault of the program is told as such, without what was in the store, and the thread lives on. */
async function guarded(work: () => Promise<Answer>): Promise<Answer> {
  try {
    return await work()
  } catch (error) {
    const stopped = error instanceof Error && error.name === 'AbortError'
    const sentence =
      error instanceof Refusal
        ? error.phrase
        : phrase(stopped ? 'refusal.shell.stopped' : 'refusal.shell.fault')
    if (!(error instanceof Refusal) && !stopped) console.error(error)
    return { ok: false, error: { code: sentence.code, message: sayHere(sentence) } }
  }
}
