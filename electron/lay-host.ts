import { Worker } from 'node:worker_threads'
import type { Manner, Places, Strip } from '../core/workroom.ts'
import type { FromLay, LayTask } from './lay-messages.ts'

export type LayLimits = {
  threads: number
  seed: number
  limit: LayTask['limit']
  signal: AbortSignal
  /** Told of every lay shorter than all before. */
  found: (places: Places) => void
}

/** The shortest lay, and whether every thread came to its end: not when it was stopped, or one broke down. */
export type LayFound = {
  places: Places
  ended: 'done' | 'stopped' | 'broken'
  sweeps: number
  evaluations: number
}

const entry = new URL(
  import.meta.url.endsWith('.ts') ? './lay-thread.ts' : './lay-thread.js',
  import.meta.url,
)

/**
 * Lets threads search for a short lay, each with a seed of its own; what one finds the others go on from.
 * Whatever happens to them, the best lay that came in is given, at worst the start.
 */
export async function searchInThreads(
  { strip, manner }: { strip: Strip; manner: Manner },
  start: Places,
  limits: LayLimits,
): Promise<LayFound> {
  const { threads, seed, limit, signal, found } = limits
  const result: LayFound = { places: start, ended: 'done', sweeps: 0, evaluations: 0 }
  const workers = Array.from({ length: threads }, (_, i) => {
    const workerData: LayTask = { strip, manner, start, seed: seed + i * 7919, limit }
    return new Worker(entry, { workerData, resourceLimits: { maxOldGenerationSizeMb: 256 } })
  })
  const stop = () => {
    result.ended = 'stopped'
    for (const worker of workers) void worker.terminate()
  }
  const better = (places: Places, from: Worker) => {
    if (places.length >= result.places.length) return
    result.places = places
    found(places)
    // Chance alone decides when a lay comes in, so a search by sweeps keeps to itself and can be repeated.
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
