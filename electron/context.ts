import { randomBytes } from 'node:crypto'
import { type Context, idMaker, type Progress, type Store } from '../core/workroom.ts'
import { searchLay } from './lay-host.ts'

/** What the workroom is given by a shell: the real clock, real chance, and where progress is told. */
export function shellContext(store: Store, report: (progress: Progress) => void): Context {
  return {
    store,
    now: () => new Date().toISOString(),
    newId: idMaker(store.db, Date.now, randomBytes),
    random: (bytes) => randomBytes(bytes),
    signal: new AbortController().signal,
    report,
    searchLay,
    actor: 'maker',
  }
}
