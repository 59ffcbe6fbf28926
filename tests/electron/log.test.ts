import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { openLog, placesOf } from '../../electron/log.ts'
import { scratch } from '../support/store.ts'

const now = () => new Date('2026-03-01T08:00:00Z')

describe('the list of faults', () => {
  test('says which fault and where in the code, and none of its words', () => {
    const log = openLog(join(scratch(), 'log'), '1.2.3', now)
    class Odd extends Error {
      override name = 'Mrs Orme, 97 cm'
    }
    log.note('uncaught', new RangeError('Mrs Orme’s waist is 97'))
    log.note('unhandled', Object.assign(new Odd('x'), { code: 'no code: Mrs Orme' }))
    log.note('unhandled', { name: 'Mrs Orme' })
    log.note('store', Object.assign(new Error('/home/orme'), { code: 'SQLITE_FULL' }))
    const lines = readFileSync(log.file, 'utf8').trimEnd().split('\n')
    expect(lines).toHaveLength(4)
    expect(lines[0]).toMatch(
      /^2026-03-01T08:00:00\.000Z 1\.2\.3 \w+ uncaught RangeError log\.test\.ts:\d+:\d+/,
    )
    expect(lines[1]).toContain('unhandled Error ')
    expect(lines[2]).toMatch(/unhandled object$/)
    expect(lines[3]).toContain('SQLITE_FULL')
    expect(lines.join('\n')).not.toMatch(/Orme|waist|97 cm|home|tests\//)
  })

  test('has places of files with any folder before them, and no more than a few', () => {
    const fault = new Error('x')
    fault.stack = [
      'Error: a\nb at (c)',
      '    at f (C:\\Users\\Orme\\main.js:1:2)',
      '    at file:///home/orme/m.js:3:4',
    ]
      .concat(Array.from({ length: 50 }, (_, i) => `    at g (/home/orme/n.js:${i}:1)`))
      .join('\n')
    expect(placesOf(fault).slice(0, 3)).toEqual(['Error', 'main.js:1:2', 'm.js:3:4'])
    expect(placesOf(fault)).toHaveLength(9)
  })

  test('never grows beyond two short files', () => {
    const folder = join(scratch(), 'log')
    const log = openLog(folder, '1', now)
    for (let i = 0; i < 4000; i++) log.note('x'.repeat(2000))
    expect(readdirSync(folder).sort()).toEqual(['planner.log', 'planner.old.log'])
    for (const name of readdirSync(folder)) expect(statSync(join(folder, name)).size).toBeLessThan(130_000)
  })

  test('is no fault of its own where it cannot be written', () => {
    const folder = join(scratch(), 'log')
    writeFileSync(folder, 'a file where the folder should be')
    expect(() => openLog(folder, '1', now).note('uncaught', new Error('x'))).not.toThrow()
  })
})
