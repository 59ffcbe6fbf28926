import { existsSync, mkdirSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { exportStore } from '../store/archive/export.ts'
import { importArchive } from '../store/archive/import.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { findableAnew } from './findable-anew.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'
import { MOST_SENT, received, sentFile } from './sent-file.ts'
import { readerOf } from './settings.ts'
import { removeTakenOut, takenOutFolder, takenOutName } from './taken-out.ts'
import { LISTS, listCsv } from './taking-out-lists.ts'

/** Letters of base64 that are sent at once, of three quarters as many bytes. */
const MOST_AT_ONCE = 1_048_576

/** The workroom as a file to take along, its lists as tables, and bringing it into an empty workroom. */
export const takingOutRequests = [
  request({
    name: 'store.export',
    kind: 'job',
    about:
      'Writes the whole workroom into one ZIP archive: every table as JSON, every paper and picture, and what each is. It lies in the folder `taken-out` beside the store, in the place of the one before.',
    input: z.strictObject({}),
    run: async (_, context) => {
      const { store, now, report, signal } = context
      const at = now()
      const name = takenOutName(store.path, at, 'zip')
      mkdirSync(takenOutFolder(store.path), { recursive: true })
      const path = join(takenOutFolder(store.path), name)
      const { bytes, missing } = await exportStore(store, path, {
        ...{ now: at, signal, reader: readerOf(context) },
        report: (done) => report({ done, doing: 'export' }),
      })
      removeTakenOut(store.path, name)
      return { file: { id: name, name, path, bytes }, missing: missing.length }
    },
  }),
  request({
    name: 'file.send',
    kind: 'command',
    about:
      'Sends a part of a file that is to be brought in, in order, for shells whose page cannot say where a file lies.',
    input: z.strictObject({
      at: z.int().min(0).max(MOST_SENT).describe('bytes sent before it; from 0 it is another file'),
      data: z.base64().min(4).max(MOST_AT_ONCE),
    }),
    run: ({ at, data }, { store }) => ({
      bytes: received(sentFile(store.path), at, Buffer.from(data, 'base64')),
    }),
  }),
  request({
    name: 'store.import',
    kind: 'job',
    about:
      'Brings an archive into an empty workroom, all of it or nothing: the one at `path`, or else the one that was sent.',
    input: z.strictObject({ path: inputs.line(2000).min(1).optional() }),
    run: async ({ path }, context) => {
      const { store, report, signal } = context
      const sent = sentFile(store.path)
      if (path === undefined && !existsSync(sent)) throw new Refusal(phrase('refusal.archive.notSent'))
      if (path !== undefined && !isFile(path))
        throw new Refusal(phrase('refusal.archive.missing', { path }), 'path')
      try {
        const { rows, missing } = await importArchive(path ?? sent, store, {
          ...{ signal, derived: () => findableAnew(context) },
          report: (done) => report({ done, doing: 'import' }),
        })
        return { rows, missing: missing.length }
      } finally {
        if (path === undefined) rmSync(sent, { force: true })
      }
    },
  }),
  request({
    name: 'lists.csv',
    kind: 'query',
    about: 'A whole list as comma-separated text (RFC 4180, UTF-8 with its mark).',
    input: z.strictObject({ list: z.enum(LISTS) }),
    run: ({ list }, context) => ({ name: `ellwand-${list}.csv`, csv: listCsv(list, context) }),
  }),
]

const isFile = (path: string): boolean => existsSync(path) && statSync(path).isFile()
