import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { putAttachment } from '../../core/store/attachments.ts'
import { refuseNoRoom } from '../../core/store/disk.ts'
import { backUp } from '../../core/store/safekeeping/make.ts'
import { moveStore } from '../../core/store/safekeeping/move.ts'
import { caresOf, lookAt } from '../../core/store/safekeeping/places.ts'
import { openStore } from '../../core/workroom.ts'
import { refused } from '../support/refused.ts'
import { NOON, scratch, workroom } from '../support/store.ts'

const steps = (signal = new AbortController().signal, report: (done: number) => void = () => {}) => ({
  signal,
  report,
})

/** A store with a client, a paper and a backup. */
async function movable() {
  const home = scratch()
  const path = join(home, 'workroom.ellwand')
  const open = () => openStore(path, { now: NOON })
  const store = open()
  await workroom(store).done('client.add', { name: 'Łucja' })
  const { hash } = putAttachment(store.attachments, Uint8Array.of(1, 2, 3), 'pdf')
  await backUp(store, 'asked', NOON)
  return { home, path, store, open, paper: `${hash}.pdf` }
}

const names = async (store: ReturnType<typeof openStore>) =>
  (await workroom(store).done<{ clients: { name: string }[] }>('clients.list')).clients.map(
    ({ name }) => name,
  )

describe('putting the book somewhere else', () => {
  test('brings papers and backups along, is gone on with there, and can be put back', async () => {
    const { home, path, store, open, paper } = await movable()
    const target = scratch()
    const told: number[] = []
    expect(
      await moveStore(
        store,
        target,
        steps(undefined, (done) => told.push(done)),
      ),
    ).toBe(target)
    expect(told.at(-1)).toBeCloseTo(1)
    expect(told).toEqual(told.toSorted((a, b) => a - b))
    expect((await workroom(store).refusal('client.add', { name: 'Bea' })).code).toBe('refusal.store.left')
    store.close()
    const there = open()
    expect([there.path, dirname(there.attachments)]).toEqual([join(target, 'workroom.ellwand'), target])
    expect(readdirSync(there.attachments)).toEqual([paper])
    await workroom(there).done('client.add', { name: 'Bea' })
    // In the old place a backup is left, and no book that could be taken for the present one.
    expect(existsSync(path)).toBe(false)
    const left = readdirSync(join(home, 'backups')).map((name) => /\.([a-z-]+?)-\d/.exec(name)?.[1])
    expect(left.sort()).toEqual(['asked', 'before-moving'])
    await moveStore(there, home, steps())
    there.close()
    const back = open()
    expect(back.path).toBe(path)
    expect(existsSync(`${path}.moved-to`)).toBe(false)
    expect(await names(back)).toEqual(['Bea', 'Łucja'])
    // And it may go there again.
    await moveStore(back, target, steps())
    back.close()
    const again = open()
    expect(again.path).toBe(join(target, 'workroom.ellwand'))
    again.close()
  })

  test('is refused where it cannot be, and nothing is left there', async () => {
    const { home, path, store, open } = await movable()
    const refusal = async (folder: string) => {
      const error = await moveStore(store, folder, steps()).catch((thrown: unknown) => thrown)
      return (error as { phrase: { code: string } }).phrase.code
    }
    const taken = scratch()
    writeFileSync(join(taken, 'workroom.ellwand'), 'another')
    writeFileSync(join(home, 'file'), '')
    expect(await refusal('workroom')).toBe('refusal.place.noPath')
    expect(await refusal(join(home, 'none'))).toBe('refusal.place.noFolder')
    expect(await refusal(join(home, 'file'))).toBe('refusal.place.noFolder')
    expect(await refusal(home)).toBe('refusal.place.same')
    expect(await refusal(taken)).toBe('refusal.place.taken')
    // Nobody may write here, not even the system's own master.
    if (existsSync('/proc/self')) expect(await refusal('/proc/self')).toBe('refusal.place.unwritable')
    expect(readFileSync(join(taken, 'workroom.ellwand'), 'utf8')).toBe('another')
    expect(readdirSync(taken)).toEqual(['workroom.ellwand'])
    await workroom(store).done('client.add', { name: 'Bea' })
    store.close()
    expect(existsSync(path)).toBe(true)
    const again = open()
    expect(await names(again)).toEqual(['Bea', 'Łucja'])
    again.close()
  })

  test('stopped on the way leaves the new place empty and the old one in use, also when it is closed meanwhile', async () => {
    const { path, store, open } = await movable()
    const stop = new AbortController()
    const target = scratch()
    const stopped = moveStore(
      store,
      target,
      steps(stop.signal, () => stop.abort()),
    )
    await expect(stopped).rejects.toMatchObject({ name: 'AbortError' })
    expect(readdirSync(target)).toEqual([])
    await workroom(store).done('client.add', { name: 'Bea' })
    const moving = moveStore(store, target, steps())
    store.close()
    await expect(moving).rejects.toThrow()
    const again = open()
    expect([again.path, await names(again)]).toEqual([path, ['Bea', 'Łucja']])
    again.close()
  })

  test('and then unplugged, it is not taken for a new, empty workroom', async () => {
    const { path, store, open } = await movable()
    const disk = join(scratch(), 'disk')
    mkdirSync(disk)
    await moveStore(store, disk, steps())
    store.close()
    renameSync(disk, `${disk}-away`)
    expect(refused(open)).toMatchObject({
      ...{ code: 'refusal.place.gone', sentence: expect.stringContaining(disk) },
    })
    renameSync(`${disk}-away`, disk)
    expect(await names(open())).toEqual(['Łucja'])
    writeFileSync(`${path}.moved-to`, 'disk')
    expect(refused(open).code).toBe('refusal.place.unreadable')
  })
})

