import type { InputOf, RequestName } from '../../core/workroom.ts'
import { type Ask, type Step, type Way, wayFrom } from './way.ts'

const mm = (length: number) => (length === 0 ? (0 as const) : length)

/** What is taken back by putting what was there before in its place again: that is looked up before it is gone. */
export const LOOKED_UP: Partial<Record<RequestName, Way>> = {
  'client.change': wayFrom(
    'client.change',
    async ({ id }, ask) => {
      const { name, address, email, phone, note, birthDay } = (await ask('client.get', { id })).client
      return { name, address, email, phone, note, birthDay }
    },
    ({ given: { id }, answer, before }) => [
      { name: 'client.change', payload: { id, revision: answer.client.revision, client: before } },
    ],
  ),
  'person.change': wayFrom(
    'person.change',
    async ({ id }, ask) => {
      const found = (await ask('people.list', {})).people.find((one) => one.id === id)
      if (found === undefined) return undefined
      const { name, skills, week, handCap } = found
      return { name, skills: [...skills], week: [...week], handCap }
    },
    ({ given: { id }, answer, before }) =>
      before === undefined
        ? []
        : [{ name: 'person.change', payload: { id, revision: answer.person.revision, person: before } }],
  ),
  'note.change': wayFrom(
    'note.change',
    async ({ id }, ask) => noteBefore(id, ask),
    ({ answer: { note }, before }) =>
      before === undefined
        ? []
        : [{ name: 'note.change', payload: { id: note.id, revision: note.revision, ...before } }],
  ),
  'time.change': wayFrom(
    'time.change',
    async ({ id }, ask) => timeBefore(id, ask),
    ({ answer: { time }, before }) =>
      before === undefined
        ? []
        : [{ name: 'time.change', payload: { id: time.id, revision: time.revision, ...before } }],
  ),
  'fitting.move': wayFrom(
    'fitting.move',
    async ({ id }, ask) => fittingBefore(id, ask),
    ({ answer: { fitting }, before }) =>
      before === undefined
        ? []
        : [{ name: 'fitting.move', payload: { id: fitting.id, revision: fitting.revision, ...before } }],
  ),
  'commission.change': wayFrom(
    'commission.change',
    async ({ id }, ask) => {
      const { dueDay, eventDay, note } = (await ask('commission.get', { id })).commission
      return { dueDay, eventDay, note }
    },
    ({ given: { id }, answer: { commission }, before }) => [
      { name: 'commission.change', payload: { id, revision: commission.revision, ...before } },
    ],
  ),
  'commission.reopen': wayFrom(
    'commission.reopen',
    async ({ id }, ask) => (await ask('commission.get', { id })).commission.deliveredDay,
    ({ answer: { commission }, before }) => [
      {
        name: 'commission.deliver',
        payload: {
          ...{ id: commission.id, revision: commission.revision },
          ...(before === null ? {} : { day: before }),
        },
      },
    ],
  ),
  'stock.change': wayFrom(
    'stock.change',
    async ({ id }, ask) => {
      const found = await lengthBefore(id, ask)
      if (found === undefined) return undefined
      const { place, supplier, note, orderedDay, expectedDay, arrivedDay } = found
      return { place, supplier, note, orderedDay, expectedDay, arrivedDay }
    },
    ({ answer: { length }, before }) =>
      before === undefined
        ? []
        : [{ name: 'stock.change', payload: { id: length.id, revision: length.revision, ...before } }],
  ),
  'stock.count': wayFrom(
    'stock.count',
    async ({ id }, ask) => lengthBefore(id, ask),
    ({ given: { id }, before }) =>
      before === undefined ? [] : [{ name: 'stock.count', payload: { id, length: mm(before.length) } }],
  ),
  'stock.release': wayFrom(
    'stock.release',
    async ({ id }, ask) => lengthBefore(id, ask),
    ({ given: { id, garmentId }, before }) => {
      const held = before?.reservedFor.find((one) => one.garmentId === garmentId)
      return held === undefined
        ? []
        : [{ name: 'stock.reserve', payload: { id, garmentId, length: held.mm } }]
    },
  ),
  'supply.add': wayFrom('supply.add', suppliesBefore, countedBack),
  'supply.count': wayFrom('supply.count', suppliesBefore, countedBack),
  'remnants.keep': wayFrom(
    'remnants.keep',
    async (_, ask) => (await ask('remnants.list', {})).remnants.map(({ id }) => id),
    ({ answer: { remnants }, before }) =>
      remnants
        .filter(({ id }) => !before.includes(id))
        .map(({ id }): Step => ({ name: 'remnant.use', payload: { id } })),
  ),
  'remnant.place': wayFrom(
    'remnant.place',
    async ({ id }, ask) =>
      (await ask('remnants.list', {})).remnants.find((one) => one.id === id)?.place ?? '',
    ({ given: { id }, before }) => [{ name: 'remnant.place', payload: { id, place: before } }],
  ),
  'cloth.change': wayFrom(
    'cloth.change',
    async ({ id }, ask) => clothBefore(id, ask),
    ({ given: { id }, answer: { cloth }, before }) =>
      before === undefined
        ? []
        : [{ name: 'cloth.change', payload: { id, revision: cloth.revision, cloth: before } }],
  ),
  'cloth.testSquare': wayFrom(
    'cloth.testSquare',
    async ({ id }, ask) => clothBefore(id, ask),
    ({ given: { id }, answer: { cloth }, before }) =>
      before === undefined
        ? []
        : [{ name: 'cloth.change', payload: { id, revision: cloth.revision, cloth: before } }],
  ),
  'settings.set': wayFrom(
    'settings.set',
    async (_, ask) => {
      const { letterhead, ...settings } = (await ask('settings.get', {})).settings
      const { mark: _mark, ...written } = letterhead
      return { ...settings, letterhead: written }
    },
    // With the first settings the workroom begins: before it there was none to go back to.
    ({ given, answer: { revision }, before }) =>
      given.revision === 0
        ? []
        : [
            {
              name: 'settings.set',
              payload: { revision, changes: before as InputOf<'settings.set'>['changes'] },
            },
          ],
  ),
  'mark.set': wayFrom(
    'mark.set',
    async (_, ask) => (await ask('mark.get', {})).address?.split(',')[1] ?? null,
    ({ answer: { revision }, before }) => [{ name: 'mark.set', payload: { revision, data: before } }],
  ),
}

