import { existsSync, readdirSync, statSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'

/** What a backup was made for. */
export const BACKUP_REASONS = [
  'start',
  'hourly',
  'asked',
  'before-restore',
  'before-update',
  'before-moving',
  'unsealed',
  'moved',
] as const
export type BackupReason = (typeof BACKUP_REASONS)[number]

/** A backup in the folder `backups` beside a store. It holds the book; papers and pictures lie in `attachments`, and never change. */
export type BackupFile = { name: string; at: string; why: BackupReason; bytes: number }

/** Where the backups of a store lie, which need not be there yet. */
export const backupFolder = (store: string): string => join(dirname(store), 'backups')

/** What a backup is called. @param at instant, UTC ISO 8601 with milliseconds */
export const backupName = (store: string, why: BackupReason, at: string): string =>
  `${basename(store, '.ellwand')}.${why}-${at.replace(/[:.]/g, '-')}.ellwand`

const NAMED = new RegExp(
  `^(?:(?<store>[^.]+)\\.)?(?<why>${BACKUP_REASONS.join('|')})-(?<day>[\\d-]{10})T(?<h>\\d\\d)-(?<m>\\d\\d)-(?<s>\\d\\d)-(?<ms>\\d{3})Z\\.ellwand$`,
)

/** The backups of a store, the newest first. Copies of old that do not say of which store they are belong to the maker's own. */
export function backupsOf(store: string): BackupFile[] {
  const folder = backupFolder(store)
  if (!existsSync(folder)) return []
  const own = basename(store, '.ellwand')
  return readdirSync(folder)
    .flatMap((name): BackupFile[] => {
      const found = NAMED.exec(name)?.groups
      if (found === undefined || (found.store ?? 'workroom') !== own) return []
      const at = `${found.day}T${found.h}:${found.m}:${found.s}.${found.ms}Z`
      return [{ name, at, why: found.why as BackupReason, bytes: statSync(join(folder, name)).size }]
    })
    .sort((a, b) => (a.at < b.at ? 1 : -1))
}
