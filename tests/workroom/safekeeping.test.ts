import { copyFileSync, existsSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { openStore } from '../../core/workroom.ts'
import { WOMAN } from '../support/bodies.ts'
import { NOON, newStore, scratch, workroom } from '../support/store.ts'

const PASSPHRASE = 'three yards of fustian'
type Id = { id: string }
type Backup = { name: string; why: string; forgotten: number | null }

async function sealedRoom() {
  const room = workroom(newStore())
  await room.done('client.add', { name: 'Łucja' })
  type Sealed = { file: { id: string; path: string }; files: number }
  return { room, ...(await room.done<Sealed>('backup.seal', { passphrase: PASSPHRASE })) }
}

describe('a sealed copy', () => {
  test('is opened on another machine: sent in parts, it comes among the copies, and can be gone back to', async () => {
    const { file } = await sealedRoom()
    const other = workroom(newStore())
    const bytes = readFileSync(file.path)
    for (let at = 0; at < bytes.length; at += 60_000)
      await other.done('file.send', { at, data: bytes.subarray(at, at + 60_000).toString('base64') })
    // Mistyped, it need not be sent again.
    expect((await other.refusal('backup.unseal', { passphrase: 'three yards of fustic' })).code).toBe(
      'refusal.seal.passphrase',
    )
    const { backup } = await other.done<{ backup: Backup }>('backup.unseal', { passphrase: PASSPHRASE })
    expect(backup.why).toBe('unsealed')
    expect((await other.refusal('backup.unseal', { passphrase: PASSPHRASE })).code).toBe(
      'refusal.seal.notSent',
    )
    await other.done('backup.restore', { name: backup.name })
    other.store.close()
    const again = workroom(openStore(other.store.path, { now: NOON }))
    expect(await again.done('clients.list')).toMatchObject({ clients: [{ name: 'Łucja' }] })
    again.store.close()
  })

  test('is one file of the newest kind, and nothing of it stays where the passphrase is too short', async () => {
    const { room, file } = await sealedRoom()
    expect((await room.refusal('backup.seal', { passphrase: 'short' })).code).toBe('refusal.seal.short')
    const folder = join(file.path, '..')
    expect(readdirSync(folder)).toEqual([file.id])
    const next = await room.done<{ file: Id }>('backup.seal', { passphrase: PASSPHRASE })
    expect(readdirSync(folder)).toEqual([next.file.id])
    const missing = join(scratch(), 'none.sealed')
    expect(await room.refusal('backup.unseal', { path: missing, passphrase: PASSPHRASE })).toMatchObject({
      ...{ code: 'refusal.seal.missing', field: 'path' },
    })
  })
})

describe('whoever was forgotten', () => {
  test('is told to be in the copies still, and is taken out of them', async () => {
    const room = workroom(newStore())
    const { client } = await room.done<{ client: Id }>('client.add', { name: 'Łucja', note: 'likes madder' })
    await room.done('measurementSet.add', {
      ...{ clientId: client.id, day: '2026-03-02', measures: WOMAN, note: 'stands very straight' },
    })
    await room.done('client.add', { name: 'Bea' })
    await room.done('backup.make')
    await room.done('client.forget', { id: client.id, name: 'Łucja' })
    const list = async () => (await room.done<{ folder: string; backups: Backup[] }>('backups.list')) ?? []
    const { folder, backups } = await list()
    expect(backups.map(({ forgotten }) => forgotten)).toEqual([1])
    const path = join(folder, backups[0]!.name)
    expect(readFileSync(path).includes('likes madder')).toBe(true)
    expect(await room.done('backups.forget')).toEqual({ backups: 1 })
    expect((await list()).backups.map(({ forgotten }) => forgotten)).toEqual([0])
    expect(readFileSync(path).includes('likes madder')).toBe(false)
    for (const gone of ['Łucja', 'stands very straight'])
      expect(readFileSync(path).includes(gone)).toBe(false)
    expect(existsSync(`${path}.part`)).toBe(false)
    // It is a book still.
    const copy = join(scratch(), 'copy.ellwand')
    copyFileSync(path, copy)
    const opened = workroom(openStore(copy, { now: NOON }))
    expect(await opened.done('clients.list')).toMatchObject({ clients: [{ name: 'Bea' }] })
    opened.store.close()
    expect(await room.done('backups.forget')).toEqual({ backups: 0 })
    rmSync(path)
  })
})
