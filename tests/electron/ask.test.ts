import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { oldNode } from '../../electron/node-version.ts'
import { WOMAN } from '../support/bodies.ts'
import { scratch } from '../support/store.ts'

const entry = resolve(import.meta.dirname, '../../electron/ask.ts')
const run = (args: string[], lines: unknown[] = []) => {
  const input = lines.map((line) => (typeof line === 'string' ? line : JSON.stringify(line))).join('\n')
  const { stdout, stderr, status } = spawnSync(process.execPath, [entry, ...args], {
    input,
    encoding: 'utf8',
  })
  return {
    answers: stdout
      .split('\n')
      .filter((line) => line !== '')
      .map((line) => JSON.parse(line)),
    stderr,
    status,
  }
}

describe('ask', () => {
  test('answers one line for each line, and keeps what it did', () => {
    const store = join(scratch(), 'a.ellwand')
    const first = run(
      ['--store', store],
      [
        { request: 'client.add', payload: { name: 'Ἑλένη' } },
        'this is no request',
        { request: 'client.add', payload: { name: '' } },
        { request: 'garment.draft', payload: { construction: 'goredUndertunic', measures: WOMAN } },
        '',
        { request: 'nothing.such' },
        { request: 'clients.list', extra: 1 },
      ],
    )
    expect(first.status).toBe(0)
    expect(first.answers.map(({ ok }) => ok)).toEqual([true, false, false, true, false, false])
    for (const { ok, error } of first.answers) {
      if (!ok)
        expect(error).toEqual({
          code: expect.any(String),
          message: expect.stringMatching(/[.]$/),
          field: expect.any(String),
        })
    }
    const second = run(['--store', store], [{ request: 'clients.list' }])
    expect(second.answers[0].result.clients.map(({ name }: { name: string }) => name)).toEqual(['Ἑλένη'])
  })

  test('prints the path of a paper', () => {
    const store = join(scratch(), 'a.ellwand')
    const [made] = run(['--store', store], [{ request: 'workroom.sample' }]).answers
    const [printed] = run(
      ['--store', store],
      [{ request: 'quote.print', payload: { id: made.result.quotes[0] } }],
    ).answers
    expect(printed.result.document.path).toMatch(/\.pdf$/)
    expect(existsSync(printed.result.document.path)).toBe(true)
  })

  test('lists every request with the JSON Schema of its input', () => {
    const { answers, status } = run(['--list'])
    expect(status).toBe(0)
    const estimate = answers.find(({ request }) => request === 'garment.estimate')
    expect(estimate.about).toMatch(/\.$/)
    expect(estimate.payload.properties.measures.description).toContain('ISO 8559-1')
    expect(answers.every(({ payload }) => payload.type === 'object')).toBe(true)
  })

  test('says how it is used, and why a store cannot be opened', () => {
    expect(run([])).toMatchObject({ status: 2, stderr: expect.stringContaining('--store FILE') })
    expect(run(['--nonsense'])).toMatchObject({ status: 2 })
    const { answers, status } = run(['--store', join(scratch(), 'no', 'where.ellwand')])
    expect(status).toBe(1)
    expect(answers[0]).toMatchObject({ ok: false, error: { code: 'refusal.store.noFolder' } })
  })
})

test('a Node that is too old is told so before anything of the store is loaded', () => {
  expect(oldNode('20.19.0')).toContain('20.19.0')
  expect(oldNode('22.17.1')).toBeDefined()
  expect(oldNode('22.18.0')).toBeUndefined()
  expect(oldNode('24.0.0')).toBeUndefined()
})
