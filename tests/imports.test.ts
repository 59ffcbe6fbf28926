import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { parseSync } from 'oxc-parser'
import { describe, expect, test } from 'vitest'

/**
 * The rooms of core in the order in which a commission goes through them. A room may use what stands before
 * it in this list, and nothing after it.
 */
const ROOMS = [
  'words',
  'geometry',
  'draw',
  'measure',
  'draft',
  'lay',
  'sew',
  'price',
  'plan',
  'quote',
  'paper',
  'store',
  'workroom',
]
/** Rooms that must not know each other, though one stands after the other. */
const APART: readonly (readonly [string, string])[] = [
  ['store', 'paper'],
  ['draw', 'measure'],
]
/** What may be taken from a package by the whole of core; everything else only by the room that is named. */
const PACKAGES: Record<string, readonly string[]> = {
  'date-fns': ['words'],
  'clipper2-ts': ['lay'],
  'better-sqlite3': ['store'],
  'drizzle-orm': ['store'],
  pdfkit: ['paper'],
  fontkit: ['paper'],
  'bidi-js': ['paper'],
  zod: ['workroom'],
}
/** Rooms that are pure: no clock, no files, no chance. */
const PURE = ['words', 'geometry', 'draw', 'measure', 'draft', 'lay', 'sew', 'price', 'plan', 'quote']

const root = resolve(import.meta.dirname, '..')
const filesIn = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name))

type Import = { file: string; from: string; to: string }

/** Every import and re-export of a source, type-only ones included. */
function importsOf(file: string, source: string): Import[] {
  const { module } = parseSync(file, source)
  const named = [...module.staticImports, ...module.staticExports.flatMap(({ entries }) => entries)]
    .map((entry) => entry.moduleRequest?.value)
    .filter((request): request is string => request !== undefined)
  const dynamic = module.dynamicImports.map(({ moduleRequest }) =>
    source.slice(moduleRequest.start, moduleRequest.end).replace(/['"`]/g, ''),
  )
  return [...new Set([...named, ...dynamic])].map((request) => ({
    file,
    from: roomOf(file),
    to: request.startsWith('.')
      ? roomOf(relative(root, resolve(root, dirname(file), request)))
      : packageOf(request),
  }))
}

const roomOf = (file: string): string => {
  const [top, room = ''] = file.split('/')
  if (top !== 'core') return top!
  return room.endsWith('.ts') ? 'workroom' : room
}
const packageOf = (request: string): string =>
  request.startsWith('node:')
    ? request
    : request
        .split('/')
        .slice(0, request.startsWith('@') ? 2 : 1)
        .join('/')

/** What is wrong with one import, or undefined. */
function violation({ file, from, to }: Import): string | undefined {
  if (ROOMS.includes(from)) {
    if (['electron', 'renderer', 'tests', 'build'].includes(to)) return 'core must not know its shells'
    if (to === 'react' || to === 'react-dom') return 'core must not know the screen'
    if (ROOMS.includes(to)) {
      if (ROOMS.indexOf(to) > ROOMS.indexOf(from)) return 'against the way of a commission through the house'
      if (APART.some(([a, b]) => a === from && b === to)) return 'these two rooms must not know each other'
      return undefined
    }
    if (to.startsWith('node:'))
      return PURE.includes(from) ? 'a pure room must not reach for the system' : undefined
    return PACKAGES[to]?.includes(from) === true ? undefined : 'this package has no place in this room'
  }
  if (from === 'electron' && to === 'renderer') return 'shells serve the screen without knowing it'
  // The one room a shell goes into on its own: a thread that searches for a lay needs nothing but the lay.
  if (file === 'electron/lay-thread.ts' && to === 'lay') return undefined
  if (from === 'electron' && ROOMS.includes(to) && to !== 'workroom' && to !== 'words')
    return 'a shell goes in by the workroom'
  if (from === 'renderer' && ROOMS.includes(to) && !['words', 'draw', 'geometry', 'workroom'].includes(to))
    return 'the screen knows words and drawings only'
  return undefined
}

const violations = (imports: readonly Import[]): string[] =>
  imports.flatMap((one) => {
    const wrong = violation(one)
    return wrong === undefined ? [] : [`${one.file} → ${one.to}: ${wrong}`]
  })

describe('the walls of the house', () => {
  test('hold: data flows from measure to paper and never back', () => {
    const imports = ['core', 'electron']
      .flatMap(filesIn)
      .flatMap((file) => importsOf(file, readFileSync(join(root, file), 'utf8')))
    expect(imports.length).toBeGreaterThan(300)
    expect(new Set(imports.map(({ from }) => from)).size).toBeGreaterThan(ROOMS.length)
    expect(violations(imports)).toEqual([])
  })

  test.each([
    ['core/measure/body.ts', "import type { Draft } from '../draft/types.ts'"],
    ['core/draft/types.ts', "import { firstLay } from '../lay/first-lay.ts'"],
    ['core/price/price.ts', "import { openStore } from '../store/open.ts'"],
    ['core/lay/first-lay.ts', "export { printPdf } from '../paper/pdf.ts'"],
    ['core/store/open.ts', "import { printPdf } from '../paper/pdf.ts'"],
    ['core/draft/types.ts', "const fs = await import('node:fs')"],
    ['core/sew/sewing.ts', "import { z } from 'zod'"],
    ['core/workroom.ts', "import { ask } from '../electron/ask-shell.ts'"],
    ['core/draw/svg.ts', "import type { Piece } from '../draft/types.ts'"],
    ['core/words/say.ts', "import { createElement } from 'react'"],
    ['electron/ask-shell.ts', "import { firstLay } from '../core/lay/first-lay.ts'"],
  ])('are tested by a stone out of place: %s with %s', (file, source) => {
    expect(violations(importsOf(file, source))).toHaveLength(1)
  })
})
