import { expect, test } from 'vitest'
import { english } from '../../core/words/catalogue/english.ts'
import type { RequestName } from '../../core/workroom.ts'
import { requests } from '../../core/workroom.ts'
import { WAYS } from '../../renderer/undo/acts.ts'
import { ANOTHER_BOOK, FINAL } from '../../renderer/undo/final.ts'
import type { Ask } from '../../renderer/undo/way.ts'
import { agreedWork, type FollowedCommission } from '../support/agreed-work.ts'
import { workroom } from '../support/store.ts'

/** Commands by which nothing of the maker's book is altered that she could want back. */
const NOTHING_TO_UNDO = [
  'file.send',
  'quote.waitAgain',
  'commission.takeUp',
  'person.putBack',
  'cloth.putBack',
]

test('every command can be undone, or there is a sentence that says why not', () => {
  const commands = requests.filter(({ kind }) => kind === 'command').map(({ name }) => name)
  expect(commands.length).toBeGreaterThan(70)
  const known = [...Object.keys(WAYS), ...Object.keys(FINAL), ...ANOTHER_BOOK, ...NOTHING_TO_UNDO]
  expect(commands.filter((name) => !known.includes(name))).toEqual([])
})

test('nothing is both', () => {
  expect(Object.keys(WAYS).filter((name) => name in FINAL)).toEqual([])
})

test('what can be undone has a name', () => {
  expect(Object.keys(WAYS).filter((name) => !(`undo.did.${name}` in english))).toEqual([])
})

test('with the first settings a workroom begins: there is nothing to go back to', async () => {
  const { done } = workroom()
  const ask = ((of: string, given: unknown) => done(of, given)) as Ask
  const way = WAYS['settings.set']!
  const steps = async (revision: number) => {
    const payload = { revision, changes: { letterhead: { name: 'Weir Lane' } } }
    const before = await way.before?.(payload as never, ask)
    const answer = await done('settings.set', payload)
    return way.back({ given: payload as never, answer: answer as never, before: before as never })
  }
  expect(await steps(0)).toEqual([])
  expect(await steps(1)).toHaveLength(1)
})

/** Asks as the screens do, and takes back what was done as they do. */
async function doneAndUndone(
  { done }: Pick<ReturnType<typeof workroom>, 'done'>,
  name: RequestName,
  payload: Record<string, unknown>,
): Promise<void> {
  const ask = ((of: string, given: unknown) => done(of, given)) as Ask
  const way = WAYS[name]!
  const before = await way.before?.(payload as never, ask)
  const answer = await done(name, payload)
  const steps = way.back({ given: payload as never, answer: answer as never, before: before as never })
  expect(steps.length, name).toBeGreaterThan(0)
  for (const step of steps) await done(step.name, step.payload)
}

test('what puts the old state in its place again leaves it as it was', async () => {
  const house = workroom()
  const { done } = house
  await done('settings.set', { revision: 0, changes: { letterhead: { name: 'Weir Lane' } } })
  const { client } = await done<{ client: { id: string; revision: number } }>('client.add', { name: 'Ása' })
  const { cloth } = await done<{ cloth: { id: string; revision: number } }>('cloth.add', {
    ...{ name: 'White linen', width: 1500, pricePerMetre: { minor: 1650, currency: 'GBP' } },
  })
  const { length } = await done<{ length: { id: string; revision: number } }>('stock.add', {
    ...{ clothId: cloth.id, length: '4 m', place: 'top shelf' },
  })
  const { person } = await done<{ person: { id: string; revision: number } }>('person.add', {
    ...{ name: 'Ida', skills: ['cutting'], week: [300, 300, 0, 0, 0, 0, 0] },
  })
  const seen = async () => {
    const { settings } = await done<{ settings: unknown }>('settings.get')
    const { cloths } = await done<{ cloths: object[] }>('cloths.list')
    const { lengths } = await done<{ lengths: object[] }>('stock.list', { used: true })
    const { people, away } = await done<{ people: object[]; away: object[] }>('people.list')
    const bare = (rows: readonly object[]) => rows.map((row) => ({ ...row, revision: 0 }))
    const { client: book } = await done<{ client: object }>('client.get', { id: client.id })
    const { supplies } = await done<{ supplies: { left: number }[] }>('supplies.list')
    return [
      ...[settings, bare(cloths), bare(lengths), bare(people), bare(away), bare([book])],
      supplies.map(({ left }) => left),
    ]
  }
  const before = await seen()
  await doneAndUndone(house, 'settings.set', {
    ...{ revision: 1, changes: { hoursPerWeek: 11, letterhead: { phone: '01' } } },
  })
  await doneAndUndone(house, 'client.change', {
    ...{ id: client.id, revision: client.revision },
    client: { name: 'Ása Holt', phone: '02' },
  })
  await doneAndUndone(house, 'cloth.change', {
    ...{ id: cloth.id, revision: cloth.revision },
    cloth: { name: 'Linen', width: 1400, pricePerMetre: { minor: 1, currency: 'GBP' } },
  })
  await doneAndUndone(house, 'cloth.add', {
    ...{ name: 'Grey twill', width: 1400, pricePerMetre: { minor: 2200, currency: 'GBP' } },
  })
  await doneAndUndone(house, 'stock.change', { id: length.id, revision: length.revision, place: 'chest' })
  await doneAndUndone(house, 'stock.count', { id: length.id, length: '1 m' })
  await doneAndUndone(house, 'person.change', {
    ...{ id: person.id, revision: person.revision },
    person: { name: 'Ada', skills: ['fitting'], week: [0, 0, 0, 0, 0, 0, 60] },
  })
  await doneAndUndone(house, 'person.add', { name: 'Odo', skills: ['cutting'], week: [9, 0, 0, 0, 0, 0, 0] })
  await doneAndUndone(house, 'away.add', { from: '2026-05-01', to: '2026-05-02' })
  await doneAndUndone(house, 'supply.count', { supply: 'thread:hand', amount: 40 })
  expect(await seen()).toEqual(before)
})

