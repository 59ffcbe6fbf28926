import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import type { LaySearched, LaySearchLimits, Manner, Places, Strip } from '../core/workroom.ts'
import type { FromLay, LayTask } from './lay-messages.ts'
import { threadCode } from './thread-code.ts'

/** How a search goes on and when it ends; an aborted `signal` ends it with the best lay so far. */
export type LayLimits = {
  threads: number
  seed: number
  limit: LayTask['limit']
  signal: AbortSignal
  /** Told of every lay shorter than all before. */
  found?: (places: Places) => void
}

/** The best places, how the search ended, and what it took. */
export type LayFound = LaySearched & { sweeps: number; evaluations: number }

const entry = threadCode('lay-thread')

/** A thread that needs more than this has gone astray, MB. */
const MEMORY = 256

/**
 * Lets threads search for a short lay, each with a seed of its own; what one finds the others go on from.
 * Whatever happens to them, the best lay that came in is given, at worst the start.
 */
export async function searchInThreads(
  { strip, manner }: { strip: Strip; manner: Manner },
  start: Places,
  { threads, seed, limit, signal, found }: LayLimits,
): Promise<LayFound> {
  const result: LayFound = { places: start, ended: 'done', sweeps: 0, evaluations: 0 }
  const workers = Array.from({ length: threads }, (_, i) => {
    const workerData: LayTask = { strip, manner, start, seed: seed + i * 7919, limit }
    return new Worker(entry, { workerData, resourceLimits: { maxOldGenerationSizeMb: MEMORY } })
  })
  const stop = () => {
    result.ended = 'stopped'
    for (const worker of workers) void worker.terminate()
  }
  const better = (places: Places, from: Worker) => {
    if (places.length >= result.places.length) return
    result.places = places
    found?.(places)
    // Chance decides when a lay comes in, so searches by sweeps keep to themselves and can be repeated.
    if ('seconds' in limit) for (const worker of workers) if (worker !== from) worker.postMessage(places)
  }
  signal.addEventListener('abort', stop, { once: true })
  if (signal.aborted) stop()
  await Promise.all(workers.map((worker) => finished(worker, result, better)))
  signal.removeEventListener('abort', stop)
  return result
}

const finished = (
  worker: Worker,
  result: LayFound,
  better: (places: Places, from: Worker) => void,
): Promise<void> =>
  new Promise((resolve) => {
    let done = false
    worker.on('message', (message: FromLay) => {
      better(message.places, worker)
      if (message.kind === 'found') return
      done = true
      result.sweeps += message.sweeps
      result.evaluations += message.evaluations
    })
    worker.on('error', (error) => console.error(error))
    worker.on('exit', () => {
      if (!done && result.ended === 'done') result.ended = 'broken'
      resolve()
    })
  })

/** The screen and the store keep a core to themselves. */
const threads = (): number => Math.max(1, availableParallelism() - 1)

/** How often it is told how far a search is, ms. */
const TICK = 250

/** The workroom's search for a shorter lay: by the clock, on all cores but one. */
export async function searchLay(
  task: { strip: Strip; manner: Manner },
  start: Places,
  { seconds, seed, signal, tick }: LaySearchLimits,
): Promise<LaySearched> {
  let best = start
  const began = performance.now()
  const ticking = setInterval(
    () => tick(Math.min(1, (performance.now() - began) / 1000 / seconds), best),
    TICK,
  )
  const found = (places: Places) => {
    best = places
  }
  try {
    const limits = { threads: threads(), seed, limit: { seconds }, signal, found }
    const { places, ended } = await searchInThreads(task, start, limits)
    return { places, ended }
  } finally {
    clearInterval(ticking)
  }
}
