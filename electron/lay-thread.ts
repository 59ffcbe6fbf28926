import { constants, setPriority } from 'node:os'
import { parentPort, receiveMessageOnPort, workerData } from 'node:worker_threads'
import { bestPlaces } from '../core/lay/best-lay.ts'
import type { Places } from '../core/workroom.ts'
import type { FromLay, LayTask } from './lay-messages.ts'

// One search for a short lay: given its task at the start, it hears of the others' lays while it runs, and ends.

// The hand at the desk comes first. Linux alone lowers the thread that asks for it, and not the planner with it.
if (process.platform === 'linux') setPriority(constants.priority.PRIORITY_LOW)

const port = parentPort!
const { strip, manner, start, seed, limit } = workerData as LayTask
const began = performance.now()
const tell = (message: FromLay) => port.postMessage(message)

const spent = (sweeps: number): number =>
  'seconds' in limit ? (performance.now() - began) / 1000 / limit.seconds : sweeps / limit.sweeps

/** The last of the lays that have come in, which is the shortest. */
function other(): Places | undefined {
  let last: Places | undefined
  for (let next = receiveMessageOnPort(port); next !== undefined; next = receiveMessageOnPort(port)) {
    last = next.message as Places
  }
  return last
}

const found = (places: Places) => tell({ kind: 'found', places })
tell({ kind: 'done', ...bestPlaces(strip, manner, start, { spent }, seed, { found, other }) })
