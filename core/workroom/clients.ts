import { z } from 'zod'
import { getClient, insertClient, listClients, updateClient } from '../store/clients.ts'
import { measurementSetsOf, retiredSetsOf } from '../store/measurement-sets.ts'
import type { Db } from '../store/open.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'

/** A client's sets, oldest first, each with whether it was put aside. */
function setsOf(db: Db, id: string) {
  const retired = retiredSetsOf(db, id)
  return measurementSetsOf(db, id).map((set) => ({ ...set, retired: retired.has(set.id) }))
}

const text = inputs.line(2000).default('')
const fields = z.strictObject({
  name: inputs.named,
  address: z.array(inputs.line(200)).max(8).default([]),
  email: inputs.line(200).default(''),
  phone: inputs.line(60).default(''),
  note: text,
  birthDay: inputs.day.nullable().default(null).describe('for children: decides on cords and fit'),
})

export const clientRequests = [
  request({
    name: 'client.add',
    kind: 'command',
    about: 'Enters a person or house in the book: customer, wearer or both.',
    input: fields,
    run: (given, context) => {
      const client = insertClient(context.store.db, {
        ...given,
        id: context.newId(),
        createdAt: context.now(),
      })
      recorded(context, 'client.add', 'client', client.id, null, client)
      return { client }
    },
  }),
  request({
    name: 'client.change',
    kind: 'command',
    about: 'Changes what the book says of a client. Quotes already made keep it as it was.',
    input: z.strictObject({ id: inputs.id, revision: inputs.revision, client: fields }),
    run: ({ id, revision, client: given }, context) => {
      const before = getClient(context.store.db, id)
      const client = updateClient(context.store.db, id, revision, given)
      recorded(context, 'client.change', 'client', id, before, client)
      return { client }
    },
  }),
  request({
    name: 'client.get',
    kind: 'query',
    about: 'One client, with her measurement sets, oldest first.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, { store }) => ({
      client: getClient(store.db, id),
      measurementSets: setsOf(store.db, id),
    }),
  }),
  request({
    name: 'clients.list',
    kind: 'query',
    about: 'Everyone in the book, by name.',
    input: z.strictObject({}),
    run: (_, { store }) => ({ clients: listClients(store.db) }),
  }),
]
