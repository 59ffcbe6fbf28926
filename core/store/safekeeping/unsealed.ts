import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { named } from '../disk.ts'
import type { Store } from '../open.ts'
import { type BackupFile, backupFolder, backupName, backupsOf } from './files.ts'
import { unseal } from './seal.ts'

/**
 * Opens a sealed copy and puts its book among the backups of a store, its papers and pictures to those of the store.
 *
 * @throws Refusal when it is no sealed copy, the passphrase is another, or it is damaged; nothing of it stays then
 */
export function unsealed(
  file: string,
  { path, attachments }: Pick<Store, 'path' | 'attachments'>,
  passphrase: string,
  now: string,
): BackupFile {
  mkdirSync(backupFolder(path), { recursive: true })
  const scratch = mkdtempSync(join(backupFolder(path), 'unsealing-'))
  try {
    const opened = join(scratch, 'opened')
    unseal(file, opened, passphrase)
    mkdirSync(attachments, { recursive: true })
    // Files are named by their content: what is here already is the same.
    for (const name of readdirSync(join(opened, 'attachments')))
      if (!existsSync(join(attachments, name)))
        named(join(opened, 'attachments', name), join(attachments, name))
    const name = backupName(path, 'unsealed', now)
    named(join(opened, 'book.ellwand'), join(backupFolder(path), name))
    return backupsOf(path).find((one) => one.name === name)!
  } finally {
    rmSync(scratch, { recursive: true, force: true })
  }
}
