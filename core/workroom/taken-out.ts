import { existsSync, readdirSync, rmSync } from 'node:fs'
import { basename, dirname, extname, join } from 'node:path'

/** Where archives and sealed copies of a store are written: the folder `taken-out` beside it. */
export const takenOutFolder = (store: string): string => join(dirname(store), 'taken-out')

/** What is taken out: an archive, or a copy that only a passphrase opens. */
export type TakenOutKind = 'zip' | 'sealed'

/** The name of what is taken out: of which store it is, and of which moment. */
export const takenOutName = (store: string, at: string, kind: TakenOutKind): string =>
  `ellwand-${basename(store, '.ellwand')}-${at.replace(/[:.]/g, '-')}.${kind}`

const NAMED = /^ellwand-(?<store>[\w-]+)-\d{4}-\d\d-\d\dT\d\d-\d\d-\d\d-\d{3}Z\.(?:zip|sealed)$/

const isOf = (store: string, name: string): boolean =>
  NAMED.exec(name)?.groups?.store === basename(store, '.ellwand')

/** The file of that name, if it was taken out of this store and is still there. */
export function takenOutFile(store: string, name: string): { path: string; name: string } | undefined {
  if (!isOf(store, name)) return undefined
  const path = join(takenOutFolder(store), name)
  return existsSync(path) ? { path, name } : undefined
}

/** Takes away what was taken out of this store before, of the same kind: copies of clients' bodies are not to lie about. */
export function removeTakenOut(store: string, but: string): void {
  const folder = takenOutFolder(store)
  for (const name of readdirSync(folder))
    if (name !== but && extname(name) === extname(but) && isOf(store, name))
      rmSync(join(folder, name), { force: true })
}
