import { existsSync, mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import type { Store } from '../store/open.ts'
import { backupFolder, backupsOf } from '../store/safekeeping/files.ts'
import { forgetInBackups, forgottenStillIn } from '../store/safekeeping/forgotten.ts'
import { backUp } from '../store/safekeeping/make.ts'
import { previewOf, wishRestore } from '../store/safekeeping/restore.ts'
import { filesToSeal, seal } from '../store/safekeeping/seal.ts'
import { unsealed } from '../store/safekeeping/unsealed.ts'
import { findWorkroom } from '../store/workrooms.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'
import { sentFile } from './sent-file.ts'
import { removeTakenOut, takenOutFolder, takenOutName } from './taken-out.ts'
import { told } from './told.ts'

const one = z.strictObject({ name: inputs.line(200).describe('as the list has it') })

/** Copies of the book, and going back to one. */
export const safekeepingRequests = [
  request({
    name: 'backups.list',
    kind: 'query',
    about:
      'The backups of this store, the newest first: what each was made for, and how many people it still holds who were forgotten since.',
    input: z.strictObject({}),
    run: (_, { store }) => ({
      folder: backupFolder(store.path),
      backups: backupsOf(store.path).map((one) => ({ ...one, forgotten: forgottenStillIn(store, one.name) })),
    }),
  }),
  request({
    name: 'backup.make',
    kind: 'job',
    about: 'Makes a backup now, and checks it.',
    input: z.strictObject({}),
    run: async (_, context) => ({
      backup: await backUp(context.store, 'asked', context.now(), told(context, 'backup')),
    }),
  }),
  request({
    name: 'backup.preview',
    kind: 'query',
    about: 'What going back to a backup would change: what would be gone, and what would come back.',
    input: one,
    run: ({ name }, { store }) => ({ counted: previewOf(store.db, store.path, name) }),
  }),
  request({
    name: 'backup.restore',
    kind: 'job',
    about:
      'Makes a backup of the store as it is and writes down that it is to go back to another: that happens when it is opened next.',
    input: one,
    run: async ({ name }, context) => {
      const { store, now } = context
      const before = await backUp(store, 'before-restore', now(), told(context, 'backup'))
      wishRestore(store.db, store.path, name)
      return { before }
    },
  }),
  request({
    name: 'backup.seal',
    kind: 'job',
    about:
      'Makes a backup with all papers and pictures into one file that only the passphrase opens, to take off-site. It lies in the folder `taken-out` beside the store, in the place of the one before.',
    input: z.strictObject({ passphrase: z.string().max(1000) }),
    run: async ({ passphrase }, context) => {
      const { store, now } = context
      const at = now()
      const backup = await backUp(store, 'asked', at)
      const name = takenOutName(store.path, at, 'sealed')
      const folder = takenOutFolder(store.path)
      mkdirSync(folder, { recursive: true })
      const files = filesToSeal(join(backupFolder(store.path), backup.name), store.attachments)
      await seal(files, join(folder, name), passphrase, told(context, 'seal'))
      removeTakenOut(store.path, name)
      return { file: { id: name, name, path: join(folder, name) }, files: files.length }
    },
  }),
  request({
    name: 'backup.unseal',
    kind: 'job',
    about:
      'Opens a sealed backup, the one at `path` or else the one that was sent: it comes among the backups, its papers and pictures to the others.',
    input: z.strictObject({ path: inputs.line(2000).min(1).optional(), passphrase: z.string().max(1000) }),
    run: async ({ path, passphrase }, { store, now }) => {
      const sent = sentFile(store.path)
      if (path === undefined && !existsSync(sent)) throw new Refusal(phrase('refusal.seal.notSent'))
      if (path !== undefined && !existsSync(path))
        throw new Refusal(phrase('refusal.seal.missing', { path }), 'path')
      const backup = unsealed(path ?? sent, store, passphrase, now())
      // A passphrase may be mistyped: what was sent stays until it is opened.
      if (path === undefined) rmSync(sent, { force: true })
      return { backup }
    },
  }),
  request({
    name: 'backups.forget',
    kind: 'job',
    about: 'Takes whoever was forgotten since out of the backups too.',
    input: z.strictObject({}),
    run: async (_, context) => ({
      backups: await forgetInBackups(context.store, context.now(), told(context, 'forget')),
    }),
  }),
]

/** A backup is due when the last one is so old, ms: a little under an hour, so that an hourly bell never finds it too young. */
const DUE_AFTER = 55 * 60_000

/** Makes a backup where one is due: not of a workroom that nobody has begun, nor of what was saved of a damaged one, and not so soon after the last one. */
export async function backUpIfDue(store: Store, why: 'start' | 'hourly', now: string): Promise<void> {
  if (store.damaged !== undefined || findWorkroom(store.db) === undefined) return
  const [last] = backupsOf(store.path)
  if (last !== undefined && Math.abs(Date.parse(now) - Date.parse(last.at)) < DUE_AFTER) return
  await backUp(store, why, now)
}