/** What the history says that a thing held last of some fields; undefined when it does not hold them all. */
async function heldBefore(id: string, fields: readonly string[], ask: Ask) {
  const { changes } = await ask('history.list', { id })
  return changes
    .map(({ after }) => (after ?? {}) as Record<string, unknown>)
    .findLast((after) => fields.every((field) => after[field] !== undefined))
}

async function noteBefore(id: string, ask: Ask) {
  const held = (await heldBefore(id, ['text', 'day'], ask)) as { text: string; day: string } | undefined
  return held && { text: held.text, day: held.day }
}

async function fittingBefore(id: string, ask: Ask) {
  const held = (await heldBefore(id, ['day', 'time'], ask)) as
    | { day: string; time: string | null }
    | undefined
  return held && { day: held.day, time: held.time ?? '' }
}

async function timeBefore(id: string, ask: Ask) {
  const fields = ['minutes', 'day', 'note']
  const held = (await heldBefore(id, fields, ask)) as
    | { minutes: number; day: string; note: string }
    | undefined
  return held && { minutes: held.minutes, day: held.day, note: held.note }
}

const lengthBefore = async (id: string, ask: Ask) =>
  (await ask('stock.list', { used: true })).lengths.find((one) => one.id === id)

const clothBefore = async (id: string, ask: Ask) => {
  const found = (await ask('cloths.list', {})).cloths.find((one) => one.id === id)
  if (found === undefined) return undefined
  const { id: _id, revision: _seen, createdAt: _at, retiredAt: _off, priceMinor, currency, ...kept } = found
  return { ...kept, pricePerMetre: { minor: priceMinor, currency } }
}

function countedBack({
  given: { supply },
  before,
}: {
  given: { supply: string }
  before: { left: number; counted: boolean }
}): readonly Step[] {
  return [{ name: 'supply.count', payload: { supply, amount: Math.max(0, before.left) } }]
}

async function suppliesBefore({ supply }: { supply: string }, ask: Ask) {
  const found = (await ask('supplies.list', {})).supplies.find(({ id }) => id === supply)
  return { left: found?.left ?? 0, counted: found?.counted ?? false }
}
