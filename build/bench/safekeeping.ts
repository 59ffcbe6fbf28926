import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { answer, type Context, openStore, readerOf, requests } from '../../core/workroom.ts'
import { shellContext } from '../../electron/context.ts'
import { summedUp, type Timing } from './timing.ts'

/** A store of many years, bytes. */
const SIZE = 300_000_000
const ROW = 60_000

/**
 * Times a backup and a restore of a large store, and how long another request waits that comes in meanwhile: it is
 * asked again as soon as it was answered, as by a maker who goes on working.
 */
export async function safekeepingTimings(): Promise<Timing[]> {
  const folder = mkdtempSync(join(tmpdir(), 'ellwand-safekeeping-'))
  try {
    const path = join(folder, 'workroom.ellwand')
    const store = openStore(path, { now: new Date().toISOString() })
    const context = shellContext(store, () => {})
    await ask<object>(context, 'client.add', { name: 'Ada Orme' })
    fill(store.db.$client)
    const made = await beside(context, 'backup.make', {})
    const { backup } = made.result as { backup: { name: string } }
    const preview = performance.now()
    await ask(context, 'backup.preview', { name: backup.name })
    const previewed = performance.now() - preview
    const restored = await beside(context, 'backup.restore', { name: backup.name })
    store.close()
    const opening = performance.now()
    openStore(path, { now: new Date().toISOString() }).close()
    const opened = performance.now() - opening
    return [
      summedUp('300 MB: a backup', [made.took]),
      summedUp('300 MB: clients.list while it is made', made.waits),
      summedUp('300 MB: looking into a backup', [previewed]),
      summedUp('300 MB: the backup before going back', [restored.took]),
      summedUp('300 MB: clients.list meanwhile', restored.waits),
      summedUp('300 MB: opening the store, going back to it', [opened]),
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

async function ask<T>(context: Context, name: string, payload: object): Promise<T> {
  const answered = await answer(requests, name, payload, context, readerOf(context))
  if (!answered.ok) throw new Error(`${name}: ${answered.error.message}`)
  return answered.result as T
}

/** Runs a job, and beside it one small request after another. */
async function beside(context: Context, job: string, payload: object) {
  const started = performance.now()
  const waits: number[] = []
  let running = true
  const done = ask<unknown>(context, job, payload).finally(() => {
    running = false
  })
  while (running) {
    const asked = performance.now()
    // A message that comes from the shell is taken up in the loop's next round.
    await new Promise((next) => setTimeout(next, 0))
    await ask(context, 'clients.list', {})
    waits.push(performance.now() - asked)
  }
  const result = await done
  return { result, waits, took: performance.now() - started }
}

/** Sheets with long names, and many small rows of the history. */
function fill(db: ReturnType<typeof openStore>['db']['$client']): void {
  const sheet = db.prepare(
    "INSERT INTO sheet (id, kind, name, hash, bytes, pages, created_at) VALUES (?, 'measuringSheet', ?, ?, 1, 1, '2024-01-01')",
  )
  const change = db.prepare(
    "INSERT INTO change (at, actor, request, entity, entity_id) VALUES ('2024-01-01T00:00:00.000Z', 'maker', 'time.log', 'timeEntry', ?)",
  )
  const long = 'x'.repeat(ROW)
  db.transaction(() => {
    for (let i = 0; i < (0.9 * SIZE) / ROW; i++) sheet.run(`s${i}`, long, `${i}`)
    for (let i = 0; i < 200_000; i++) change.run(`time-${i}`)
  })()
}
