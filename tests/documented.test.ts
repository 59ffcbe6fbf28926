import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { parseSync } from 'oxc-parser'
import { describe, expect, test } from 'vitest'

const root = resolve(import.meta.dirname, '..')
const FOLDERS = ['core', 'electron', 'renderer', 'build']
/** The phrases explain themselves: a phrase is its own sentence. */
const PHRASES = /^core\/words\/catalogue\/(english|german)\//
/** More lines than this want a reason in the comment at the head of the file. */
const MANY_LINES = 400

const filesIn = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name))
    .sort()

/**
 * Names that a source exports and says nothing about, in their order. A comment stands right above an export, and goes
 * for the exports on the lines below it until a line is empty. What comes from another file is explained there.
 */
function undocumented(file: string, source: string): string[] {
  const { program, comments: all, errors } = parseSync(file, source)
  // What is said to a tool explains nothing.
  const comments = all.filter(({ value }) => !/^\s*(biome-ignore|@ts-)/.test(value))
  if (errors.length > 0) throw new Error(`${file}: ${errors[0]!.message}`)
  /** Nothing between two places but the end of one line and the beginning of the next. */
  const touch = (end: number, start: number): boolean => /^[ \t;]*\r?\n[ \t]*$/.test(source.slice(end, start))
  const ownLine = (start: number): boolean =>
    source.slice(source.lastIndexOf('\n', start - 1) + 1, start).trim() === ''
  const explained = new Set<number>()
  const wanting: string[] = []
  const later = new Set(
    program.body.flatMap((one) =>
      one.type === 'ExportNamedDeclaration' && one.source === null && one.declaration === null
        ? one.specifiers.map(({ local }) => (local.type === 'Literal' ? local.value : local.name))
        : [],
    ),
  )
  program.body.forEach((one, at) => {
    const names = namesOf(one)
    const exported = one.type.startsWith('Export') ? names : names.filter((name) => later.has(name))
    if (exported.length === 0) return
    const above = comments.some(({ start, end }) => ownLine(start) && touch(end, one.start))
    const before = program.body[at - 1]
    const inGroup = before !== undefined && explained.has(at - 1) && touch(before.end, one.start)
    if (above || inGroup) explained.add(at)
    else wanting.push(...exported)
  })
  return wanting
}

type Statement = ReturnType<typeof parseSync>['program']['body'][number]

/** What a statement declares: none for an import, an expression, or names handed on. */
function namesOf(one: Statement): string[] {
  if (one.type === 'ExportNamedDeclaration') return one.declaration === null ? [] : namesOf(one.declaration)
  if (one.type === 'ExportDefaultDeclaration') return 'id' in one.declaration ? ['default'] : []
  if (one.type === 'VariableDeclaration')
    return one.declarations.map(({ id }) => (id.type === 'Identifier' ? id.name : '{ … }'))
  return 'id' in one && one.id !== null && 'name' in one.id ? [one.id.name] : []
}

const isLong = (source: string): boolean => source.trimEnd().split('\n').length > MANY_LINES

/** Whether what a file says before its first line of code holds a reason for its length. */
function saysWhyLong(file: string, source: string): boolean {
  const { program, comments } = parseSync(file, source)
  const head = comments
    .filter(({ end }) => end <= (program.body[0]?.start ?? source.length))
    .map(({ value }) => value.replace(/[\s*]+/g, ' '))
    .join(' ')
  return /\blong because \w/.test(head)
}

describe('the sources', () => {
  const read = (folders: readonly string[]) =>
    folders.flatMap(filesIn).map((file): [string, string] => [file, readFileSync(join(root, file), 'utf8')])

  test('explain everything that one file lends to another', () => {
    const sources = read(FOLDERS).filter(([file]) => !PHRASES.test(file))
    expect(sources.length).toBeGreaterThan(500)
    const found = sources.flatMap(([file, source]) =>
      undocumented(file, source).map((name) => `${file}: ${name}`),
    )
    expect(found).toEqual([])
  })

  test('say why where a file has grown long', () => {
    const long = read([...FOLDERS, 'tests']).filter(([, source]) => isLong(source))
    expect(long.length).toBeGreaterThan(0)
    expect(long.filter(([file, source]) => !saysWhyLong(file, source)).map(([file]) => file)).toEqual([])
  })

  test.each<[source: string, wanting: string[]]>([
    ['export const a = 1', ['a']],
    ['/** How many. */\nexport const a = 1', []],
    ['// How many.\nexport const a = 1', []],
    ['// biome-ignore lint/style: so it is called elsewhere\nexport const a = 1', ['a']],
    ['/** How many. */\n\nexport const a = 1', ['a']],
    ['const own = 1 // How many.\nexport const a = own', ['a']],
    ['/** Sizes, mm. */\nexport const a = 1\nexport const b = 2', []],
    ['/** Sizes, mm. */\nexport const a = 1\n\nexport const b = 2', ['b']],
    ['/** Of its own. */\ntype Own = string\nexport type A = Own', ['A']],
    ['export type A = {\n  /** mm */\n  length: number\n}', ['A']],
    ['export type A = {\n  /** mm */\n  length: number\n}\nexport function b() {}', ['A', 'b']],
    ['export interface A {}\nexport class B {}\nexport async function c() {}', ['A', 'B', 'c']],
    ['const a = 1\n/** Says so. */\nconst b = 2\nexport { a, b }', ['a']],
    ['export default function () {}', ['default']],
    ["export { a } from './a.ts'\nexport * from './b.ts'\nconst own = 1", []],
  ])('are found out where they do not: %j', (source, wanting) => {
    expect(undocumented('made-up.ts', source)).toEqual(wanting)
  })

  test('are found out where they are long without a word on it', () => {
    const table = `export const table = [\n${'  1,\n'.repeat(MANY_LINES)}]\n`
    expect(isLong('1\n'.repeat(MANY_LINES))).toBe(false)
    expect(isLong(table)).toBe(true)
    expect(saysWhyLong('made-up.ts', table)).toBe(false)
    expect(saysWhyLong('made-up.ts', `${table}// It is long because it is a table.\n`)).toBe(false)
    expect(saysWhyLong('made-up.ts', `// It is long because\n${table}`)).toBe(false)
    expect(saysWhyLong('made-up.ts', `/*\n * It is long\n * because it is a table.\n */\n${table}`)).toBe(
      true,
    )
  })
})
