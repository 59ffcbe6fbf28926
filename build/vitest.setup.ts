import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { startStore } from '../electron/store-host.ts'
import { threadCode } from '../electron/thread-code.ts'

/**
 * Builds once what the browser and window tests run against, just as it is built for makers, and makes the sample once,
 * which most screens are looked at with: `TEST_SAMPLE` names the folder it lies in.
 */
export default async function setup(): Promise<() => void> {
  const env = { ...process.env, NODE_ENV: 'production' }
  execFileSync(process.execPath, [join(import.meta.dirname, 'build.ts')], { stdio: 'inherit', env })
  const folder = mkdtempSync(join(tmpdir(), 'ellwand-sample-'))
  const store = startStore(folder, threadCode('store-thread'))
  const entered = await store.enter('sample')
  await store.close()
  if (!entered.ok) throw new Error(entered.error.message)
  process.env.TEST_SAMPLE = folder
  return () => rmSync(folder, { recursive: true, force: true })
}
