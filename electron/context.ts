import { randomBytes } from 'node:crypto'
import { uuidV7 } from '../core/words/id.ts'
import type { Context, Progress, Store } from '../core/workroom.ts'
import { searchLay } from './lay-host.ts'

/** Ids that sort in the order they were made, even within a millisecond. */
function idMaker(): () => string {
  let last = 0
  return () => {
    last = Math.max(Date.now(), last + 1)
    return uuidV7(last, randomBytes(10))
  }
}

/** What the workroom is given by a shell: the real clock, real chance, and where progress is told. */
export function shellContext(store: Store, report: (progress: Progress) => void): Context {
  return {
    store,
    now: () => new Date().toISOString(),
    newId: idMaker(),
    random: (bytes) => randomBytes(bytes),
    signal: new AbortController().signal,
    report,
    searchLay,
    actor: 'maker',
  }
}
