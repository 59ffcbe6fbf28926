import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { listClients } from '../../core/store/clients.ts'
import { documentFile, openStore } from '../../core/workroom.ts'
import { agreedWork, gbp } from '../support/agreed-work.ts'
import { refused } from '../support/refused.ts'
import { NOON, newStore, scratch, workroom } from '../support/store.ts'
import { hasVolumes, smallVolume, withoutVolumes } from '../support/volume.ts'

type Room = ReturnType<typeof workroom>
const now = { now: NOON }
const NOTE = 'likes madder '.repeat(300)

/** Adds clients until the store refuses one; answers the names that were granted and the refusal. */
async function untilRefused({ ask }: Room): Promise<{ granted: string[]; code: string; message: string }> {
  const granted: string[] = []
  for (let i = 0; i < 5000; i++) {
    const name = `Somebody ${i}`
    const answered = await ask('client.add', { name, note: NOTE.slice(0, 2000) })
    if (!answered.ok) return { granted, ...answered.error }
    granted.push(name)
  }
  throw new Error('nothing was refused')
}
const names = ({ store }: Room) => new Set(listClients(store.db).map(({ name }) => name))
const sound = ({ store }: Room) => store.db.$client.pragma('integrity_check', { simple: true })

describe('a disk that is full', () => {
  test('refuses in a sentence, keeps all it granted and nothing of what it refused, and goes on when there is room', async () => {
    const room = workroom()
    const { $client } = room.store.db
    $client.pragma(`max_page_count = ${($client.pragma('page_count', { simple: true }) as number) + 60}`)
    const { granted, code, message } = await untilRefused(room)
    expect(code).toBe('refusal.disk.full')
    expect(message).toBe(
      'The disk is full, so this was not kept; the book is as it was before. Make room on the disk, then do it again.',
    )
    expect(names(room)).toEqual(new Set(granted))
    expect(sound(room)).toBe('ok')
    $client.pragma('max_page_count = 100000')
    await room.done('client.add', { name: 'Ada' })
    expect(names(room).size).toBe(granted.length + 1)
  })

  test.runIf(hasVolumes)(
    `so does a real one, and what was granted is there after closing and opening${withoutVolumes}`,
    async () => {
      const volume = smallVolume('3m')
      const room = workroom(newStore(volume.folder))
      const { granted, code } = await untilRefused(room)
      expect(code).toBe('refusal.disk.full')
      expect(granted.length).toBeGreaterThan(10)
      expect(names(room)).toEqual(new Set(granted))
      const { path } = room.store
      expect(() => room.store.close()).not.toThrow()
      volume.resize('20m')
      const again = workroom(openStore(path, now))
      expect(names(again)).toEqual(new Set(granted))
      expect(sound(again)).toBe('ok')
      again.store.close()
    },
  )

  test.runIf(hasVolumes)(`keeps no half of a picture${withoutVolumes}`, async () => {
    const volume = smallVolume('6m')
    const room = await agreedWork({}, undefined, newStore(volume.folder))
    const { id: commissionId } = await room.accepted()
    const picture = { commissionId, name: 'sleeve.png', data: png(3_000_000).toString('base64') }
    volume.resize('3m')
    expect(await room.refusal('picture.add', picture)).toMatchObject({ code: 'refusal.disk.full' })
    const kept = () => readdirSync(room.store.attachments).filter((name) => !name.endsWith('.part'))
    expect(kept()).toEqual([])
    volume.resize('20m')
    const { picture: added } = await room.done<{ picture: { id: string } }>('picture.add', picture)
    const { address } = await room.done<{ address: string }>('picture.get', { id: added.id })
    expect(address).toBe(`data:image/png;base64,${picture.data}`)
    room.store.close()
  })
})

/** A picture as far as its first bytes say. */
function png(length: number): Buffer {
  const bytes = Buffer.alloc(length, 7)
  Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]).copy(bytes)
  return bytes
}

describe.runIf(hasVolumes)(`a folder that may not be written in${withoutVolumes}`, () => {
  test('is refused in a sentence when it is opened', () => {
    const volume = smallVolume('6m')
    newStore(volume.folder).close()
    volume.forbidWriting()
    const { code, sentence } = refused(() => openStore(join(volume.folder, 'workroom.ellwand'), now))
    expect(code).toBe('refusal.disk.readOnly')
    expect(sentence).toBe(
      'The planner may not write in the folder of the book, so nothing was changed. Allow it to, or put the book into a folder of your own.',
    )
    volume.allowWriting()
    openStore(join(volume.folder, 'workroom.ellwand'), now).close()
  })

  test('is refused in a sentence where there is no book in it yet', () => {
    const volume = smallVolume('6m')
    volume.forbidWriting()
    expect(refused(() => openStore(join(volume.folder, 'workroom.ellwand'), now)).code).toBe(
      'refusal.disk.readOnly',
    )
  })
})

