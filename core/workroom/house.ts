import { z } from 'zod'
import { listClients } from '../store/clients.ts'
import { listCloths } from '../store/cloths.ts'
import { countCommissions } from '../store/commissions.ts'
import { countQuotes } from '../store/quotes.ts'
import { findWorkroom } from '../store/workrooms.ts'
import { request } from './request.ts'
import { makeSample } from './sample.ts'
import { settingsOf } from './settings.ts'

/** What the shell and the head of every screen ask first. */
export const houseRequests = [
  request({
    name: 'workroom.describe',
    kind: 'query',
    about: 'Whose workroom this is, whether it is the sample, and what is in it.',
    input: z.strictObject({}),
    run: (_, context) => {
      const { db } = context.store
      return {
        kind: findWorkroom(db)?.kind ?? 'new',
        name: settingsOf(context).letterhead.name,
        clients: listClients(db).length,
        cloths: listCloths(db).length,
        quotes: countQuotes(db),
        commissions: countCommissions(db),
      }
    },
  }),
  request({
    name: 'workroom.sample',
    kind: 'command',
    about: 'Fills a new store with the sample workroom, Tenter Lane. Refused when anything is in it.',
    input: z.strictObject({}),
    run: (_, context) => makeSample(context),
  }),
]
