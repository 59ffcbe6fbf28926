import { homedir } from 'node:os'
import { dirname } from 'node:path'
import { z } from 'zod'
import { moveStore } from '../store/safekeeping/move.ts'
import { lookAt } from '../store/safekeeping/places.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'

const folder = inputs.line(4000).min(1).describe('the whole path of a folder of this machine')

/** Putting the book somewhere else. */
export const movingRequests = [
  request({
    name: 'place.look',
    kind: 'query',
    about: 'What is in a folder of this machine, and whether a book is well kept there.',
    input: z.strictObject({
      folder: folder.optional().describe('left out, the folder where one’s files are'),
    }),
    run: (input, { store }) => ({ place: lookAt(input.folder ?? homedir()), present: dirname(store.path) }),
  }),
  request({
    name: 'store.move',
    kind: 'job',
    about:
      'Puts the book with its papers, pictures and backups into another folder. It is written there when it is opened next; until then nothing is written.',
    input: z.strictObject({ folder }),
    run: async (input, { store, report, signal }) => ({
      folder: await moveStore(store, input.folder, {
        signal,
        report: (done) => report({ done, doing: 'move' }),
      }),
    }),
  }),
]
