import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'
import {
  answer,
  type Context,
  idMaker,
  openStore,
  readerOf,
  requests,
  type Store,
} from '../../core/workroom.ts'
import { searchInThreads } from '../../electron/lay-host.ts'

/** A folder of its own for one test, gone afterwards. */
export function scratch(): string {
  const folder = mkdtempSync(join(tmpdir(), 'ellwand-test-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

export const NOON = '2026-03-02T12:00:00.000Z'

export function newStore(folder = scratch()): Store {
  const store = openStore(join(folder, 'workroom.ellwand'), { now: NOON })
  onTestFinished(() => {
    if (store.db.$client.open) store.close()
  })
  return store
}

/** A workroom with a clock and chance of its own: a minute passes with each question for the time. */
export function workroom(store = newStore()) {
  let minutes = 0
  let ids = 0
  const random = (bytes: number) => Uint8Array.from({ length: bytes }, (_, i) => (ids * 31 + i * 7) % 256)
  const context: Context = {
    store,
    now: () => new Date(Date.parse(NOON) + minutes++ * 60_000).toISOString(),
    newId: idMaker(store.db, () => Date.parse(NOON) + ids++, random),
    random,
    signal: new AbortController().signal,
    report: () => {},
    searchLay: async (task, start, { seed, signal, tick }) => {
      tick(0, start)
      return searchInThreads(task, start, { threads: 1, seed, limit: { sweeps: 60 }, signal })
    },
    actor: 'maker',
  }
  const ask = (name: string, payload: unknown = {}) =>
    answer(requests, name, payload, context, readerOf(context))
  /** Asks for what must be granted. */
  async function done<T>(name: string, payload: unknown = {}): Promise<T> {
    const answered = await ask(name, payload)
    if (!answered.ok) throw new Error(`${name}: ${JSON.stringify(answered.error)}`)
    return answered.result as T
  }
  /** Asks for what must be refused. */
  async function refusal(name: string, payload: unknown = {}) {
    const answered = await ask(name, payload)
    if (answered.ok) throw new Error(`${name} was not refused`)
    return answered.error
  }
  return { store, context, ask, done, refusal }
}
