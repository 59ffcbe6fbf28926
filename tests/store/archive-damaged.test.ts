import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { crc32, deflateRawSync } from 'node:zlib'
import { describe, expect, test } from 'vitest'
import { exportStore } from '../../core/store/archive/export.ts'
import { headerJson, readHeader } from '../../core/store/archive/header.ts'
import { importArchive } from '../../core/store/archive/import.ts'
import { holdsNothing } from '../../core/store/archive/tables.ts'
import { bytesOf, zipEntries } from '../../core/store/archive/zip-read.ts'
import { writeZip } from '../../core/store/archive/zip-write.ts'
import { readMigrations } from '../../core/store/migrations.ts'
import { MIGRATIONS } from '../../core/store/open.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { chance } from '../support/chance.ts'
import { NOON, newStore, scratch, workroom } from '../support/store.ts'

/** A small archive, and its files by name. */
async function small() {
  const room = workroom()
  await room.done('client.add', { name: 'Sunniva Ash', note: 'wool itches' })
  const archive = join(scratch(), 'out.zip')
  await exportStore(room.store, archive, { now: NOON })
  const files = new Map<string, Buffer>()
  for (const entry of zipEntries(archive)) {
    const chunks: Buffer[] = []
    for await (const chunk of bytesOf(archive, entry)) chunks.push(chunk)
    files.set(entry.name, Buffer.concat(chunks))
  }
  return { archive, files }
}

/** Writes files as an archive, whatever they are called. */
async function packed(files: Iterable<[string, Buffer]>): Promise<string> {
  const path = join(scratch(), 'made.zip')
  const zip = writeZip(path)
  for (const [name, bytes] of files) await zip.add(name, [bytes])
  zip.end()
  zip.close()
  return path
}

/** Why an archive is not taken; nothing of it may have been left behind. */
async function refusalOf(archive: string): Promise<string> {
  const store = newStore()
  const code = await importArchive(archive, store).then(
    () => 'taken',
    (error: unknown) => {
      if (error instanceof Refusal) return error.phrase.code
      throw error
    },
  )
  if (code !== 'taken') {
    expect(holdsNothing(store.db.$client)).toBe(true)
    expect(existsSync(store.attachments) ? readdirSync(store.attachments) : []).toEqual([])
    expect(readdirSync(join(store.path, '..')).filter((name) => name.includes('.part'))).toEqual([])
  }
  return code
}

type Header = ReturnType<typeof readHeader>

