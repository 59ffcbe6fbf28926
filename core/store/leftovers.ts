import { existsSync, readdirSync, rmSync, statSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'

/** Folders beside a store in which files are written by and by; the sample's are the same. */
const SHARED = ['backups', 'attachments', 'taken-out']
/** What is older was not left by anybody who is still at it, ms. */
const OLD = 3_600_000

/**
 * Takes away what was half written when the planner last ended in the middle of it. Only while nobody else has the store.
 *
 * @param now instant, UTC
 */
export function clearLeftovers(path: string, now: string): void {
  const folder = dirname(path)
  for (const name of readdirSync(folder))
    if (name.startsWith(`${basename(path)}.`) && name.endsWith('.part'))
      rmSync(join(folder, name), { force: true })
  for (const shared of SHARED.map((name) => join(folder, name)).filter((one) => existsSync(one)))
    for (const name of readdirSync(shared))
      if (/\.part$|^unsealing-/.test(name)) removeOld(join(shared, name), Date.parse(now) - OLD)
}

function removeOld(path: string, before: number): void {
  const found = statSync(path, { throwIfNoEntry: false })
  if (found !== undefined && found.mtimeMs < before) rmSync(path, { recursive: true, force: true })
}
