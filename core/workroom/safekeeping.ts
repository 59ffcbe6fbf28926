import { existsSync, mkdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { z } from 'zod'
import type { Store } from '../store/open.ts'
import { backupFolder, backupsOf } from '../store/safekeeping/files.ts'
import { backUp } from '../store/safekeeping/make.ts'
import { previewOf, wishRestore } from '../store/safekeeping/restore.ts'
import { filesToSeal, seal, unseal } from '../store/safekeeping/seal.ts'
import { findWorkroom } from '../store/workrooms.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'

const one = z.strictObject({ name: inputs.line(200).describe('as the list has it') })

/** Copies of the book, and going back to one. */
export const safekeepingRequests = [
  request({
    name: 'backups.list',
    kind: 'query',
    about: 'The backups of this store, the newest first, with what each was made for.',
    input: z.strictObject({}),
    run: (_, { store }) => ({ backups: backupsOf(store.path) }),
  }),
  request({
    name: 'backup.make',
    kind: 'job',
    about: 'Makes a backup now, and checks it.',
    input: z.strictObject({}),
    run: async (_, { store, now, report }) => ({
      backup: await backUp(store, 'asked', now(), (done) => report({ done, doing: 'backup' })),
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
    run: async ({ name }, { store, now, report }) => {
      const before = await backUp(store, 'before-restore', now(), (done) => report({ done, doing: 'backup' }))
      wishRestore(store.db, store.path, name)
      return { before }
    },
  }),
  request({
    name: 'backup.seal',
    kind: 'job',
    about:
      'Makes a backup with all papers and pictures into one file that only the passphrase opens, to take off-site. It lies in the folder `sealed` beside the store.',
    input: z.strictObject({ passphrase: z.string().max(1000) }),
    run: async ({ passphrase }, { store, now, report }) => {
      const { name } = await backUp(store, 'asked', now())
      const folder = join(dirname(store.path), 'sealed')
      mkdirSync(folder, { recursive: true })
      const path = join(folder, name.replace(/\.ellwand$/, '.sealed'))
      const files = filesToSeal(join(backupFolder(store.path), name), store.attachments)
      await seal(files, path, passphrase, (done) => report({ done, doing: 'seal' }))
      return { path, files: files.length }
    },
  }),
  request({
    name: 'backup.unseal',
    kind: 'job',
    about: 'Opens a sealed backup into an empty folder, where the planner can be started with it.',
    input: z.strictObject({
      path: inputs.line(2000).describe('of the sealed file'),
      folder: inputs.line(2000).describe('empty, or not there yet'),
      passphrase: z.string().max(1000),
    }),
    run: async ({ path, folder, passphrase }) => {
      if (!existsSync(path)) throw new Refusal(phrase('refusal.seal.missing', { path }), 'path')
      return { files: unseal(path, folder, passphrase).length, folder }
    },
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