/** An archive whose files and header say the same, after `change` has had its way with them. */
async function altered(change: (files: Map<string, Buffer>, header: Header) => void): Promise<string> {
  const { files } = await small()
  const header = readHeader(files.get('ellwand.json')!.toString('utf8'), readMigrations(MIGRATIONS))
  const before = new Map(files)
  change(files, header)
  for (const file of header.files) {
    const bytes = files.get(file.name)
    if (bytes === undefined || bytes === before.get(file.name)) continue
    Object.assign(file, { bytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') })
  }
  if (files.get('ellwand.json') === before.get('ellwand.json'))
    files.set('ellwand.json', Buffer.from(headerJson(header)))
  return packed(files)
}

const rowed = (...rows: string[]) => Buffer.from(`[\n${rows.join(',\n')}\n]\n`)
const CLIENT = {
  ...{ address: '[]', birth_day: null, created_at: NOON, email: '', id: 'c', name: 'Eve', note: '' },
  ...{ phone: '', retired_at: null, revision: 1 },
}
const client = (more: object) => JSON.stringify({ ...CLIENT, ...more })

describe('an archive that is not as it was made', () => {
  test('unaltered, is taken, also packed anew by another hand', async () => {
    expect(await refusalOf(await altered(() => {}))).toBe('taken')
    const one = await altered((files) => files.set('tables/client.json', rowed(client({}))))
    expect(await refusalOf(one)).toBe('taken')
  })

  test('with any byte changed or its end cut off, is refused or is the same after all', async () => {
    const { archive, files } = await small()
    const whole = readFileSync(archive)
    const draw = chance(11)
    const names = files.get('tables/client.json')!.toString('utf8')
    const file = join(scratch(), 'bad.zip')
    let refused = 0
    const trials = process.env.ELLWAND_LONG === '1' ? 400 : 40
    for (let i = 0; i < trials; i++) {
      const bad = Buffer.from(whole)
      const at = Math.floor(draw.uniform() * whole.length)
      bad[at] = bad[at]! ^ (1 + Math.floor(draw.uniform() * 255))
      writeFileSync(file, i % 4 === 0 ? bad.subarray(0, at) : bad)
      const store = newStore()
      try {
        await importArchive(file, store)
        // Such as the hour at which a file says it was made.
        const again = join(scratch(), 'again.zip')
        await exportStore(store, again, { now: NOON })
        expect(readFileSync(again).equals(whole)).toBe(true)
      } catch (error) {
        expect(error).toBeInstanceOf(Refusal)
        expect(holdsNothing(store.db.$client)).toBe(true)
        refused++
      }
      store.close()
    }
    expect(names).toContain('Sunniva')
    expect(refused).toBeGreaterThan(trials / 2)
  })

  test('is refused with a hash that is not that of the file', async () => {
    const { files } = await small()
    files.set('README.txt', Buffer.from(files.get('README.txt')!.toString('utf8').replace('THIS', 'THAT')))
    expect(await refusalOf(await packed(files))).toBe('refusal.archive.damaged')
  })

  test('of a newer planner is told as such, by its format or by its tables', async () => {
    const { files } = await small()
    const text = files.get('ellwand.json')!.toString('utf8')
    files.set('ellwand.json', Buffer.from(text.replace('"version": 1', '"version": 2')))
    expect(await refusalOf(await packed(files))).toBe('refusal.archive.newer')
    const more = await altered((_, header) => header.migrations.push('f'.repeat(64)))
    expect(await refusalOf(more)).toBe('refusal.archive.newer')
  })

  test('that is something else altogether is told as such', async () => {
    for (const bytes of [Buffer.alloc(0), Buffer.from('hello'), Buffer.alloc(100_000, 80)]) {
      const path = join(scratch(), 'x.zip')
      writeFileSync(path, bytes)
      expect(await refusalOf(path)).toBe('refusal.archive.other')
    }
    expect(await refusalOf(await packed([['letter.txt', Buffer.from('hello')]]))).toBe('refusal.archive.name')
    expect(
      await refusalOf(await packed([['ellwand.json', Buffer.from('{"format":"other","version":1}')]])),
    ).toBe('refusal.archive.other')
  })

  test.each([
    ...[
      '../workroom.ellwand',
      '..\\x',
      '/etc/cron.d/x',
      'C:\\x',
      'attachments/../../x.pdf',
      'tables/../x.json',
    ],
    ...[
      'tables/a/b.json',
      'CON',
      'attachments/nul.pdf',
      'tables/client.json/',
      'x\0.json',
      '__proto__',
      'constructor',
    ],
    ...[
      `attachments/${'a'.repeat(64)}.pdf.exe.x`,
      `attachments/${'A'.repeat(64)}.pdf`,
      `./README.txt`,
      'readme.TXT',
    ],
  ])('is refused with a file called %j in it', async (name) => {
    const { files } = await small()
    expect(await refusalOf(await packed([...files, [name, Buffer.from('x')]]))).toMatch(
      /^refusal\.archive\.(name|damaged)$/,
    )
    expect(await refusalOf(await packed([[name, Buffer.from('x')], ...files]))).toMatch(
      /^refusal\.archive\.(name|damaged)$/,
    )
  })

  test('is refused when a file is in it twice, is missing, or is not in its list', async () => {
    const { files } = await small()
    const readme: [string, Buffer] = ['README.txt', files.get('README.txt')!]
    expect(await refusalOf(await packed([...files, readme]))).toBe('refusal.archive.damaged')
    const paper: [string, Buffer] = [`attachments/${'a'.repeat(64)}.pdf`, Buffer.from('x')]
    expect(await refusalOf(await packed([...files, paper]))).toBe('refusal.archive.damaged')
    files.delete('tables/timer.json')
    expect(await refusalOf(await packed(files))).toBe('refusal.archive.damaged')
    expect(
      await refusalOf(
        await altered((all, header) => {
          all.delete('tables/timer.json')
          header.files = header.files.filter(({ name }) => name !== 'tables/timer.json')
        }),
      ),
    ).toBe('refusal.archive.damaged')
  })

  test('is refused when a paper is not what its name says', async () => {
    const bad = await altered((files, header) => {
      const name = `attachments/${'a'.repeat(64)}.pdf`
      files.set(name, Buffer.from('x'))
      header.files.push({ name, bytes: 0, sha256: 'b'.repeat(64) })
    })
    expect(await refusalOf(bad)).toBe('refusal.archive.damaged')
  })

  test.each<[string, string]>([
    ['a key that leads to every object', client({}).replace('{', '{"__proto__":{"admin":true},')],
    ['a column of another table', client({ constructor: 'x' })],
    ['a column too few', JSON.stringify({ id: 'c', name: 'Eve' })],
    ['a list for a text', client({ name: ['Eve'] })],
    ['a yes for a number', client({ revision: true })],
    ['a text for a number', client({ revision: 'many' })],
    ['nothing where something must be', client({ name: null })],
    ['no JSON where there must be', client({ address: 'Tenter Lane' })],
    ['no row at all', '"Eve"'],
    ['half a row', client({}).slice(0, -9)],
    ['two rows with one id', `${client({})},\n${client({})}`],
  ])('is refused with %s in a table', async (_, row) => {
    const bad = await altered((files, header) => {
      files.set('tables/client.json', rowed(row))
      header.files.find(({ name }) => name === 'tables/client.json')!.rows = row.split('\n').length
    })
    expect(await refusalOf(bad)).toBe('refusal.archive.damaged')
    expect(({} as { admin?: boolean }).admin).toBeUndefined()
  })

  test('is refused when rows refer to what is not there, or are fewer than was said', async () => {
    const set = JSON.stringify({ at: NOON, measurement_set_id: 'nobody’s' })
    const lost = await altered((files, header) => {
      files.set('tables/retired_set.json', rowed(set))
      header.files.find(({ name }) => name === 'tables/retired_set.json')!.rows = 1
    })
    expect(await refusalOf(lost)).toBe('refusal.archive.damaged')
    const fewer = await altered((files) => files.set('tables/client.json', Buffer.from('[\n]\n')))
    expect(await refusalOf(fewer)).toBe('refusal.archive.damaged')
  })
})

/** An archive of one file, with whatever its heads say of it. */
function bomb(say: { bytes?: number; packed?: number }, plain: Buffer, twice = false): string {
  const name = Buffer.from('README.txt')
  const data = deflateRawSync(plain)
  const head = (signature: number, before: number, after: number, at?: number) => {
    const bytes = Buffer.alloc(4 + before + 26 + after)
    bytes.writeUInt32LE(signature)
    bytes.writeUInt16LE(8, 4 + before + 4)
    bytes.writeUInt32LE(crc32(plain), 4 + before + 10)
    bytes.writeUInt32LE(say.packed ?? data.length, 4 + before + 14)
    bytes.writeUInt32LE(say.bytes ?? plain.length, 4 + before + 18)
    bytes.writeUInt16LE(name.length, 4 + before + 22)
    if (at !== undefined) bytes.writeUInt32LE(at, bytes.length - 4)
    return Buffer.concat([bytes, name])
  }
  const local = Buffer.concat([head(0x04034b50, 0, 0), data])
  const central = Buffer.concat(Array.from({ length: twice ? 2 : 1 }, () => head(0x02014b50, 2, 14, 0)))
  const end = Buffer.alloc(22)
  end.writeUInt32LE(0x06054b50)
  end.writeUInt16LE(twice ? 2 : 1, 8)
  end.writeUInt16LE(twice ? 2 : 1, 10)
  end.writeUInt32LE(central.length, 12)
  end.writeUInt32LE(local.length, 16)
  const path = join(scratch(), 'bomb.zip')
  writeFileSync(path, Buffer.concat([local, central, end]))
  return path
}

describe('an archive that is larger than it says', () => {
  const zeros = Buffer.alloc(5_000_000)
  const read = async (path: string) => {
    let bytes = 0
    for await (const chunk of bytesOf(path, zipEntries(path)[0]!)) bytes += chunk.length
    return bytes
  }

  test('is read where it says the truth', async () => {
    expect(await read(bomb({}, zeros))).toBe(5_000_000)
  })

  test('is left as soon as there is more than it said', async () => {
    const path = bomb({ bytes: 1000 }, zeros)
    let bytes = 0
    const reading = async () => {
      for await (const chunk of bytesOf(path, zipEntries(path)[0]!)) bytes += chunk.length
    }
    await expect(reading()).rejects.toThrow('refusal.archive.damaged')
    expect(bytes).toBe(0)
  })

  test.each<[string, () => string]>([
    ['says that it holds more than it can', () => bomb({ bytes: 4_000_000_000 }, zeros)],
    ['says that it is longer than its file', () => bomb({ packed: 100_000 }, zeros)],
    ['has two files in the same bytes', () => bomb({}, zeros, true)],
  ])('is not opened when it %s', (_, made) => {
    expect(() => zipEntries(made())).toThrow('refusal.archive.damaged')
  })
})