test.runIf(existsSync('/proc/self'))('no room: it is said what is needed and what there is', () => {
  // The system's folder of processes has no room for anything.
  expect(refused(() => refuseNoRoom('/proc', 12_300_000))).toMatchObject({
    ...{ code: 'refusal.place.noRoom', sentence: expect.stringContaining('13 MB are needed, and 0 MB') },
  })
  expect(() => refuseNoRoom(scratch(), 1)).not.toThrow()
})

describe('a folder', () => {
  const MOUNTS = [
    ...['/dev/sda1 / ext4 rw 0 0', '//host/share /mnt/our\\040share cifs rw 0 0'],
    ...['host:/x /home/nfs nfs4 rw 0 0', '/dev/sdb1 /home/nfs/stick vfat rw 0 0'],
    ...['me@host: /mnt/far fuse.sshfs rw 0 0', 'someone /mnt/near fuse.ntfs-3g rw 0 0'],
  ].join('\n')

  test.each<[string, string[]]>([
    ['/home/ada/books', []],
    ['/mnt/our share', ['network']],
    ['/mnt/our share/books', ['network']],
    ['/mnt/our shares', []],
    ['/home/nfs/books', ['network']],
    ['/home/nfs/stick/books', []],
    ['/mnt/far', ['network']],
    ['/mnt/near', []],
    ['\\\\host\\share\\books', ['network']],
    ['C:\\Users\\ada\\books', []],
    ['/home/ada/Synced Things/books', ['copied']],
    ['C:\\Users\\ada\\My Cloud\\books', ['copied']],
    ['/mnt/our share/cloud', ['network', 'copied']],
  ])('is known by general signs: %s has %j', (folder, cares) => {
    expect(caresOf(folder, MOUNTS)).toEqual(cares)
  })

  test('is looked at: what is in it and what is above', () => {
    const folder = scratch()
    for (const name of ['Zwirn', 'attic', '.hidden']) mkdirSync(join(folder, name))
    writeFileSync(join(folder, 'letter.txt'), '')
    symlinkSync(join(folder, 'nowhere'), join(folder, 'broken'))
    expect(lookAt(folder)).toMatchObject({
      ...{ folder, above: dirname(folder), folders: ['attic', 'Zwirn'], writable: true, cares: [] },
    })
    expect(lookAt('/').above).toBeNull()
    expect(refused(() => lookAt('books')).code).toBe('refusal.place.noPath')
    expect(refused(() => lookAt(`${folder}/\0`)).code).toBe('refusal.place.noPath')
    expect(refused(() => lookAt(join(folder, 'letter.txt'))).code).toBe('refusal.place.noFolder')
  })
})