describe('a book that is taken away while it is open', () => {
  const opened = async () => {
    const room = workroom()
    await room.done('client.add', { name: 'Ada' })
    return room
  }
  const backups = ({ store }: Room) => {
    const folder = join(dirname(store.path), 'backups')
    return existsSync(folder) ? readdirSync(folder).filter((name) => name.includes('.moved-')) : []
  }

  test.for(['', '-wal'])(
    'by deleting its file%s: nothing more is granted, and what was is copied',
    async (ending) => {
      const room = await opened()
      rmSync(room.store.path + ending)
      const { code, message } = await room.refusal('client.add', { name: 'Bea' })
      expect(code).toBe('refusal.store.moved')
      expect(message).toContain('Everything before it was saved as a copy in the folder “backups”')
      await room.refusal('client.add', { name: 'Bea' })
      expect(backups(room).length).toBe(1)
      const copy = openStore(join(dirname(room.store.path), 'backups', backups(room)[0]!), now)
      expect(listClients(copy.db).map(({ name }) => name)).toEqual(['Ada'])
      copy.close()
    },
  )

  test('by putting another in its place: that one is not written to', async () => {
    const room = await opened()
    const { path } = room.store
    const other = newStore(scratch())
    const from = other.path
    other.close()
    renameSync(path, `${path}.elsewhere`)
    renameSync(from, path)
    const before = readFileSync(path)
    expect(await room.refusal('client.add', { name: 'Bea' })).toMatchObject({ code: 'refusal.store.moved' })
    expect(readFileSync(path).equals(before)).toBe(true)
  })

  test('with its whole folder: says that no copy could be written', async () => {
    const room = await opened()
    rmSync(dirname(room.store.path), { recursive: true })
    // Something that is no folder stands where the copies would go.
    mkdirSync(dirname(dirname(room.store.path)), { recursive: true })
    writeFileSync(dirname(room.store.path), '')
    expect(await room.refusal('client.add', { name: 'Bea' })).toMatchObject({
      code: 'refusal.store.movedAway',
    })
  })
})

describe('a clock that is put back', () => {
  test('stops nothing: numbers go on, a timer that runs counts no time, and the history keeps its order', async () => {
    const room = await agreedWork()
    const commission = await room.accepted()
    const steps = commission.garments[0]!.steps.map(({ id }) => id)
    await room.done('payment.add', { commissionId: commission.id, amount: gbp(100) })
    await room.done('timer.start', { stepIds: [steps[0]] })
    const tick = room.context.now
    room.context.now = () => new Date(Date.parse(tick()) - 40 * 86_400_000).toISOString()
    const { timer } = await room.done<{ timer: { minutes: number; forgotten: boolean } }>('timer.get')
    expect(timer).toMatchObject({ minutes: 0, forgotten: false })
    const { time } = await room.done<{ time: { minutes: number } }>('timer.stop')
    expect(time.minutes).toBeGreaterThan(0)
    expect(time.minutes).toBeLessThan(1)
    const { payment } = await room.done<{ payment: { number: string } }>('payment.add', {
      ...{ commissionId: commission.id, amount: gbp(200) },
    })
    expect(payment.number).toBe('R-2026-002')
    await room.done('step.tick', { id: steps[0], anyway: ['untried', 'unwashed', 'unmeasured', 'estimated'] })
    type Change = { request: string }
    const { changes } = await room.done<{ changes: Change[] }>('history.list', { id: steps[0] })
    expect(changes.at(-1)?.request).toBe('step.tick')
    await room.done('today.show')
    await room.done('commissions.list')
  })
})

describe('one book by two ways', () => {
  test('is one book: opened by a link, it is busy for who has it open', () => {
    const store = newStore()
    const link = join(scratch(), 'workroom.ellwand')
    symlinkSync(store.path, link)
    expect(refused(() => openStore(link, now)).code).toBe('refusal.store.busy')
  })
})

describe('a file that is gone from beside the book', () => {
  test('a picture: is said to be missing, the rest is shown, and adding it again brings it back', async () => {
    const room = await agreedWork()
    const { id: commissionId } = await room.accepted()
    const given = { commissionId, name: 'sleeve.png', data: png(500).toString('base64') }
    const { picture } = await room.done<{ picture: { id: string } }>('picture.add', given)
    rmSync(room.store.attachments, { recursive: true })
    const { code, message } = await room.refusal('picture.get', { id: picture.id })
    expect(code).toBe('refusal.store.attachmentMissing')
    expect(message).toContain('is missing. Bring it back from a backup.')
    const { pictures } = await room.done<{ pictures: unknown[] }>('notes.list', { commissionId })
    expect(pictures.length).toBe(1)
    await room.done('picture.add', given)
    await room.done('picture.get', { id: picture.id })
  })

  test.for(['missing', 'altered'])('a paper: is said to be %s, and never made up anew', async (how) => {
    const room = await agreedWork()
    const { quote } = await room.done<{ quote: { id: string } }>('quote.save', {
      ...{ customerId: room.client.id, lines: [room.line] },
    })
    type Printed = { document: { id: string; hash: string } }
    const { document } = await room.done<Printed>('quote.print', { id: quote.id })
    const file = join(room.store.attachments, `${document.hash}.pdf`)
    if (how === 'missing') rmSync(file)
    else writeFileSync(file, readFileSync(file).subarray(0, 100))
    const { code, sentence } = refused(() => documentFile(room.context, document.id))
    expect(code).toBe(`refusal.store.attachment${how === 'missing' ? 'Missing' : 'Altered'}`)
    expect(sentence).toContain('Bring it back from a backup.')
    expect(await room.refusal('quote.print', { id: quote.id })).toMatchObject({ code })
  })
})
