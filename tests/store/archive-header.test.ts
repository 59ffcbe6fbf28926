import { describe, expect, test } from 'vitest'
import { type Header, headerJson, readHeader } from '../../core/store/archive/header.ts'
import { refused } from '../support/refused.ts'

const HASH = 'a'.repeat(64)
const SHIPPED = [{ name: 'first', hash: HASH, statements: [], when: 0 }]
const HEADER: Header = {
  ...{ format: 'ellwand', version: 1, madeAt: '2026-03-02T12:00:00.000Z', migrations: [HASH] },
  ...{ sequences: { change: 3 }, missing: ['x.pdf'] },
  files: [{ name: 'README.txt', bytes: 3, sha256: HASH, rows: 1 }],
}
const read = (header: object | string) =>
  readHeader(typeof header === 'string' ? header : JSON.stringify(header), SHIPPED)

describe('the header of an archive', () => {
  test('is read back as it was written, its keys in order', () => {
    expect(read(headerJson(HEADER))).toEqual(HEADER)
    expect(headerJson(HEADER).match(/^ {2}"\w+"/gm)).toEqual([
      ...[
        '  "files"',
        '  "format"',
        '  "madeAt"',
        '  "migrations"',
        '  "missing"',
        '  "sequences"',
        '  "version"',
      ],
    ])
  })

  test.each<[string, object | string]>([
    ['no JSON', '{'],
    ['a list', '[]'],
    ['another format', { ...HEADER, format: 'other' }],
    ['no version', { ...HEADER, version: undefined }],
    ['a version that is none', { ...HEADER, version: 0.5 }],
  ])('with %s is none of ours', (_, header) => {
    expect(refused(() => read(header)).code).toBe('refusal.archive.other')
  })

  test.each<[string, object]>([
    ['a later format', { ...HEADER, version: 2, files: 'of another kind' }],
    ['more migrations', { ...HEADER, migrations: [HASH, HASH] }],
    ['other migrations', { ...HEADER, migrations: ['b'.repeat(64)] }],
  ])('with %s is a newer planner’s', (_, header) => {
    expect(refused(() => read(header)).code).toBe('refusal.archive.newer')
  })

  const [file] = HEADER.files
  test.each<[string, object | string]>([
    ['a key too many', { ...HEADER, more: 1 }],
    ['a key that leads to every object', headerJson(HEADER).replace('{', '{"__proto__":{"files":[]},')],
    ['no files', { ...HEADER, files: undefined }],
    ['a file of less than nothing', { ...HEADER, files: [{ ...file, bytes: -1 }] }],
    ['a file without its hash', { ...HEADER, files: [{ ...file, sha256: undefined }] }],
    ['half a row', { ...HEADER, files: [{ ...file, rows: 0.5 }] }],
    ['a file with more to it', { ...HEADER, files: [{ ...file, path: '/' }] }],
    ['a migration that is no hash', { ...HEADER, migrations: ['first'] }],
    ['a table of another name', { ...HEADER, sequences: { 'x"; DROP': 1 } }],
    ['a list where the last numbers stand', { ...HEADER, sequences: [] }],
    ['no moment', { ...HEADER, madeAt: 3 }],
    ['missing files by number', { ...HEADER, missing: [1] }],
  ])('with %s is damaged', (_, header) => {
    expect(refused(() => read(header)).code).toBe('refusal.archive.damaged')
    expect(({} as { files?: unknown }).files).toBeUndefined()
  })
})
