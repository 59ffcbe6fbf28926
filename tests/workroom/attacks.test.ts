import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { documentFile, requests } from '../../core/workroom.ts'
import { agreedWork } from '../support/agreed-work.ts'
import { WOMAN } from '../support/bodies.ts'
import { workroom } from '../support/store.ts'

const EVIL = `<img src=x onerror=alert(1)>"'&</text><script>alert(2)</script>`

/** What a drawing of ours is made of. */
const OURS = [
  'svg',
  'g',
  'path',
  'text',
  'tspan',
  'title',
  'desc',
  'image',
  'rect',
  'line',
  'circle',
  'defs',
  'clipPath',
]

/** The elements of a drawing, and the names of their attributes, read as a browser would: text between them is no markup. */
function markupOf(svg: string): { elements: string[]; attributes: string[] } {
  const tags = [...svg.matchAll(/<\/?([^\s/>]+)((?:[^>"']|"[^"]*"|'[^']*')*)>/g)]
  const attributes = tags.flatMap(([, , rest]) =>
    [...rest!.matchAll(/([^\s=/]+)\s*=\s*(?:"[^"]*"|'[^']*')/g)].map(([, name]) => name!),
  )
  return { elements: [...new Set(tags.map(([, name]) => name!))], attributes: [...new Set(attributes)] }
}

type Id = { id: string }
type Page = { svg: string }

/** A workroom where every text that a maker can type is a piece of a page. */
async function evilWorkroom() {
  const room = await agreedWork({ name: EVIL, fibre: EVIL.slice(0, 80), supplier: EVIL.slice(0, 100) })
  const { revision } = await room.done<{ revision: number }>('settings.get')
  await room.done('settings.set', {
    ...{ revision, changes: { letterhead: { name: EVIL, address: [EVIL, EVIL] } } },
  })
  const { client } = await room.done<{ client: Id & { name: string } }>('client.add', {
    ...{ name: EVIL, address: [EVIL], email: EVIL, phone: EVIL.slice(0, 40), note: EVIL },
  })
  const { measurementSet } = await room.done<{ measurementSet: Id }>('measurementSet.add', {
    ...{ clientId: client.id, measures: WOMAN, takenBy: EVIL, over: EVIL, note: EVIL },
  })
  const line = { ...room.line, wearerId: client.id, measurementSetId: measurementSet.id }
  const { quote } = await room.done<{ quote: Id }>('quote.save', { customerId: client.id, lines: [line] })
  const { commission } = await room.done<{ commission: Id & { garments: Id[] } }>('quote.accept', {
    id: quote.id,
    note: EVIL,
  })
  await room.done('note.add', { commissionId: commission.id, text: EVIL })
  return { ...room, client, quote, commission }
}

describe('HTML typed into any field', () => {
  test('is kept as it was typed, and found by its words', async () => {
    const { done, client, commission } = await evilWorkroom()
    expect(await done('client.get', { id: client.id })).toMatchObject({
      client: { name: EVIL, address: [EVIL], note: EVIL },
    })
    const { hits } = await done<{ hits: { title: string }[] }>('search.find', { text: 'onerror' })
    expect(hits.map(({ title }) => title)).toContain(EVIL)
    expect(await done('commission.get', { id: commission.id })).toMatchObject({ commission: { note: EVIL } })
  })

  test('is text in every drawing of a paper', async () => {
    const { done, quote, commission } = await evilWorkroom()
    const garmentId = commission.garments[0]!.id
    const asked = [
      { paper: 'quote', id: quote.id },
      ...['workOrder', 'cuttingSheet', 'careSheet'].map((paper) => ({ paper, garmentId })),
      { paper: 'pattern', garmentId, on: 'A4' },
    ]
    for (const one of asked) {
      const { pages } = await done<{ pages: Page[] }>('paper.show', { asked: one })
      const svg = pages.map((page) => page.svg).join('')
      expect(svg).toContain('&lt;img')
      const { elements, attributes } = markupOf(svg)
      for (const element of elements) expect(OURS).toContain(element)
      for (const name of attributes) expect(name).not.toMatch(/^on/i)
    }
  })

  test('is text in the drawing of a pattern that is handed over as a file', async () => {
    const { done, context, commission } = await evilWorkroom()
    const { document } = await done<{ document: Id }>('pattern.draw', {
      garmentId: commission.garments[0]!.id,
    })
    const svg = readFileSync(documentFile(context, document.id).path, 'utf8')
    expect(svg).toContain('&lt;img')
    const { elements, attributes } = markupOf(svg)
    for (const element of elements) expect(OURS).toContain(element)
    for (const name of attributes) expect(name).not.toMatch(/^on/i)
  })
})

/** Names that every object in JavaScript has, or that lead to what it has. */
const INHERITED = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'valueOf']

const clean = () => {
  expect(({} as Record<string, unknown>).admin).toBeUndefined()
  expect(Object.keys(Object.prototype)).toEqual([])
}

describe('keys that lead to every object', () => {
  test('are refused by every request, and change nothing', async () => {
    const { ask, store } = workroom()
    const payload = () =>
      JSON.parse(
        '{"__proto__":{"admin":true},"constructor":{"prototype":{"admin":true}},"id":"x"}',
      ) as unknown
    for (const { name } of requests) {
      const before = store.db.$client.prepare('SELECT total_changes()').pluck().get()
      expect(await ask(name, payload())).toMatchObject({ ok: false })
      expect(store.db.$client.prepare('SELECT total_changes()').pluck().get()).toBe(before)
    }
    clean()
  })

  test('in the place of a measure, a choice, a construction or any other name, are refused with a sentence', async () => {
    const { ask, line, client } = await agreedWork()
    const keyed = (key: string, value: unknown) =>
      JSON.parse(`{${JSON.stringify(key)}:${JSON.stringify(value)}}`) as object
    for (const name of INHERITED) {
      const save = (more: object) =>
        ask('quote.save', { customerId: client.id, lines: [{ ...line, ...more }] })
      const answers = [
        await save({ construction: name }),
        await save({ finishPlan: name }),
        await save({ clothId: name }),
        await save({ wearerId: name }),
        await ask('lists.csv', { list: name }),
        await ask('supply.count', { supply: name, amount: 1 }),
        await ask('supply.count', { supply: `notion:${name}`, amount: 1 }),
        await ask('measuringForm.write', { construction: name }),
        await ask(name, {}),
        await ask('client.get', { id: name }),
        await ask('length.read', { text: '1 cm', unit: name }),
        await ask('cloth.add', { name: 'x', width: 1500, pricePerMetre: { minor: 1, currency: name } }),
      ]
      for (const [i, answer] of answers.entries()) expect(answer, `${name} ${i}`).toMatchObject({ ok: false })
      // A measure or choice that nobody knows is refused too, but for the one key that is left out as it is read.
      const keys = [
        await ask('measurementSet.add', { clientId: client.id, measures: keyed(name, 900) }),
        await save({ choices: keyed(name, 3) }),
      ]
      for (const answer of keys) {
        expect(answer.ok).toBe(name === '__proto__')
        if (answer.ok) expect(JSON.stringify(answer.result)).not.toContain(name)
      }
    }
    clean()
  })
})

describe('names that lead elsewhere', () => {
  test('are no documents', async () => {
    const { context } = workroom()
    const names = [
      '../workroom.ellwand',
      '/etc/passwd',
      '..\\..\\x',
      'C:\\x',
      'taken-out/x.zip',
      'file:///etc/passwd',
      '\0',
      'nul',
    ]
    for (const name of names) expect(() => documentFile(context, name)).toThrow('refusal.store.notFound')
  })

  test('of pictures are only names', async () => {
    const { done, store, accepted } = await agreedWork()
    const { id } = await accepted()
    const dot =
      'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg=='
    await done('picture.add', { commissionId: id, name: '../../escaped.png', data: dot })
    const [kept] = store.db.$client.prepare('SELECT name, hash FROM picture').all() as {
      name: string
      hash: string
    }[]
    expect(kept!.name).toBe('../../escaped.png')
    expect(kept!.hash).toMatch(/^[0-9a-f]{64}$/)
  })
})