test('of a commission too: its steps, days, notes, times, fittings, cloth, and how it ends', async () => {
  const house = await agreedWork()
  const { done, accepted, cloth } = house
  type Row = { id: string; revision: number }
  const { length } = await done<{ length: Row }>('stock.add', { clothId: cloth.id, length: '9 m' })
  const { id, garments } = await accepted({ dueDay: '2026-06-01' })
  const commissionId = id
  const steps = garments[0]!.steps
  const { note } = await done<{ note: Row }>('note.add', { commissionId, text: 'neck closer' })
  const { time } = await done<{ time: Row }>('time.log', { stepIds: [steps[0]!.id], minutes: 30 })
  const { fitting } = await done<{ fitting: Row }>('fitting.add', { commissionId, day: '2026-04-01' })
  const commission = async () =>
    (await done<{ commission: FollowedCommission }>('commission.get', { id })).commission
  const bare = (rows: readonly object[]) => rows.map((row) => ({ ...row, revision: 0 }))
  const seen = async () => {
    const { notes } = await done<{ notes: object[] }>('notes.list', { commissionId })
    const { times } = await done<{ times: object[] }>('times.list', { commissionId })
    const { fittings } = await done<{ fittings: object[] }>('fittings.list', { commissionId })
    const { lengths } = await done<{ lengths: object[] }>('stock.list', {})
    const { garments: made, ...row } = await commission()
    return {
      ...{ ...row, revision: 0, lengths: bare(lengths), notes: bare(notes), times: bare(times) },
      ...{ fittings: bare(fittings), ticked: made[0]!.steps.map(({ doneAt }) => doneAt !== null) },
    }
  }
  const before = await seen()
  expect(JSON.stringify(before.lengths)).toContain(garments[0]!.id)
  const now = async (of: Row, list: string, key: string) => {
    const rows = (await done<Record<string, Row[]>>(list, { commissionId }))[key]!
    return { id: of.id, revision: rows.find((row) => row.id === of.id)!.revision }
  }
  const itself = async () => ({ id, revision: (await commission()).revision })
  await doneAndUndone(house, 'note.change', { ...(await now(note, 'notes.list', 'notes')), text: 'wider' })
  await doneAndUndone(house, 'note.remove', await now(note, 'notes.list', 'notes'))
  // Once more, now that it was taken off and put back.
  await doneAndUndone(house, 'note.change', { ...(await now(note, 'notes.list', 'notes')), text: 'wider' })
  await doneAndUndone(house, 'time.change', { ...(await now(time, 'times.list', 'times')), minutes: 90 })
  await doneAndUndone(house, 'time.setAside', await now(time, 'times.list', 'times'))
  await doneAndUndone(house, 'time.remove', await now(time, 'times.list', 'times'))
  await doneAndUndone(house, 'fitting.move', {
    ...{ ...(await now(fitting, 'fittings.list', 'fittings')), day: '2026-04-09', time: '14:30' },
  })
  await doneAndUndone(house, 'fitting.remove', await now(fitting, 'fittings.list', 'fittings'))
  await doneAndUndone(house, 'commission.change', { ...(await itself()), dueDay: null, note: 'for the fair' })
  await doneAndUndone(house, 'stock.release', { id: length.id, garmentId: garments[0]!.id })
  await doneAndUndone(house, 'step.tick', { id: steps[0]!.id })
  await doneAndUndone(house, 'stage.tick', { garmentId: garments[0]!.id, stage: 'sew' })
  await doneAndUndone(house, 'commission.deliver', await itself())
  await doneAndUndone(house, 'commission.cancel', await itself())
  expect(await seen()).toEqual(before)
})
