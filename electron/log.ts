import { appendFileSync, mkdirSync, renameSync, statSync } from 'node:fs'
import { basename, join } from 'node:path'

/** A log is put aside when it is as long as this, bytes; the one put aside before it goes. */
const MOST = 128_000

/** Places told of one fault. */
const PLACES = 8

/**
 * A log that is written to: `what` is one line of the planner's own words, and of `fault` only its kind and places are
 * kept.
 */
export type Log = { file: string; note(what: string, fault?: unknown): void }

/**
 * What went wrong, one line each, for whoever mends the planner: which kind of fault and where in the code, never with
 * what words, for those may hold a name, a measure or a path. It stays on this machine.
 * @param folder made if it is not there; a log that cannot be written is no fault
 */
export function openLog(folder: string, version: string, now: () => Date): Log {
  const file = join(folder, 'planner.log')
  return {
    file,
    note: (what, fault) => {
      const line = [now().toISOString(), version, process.platform, what, ...placesOf(fault)].join(' ')
      try {
        mkdirSync(folder, { recursive: true })
        if ((statSync(file, { throwIfNoEntry: false })?.size ?? 0) > MOST)
          renameSync(file, join(folder, 'planner.old.log'))
        appendFileSync(file, `${line.replaceAll('\n', ' ').slice(0, 1000)}\n`)
      } catch {}
    },
  }
}

/** Name and code of a fault, and the lines of code it came through, without folders. */
export function placesOf(fault: unknown): string[] {
  if (fault === undefined) return []
  if (!(fault instanceof Error)) return [typeof fault]
  const { code } = fault as { code?: unknown }
  const said = typeof code === 'string' && /^[A-Z][A-Z0-9_]{0,40}$/.test(code) ? [code] : []
  const frames = (fault.stack ?? '')
    .split('\n')
    .map((line) => /^\s+at .*?([^\s()]+:\d+:\d+)\)?$/.exec(line)?.[1])
    .filter((place) => place !== undefined)
    .slice(0, PLACES)
    .map((place) => basename(place.replaceAll('\\', '/')))
  const name = /^\w{1,40}$/.test(fault.name) ? fault.name : 'Error'
  return [name, ...said, ...frames]
}
