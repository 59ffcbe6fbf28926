import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { openStore } from '../../core/workroom.ts'
import { STORE_FILES, startStore } from '../../electron/store-host.ts'
import { threadCode } from '../../electron/thread-code.ts'
import { NOON, scratch, workroom } from '../support/store.ts'

test('a large book in which a text is broken is found out while it is open, and nothing more is written to it', async () => {
  const folder = scratch()
  const path = join(folder, STORE_FILES.own)
  const made = openStore(path, { now: NOON })
  await workroom(made).done('workroom.sample')
  const put = made.db.$client.prepare(
    "INSERT INTO sheet (id, kind, name, hash, bytes, pages, created_at) VALUES (?, 'measuringSheet', ?, ?, 1, 1, '2024-01-01')",
  )
  for (let i = 0; i < 40; i++) put.run(`s${i}`, 'x'.repeat(1_000_000), `${i}`)
  made.close()
  const bytes = readFileSync(path)
  bytes[bytes.indexOf('{"version"')] = 0x01
  writeFileSync(path, bytes)
  const store = startStore(folder, threadCode('store-thread'))
  try {
    expect((await store.enter('own')).ok).toBe(true)
    type Described = { ok: true; result: { damaged: object | null } }
    const damaged = async () => ((await store.ask('damaged.describe', {})) as Described).result.damaged
    expect(await damaged()).toBeNull()
    await expect.poll(damaged).not.toBeNull()
    const whole = readFileSync(path)
    expect(await store.ask('client.add', { name: 'Ada' })).toMatchObject({
      ...{ ok: false, error: { code: 'refusal.store.lookOnly' } },
    })
    expect(readFileSync(path).equals(whole)).toBe(true)
  } finally {
    await store.close()
  }
})
