import { z } from 'zod'
import { changesOf, recordChange } from '../store/changes.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'

/** Writes a change into the history, in the transaction that makes it. */
export function recorded(
  context: Context,
  name: string,
  entity: string,
  entityId: string,
  before: unknown,
  after: unknown,
): void {
  const { store, actor, now } = context
  recordChange(store.db, {
    at: now(),
    actor,
    request: name,
    entity,
    entityId,
    before: before ?? null,
    after: after ?? null,
  })
}

/** Looking at what happened. */
export const historyRequests = [
  request({
    name: 'history.list',
    kind: 'query',
    about: 'What happened to one thing, oldest first.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, { store }) => ({ changes: changesOf(store.db, id) }),
  }),
]
