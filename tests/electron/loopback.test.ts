import { mkdtempSync, rmSync } from 'node:fs'
import { request as ask, createServer, type Server } from 'node:http'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Loopback, serveLoopback } from '../../electron/loopback.ts'
import { type StoreHost, startStore } from '../../electron/store-host.ts'
import { threadCode } from '../../electron/thread-code.ts'
import { hasBrowser, usingBrowser, withoutBrowser } from '../support/browser.ts'

let folder: string
let store: StoreHost
let server: Loopback
let key: string
const screen = resolve(import.meta.dirname, '../../dist/renderer')

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'ellwand-loopback-'))
  store = startStore(folder, threadCode('store-thread'))
  await store.enter('own')
  await store.ask('client.add', { name: 'A Secret Name' })
  server = await serveLoopback(store, screen)
  const opened = await fetch(`http://127.0.0.1:${server.port}/session`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ key: server.address.split('#')[1] }),
  })
  key = ((await opened.json()) as { key: string }).key
})
afterAll(async () => {
  await server.close()
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

type Sent = { path?: string; method?: string; headers?: Record<string, string>; body?: string }

/** Sends exactly what is given, Host and all, as no browser would let a page do. */
function send({
  path = '/ask',
  method = 'POST',
  headers = {},
  body = LIST,
}: Sent): Promise<{ status: number; text: string; headers: Record<string, unknown> }> {
  return new Promise((done, failed) => {
    const request = ask(
      {
        host: '127.0.0.1',
        port: server.port,
        path,
        method,
        headers: { 'content-type': 'application/json', ...headers },
      },
      (response) => {
        let text = ''
        response.on('data', (part) => {
          text += part
        })
        response.on('end', () => done({ status: response.statusCode!, text, headers: response.headers }))
      },
    )
    request.on('error', failed)
    request.end(method === 'GET' ? undefined : body)
  })
}
/** Names by which a page elsewhere, or somebody who rules over names, could lead a browser here. */
const HOSTS = ['localhost', 'planner.example', '127.0.0.1.planner.example', '127.1', '0.0.0.0', '[::1]'].map(
  (name) => `${name}:PORT`,
)
const LIST = JSON.stringify({ name: 'clients.list', payload: {} })

describe('the planner on loopback', () => {
  test('answers a page that shows its key', async () => {
    const { status, text } = await send({ headers: { 'x-ellwand-key': key } })
    expect(status).toBe(200)
    expect(text).toContain('A Secret Name')
  })

  test.each<[string, Sent]>([
    ['no key', {}],
    ['a wrong key', { headers: { 'x-ellwand-key': 'x'.repeat(43) } }],
    ['the key as a cookie only', { headers: { cookie: 'ellwand-key=KEY; key=KEY' } }],
    ['another host by name', { headers: { host: 'planner.example', 'x-ellwand-key': 'KEY' } }],
    ...HOSTS.flatMap<[string, Sent]>((host) => [
      [`a name that was made to lead here, ${host}`, { headers: { host, 'x-ellwand-key': 'KEY' } }],
      [`the page asked for as ${host}`, { method: 'GET', path: '/', headers: { host } }],
    ]),
    [
      'a whole address for a path',
      { path: 'http://127.0.0.1:PORT/ask', headers: { 'x-ellwand-key': 'KEY' } },
    ],
    ['an address that is none', { path: '//:', headers: { 'x-ellwand-key': 'KEY' } }],
    ['a method of its own', { method: 'PUT', headers: { 'x-ellwand-key': 'KEY' } }],
    ['a question before the question', { method: 'OPTIONS', headers: { 'x-ellwand-key': 'KEY' } }],
    ['another port in its host', { headers: { host: '127.0.0.1:1', 'x-ellwand-key': 'KEY' } }],
    [
      'the origin of another local server',
      { headers: { origin: 'http://127.0.0.1:5173', 'x-ellwand-key': 'KEY' } },
    ],
    ['no origin to speak of', { headers: { origin: 'null', 'x-ellwand-key': 'KEY' } }],
    ['another site behind it', { headers: { 'sec-fetch-site': 'cross-site', 'x-ellwand-key': 'KEY' } }],
    [
      'another port of the same site behind it',
      { headers: { 'sec-fetch-site': 'same-site', 'x-ellwand-key': 'KEY' } },
    ],
    ['the used key of the opening address', { path: '/session', body: '{"key":"OPENING"}' }],
    ['a form’s content type', { headers: { 'content-type': 'text/plain', 'x-ellwand-key': 'KEY' } }],
    ['a question by GET', { method: 'GET' }],
    ['a paper without a ticket', { method: 'GET', path: '/paper/abc' }],
    ['a way out of its folder', { method: 'GET', path: '/..%2f..%2fpackage.json' }],
    ['a way out of its folder, twice wrapped', { method: 'GET', path: '/%252e%252e/package.json' }],
    ['more than a key in place of the key', { path: '/session', body: `{"key":"${'x'.repeat(2000)}"}` }],
    [
      'a body without end',
      {
        headers: { 'x-ellwand-key': 'KEY' },
        body: JSON.stringify({ name: 'clients.list', payload: 'x'.repeat(25_000_000) }),
      },
    ],
  ])('gives nothing to %s', async (_, sent) => {
    const opening = server.address.split('#')[1]!
    const filled = JSON.parse(
      JSON.stringify(sent)
        .replaceAll('KEY', key)
        .replaceAll('OPENING', opening)
        .replaceAll('PORT', String(server.port)),
    ) as Sent
    const got = await send(filled).catch(() => ({ status: 0, text: '' }))
    expect(got.status === 0 || got.status >= 400).toBe(true)
    expect(got.text).not.toContain('Secret')
    expect(got.text.length).toBeLessThan(20)
  })

  test('takes a picture as large as telephones make them', async () => {
    const body = JSON.stringify({ name: 'clients.list', payload: { data: 'x'.repeat(12_000_000) } })
    const { status, text } = await send({ headers: { 'x-ellwand-key': key }, body })
    // It reached the workroom, which reads the payload and says that such a list takes none.
    expect(status).toBe(200)
    expect(JSON.parse(text)).toMatchObject({
      ok: false,
      error: { code: expect.stringMatching(/^refusal\./) },
    })
  })

  test('sets no cookie, allows no other origin, and says what a page may do', async () => {
    const { headers } = await send({ headers: { 'x-ellwand-key': key } })
    expect(headers['set-cookie']).toBeUndefined()
    expect(headers['access-control-allow-origin']).toBeUndefined()
    expect(headers['content-security-policy']).toContain("default-src 'none'")
    expect(headers['content-security-policy']).not.toContain('unsafe')
    expect(headers['referrer-policy']).toBe('no-referrer')
  })

  test('listens on this machine only', () => {
    expect(server.server.address()).toMatchObject({ address: '127.0.0.1' })
  })

  test('hands out a paper once for a ticket', async () => {
    await store.enter('sample')
    const { result } = (await store.ask('quotes.list', {})) as unknown as {
      result: { quotes: { id: string }[] }
    }
    let document = ''
    const printed = new Promise<void>((done) => {
      const deaf = store.listen((event) => {
        if (!('answer' in event)) return
        deaf()
        document = (event.answer as unknown as { result: { document: { id: string } } }).result.document.id
        done()
      })
    })
    await store.ask('quote.print', { id: result.quotes[0]!.id })
    await printed
    const ticket = await send({
      path: '/ticket',
      headers: { 'x-ellwand-key': key },
      body: JSON.stringify({ document }),
    })
    const { url } = (JSON.parse(ticket.text) as { result: { url: string } }).result
    const first = await send({ method: 'GET', path: url })
    expect([first.status, first.text.slice(0, 5), first.headers['content-type']]).toEqual([
      200,
      '%PDF-',
      'application/pdf',
    ])
    expect((await send({ method: 'GET', path: url })).status).toBe(404)
    await store.enter('own')
  })
})

describe('a job', () => {
  test('tells how far it is, and keeps nothing when it is stopped', async () => {
    await store.enter('sample')
    const { result } = (await store.ask('commissions.list', {})) as unknown as {
      result: { commissions: { garments: { id: string }[] }[] }
    }
    const garmentId = result.commissions[0]!.garments[0]!.id
    const news: { job: string; progress?: unknown; answer?: { ok: boolean; error?: { code: string } } }[] = []
    const deaf = store.listen((event) => news.push(event as (typeof news)[number]))
    const asked = (await store.ask('workOrder.print', { garmentId })) as unknown as {
      result: { job: string }
    }
    const { job } = asked.result
    expect(await store.cancel(job)).toMatchObject({ ok: true, result: { cancelled: true } })
    while (!news.some(({ answer }) => answer !== undefined)) await new Promise((soon) => setTimeout(soon, 10))
    deaf()
    const told = news.flatMap(({ progress }) => (progress === undefined ? [] : [progress]))
    expect(told.length).toBeGreaterThan(0)
    for (const one of told) {
      expect(one).toMatchObject({ doing: 'print' })
      expect((one as { done: number }).done).toBeGreaterThan(0)
      expect((one as { done: number }).done).toBeLessThanOrEqual(1)
    }
    const end = news.find(({ answer }) => answer !== undefined)!
    const { result: history } = (await store.ask('history.list', { id: garmentId })) as unknown as {
      result: { changes: unknown[] }
    }
    expect(end).toMatchObject({ job, answer: { ok: false, error: { code: 'refusal.shell.stopped' } } })
    expect(history.changes).toEqual([])
    await store.enter('own')
  })
})

describe.runIf(hasBrowser)(`a page of another local server${withoutBrowser}`, () => {
  const browser = usingBrowser()
  let other: Server
  let heard = ''

  beforeAll(async () => {
    other = createServer((request, response) => {
      heard += JSON.stringify(request.headers)
      response.writeHead(200, { 'Content-Type': 'text/html' })
      response.end('<!doctype html><title>other</title>')
    })
    await new Promise<void>((ready) => other.listen(0, '127.0.0.1', ready))
  })
  afterAll(() => new Promise((closed) => other.close(closed)))

  test('gets nothing, whatever it tries, though the browser has the planner open', async () => {
    const context = await browser().newContext()
    const planner = await context.newPage()
    const second = await serveLoopback(store, screen)
    await planner.goto(second.address)
    await planner.locator('h1').first().waitFor()
    const page = await context.newPage()
    await page.goto(`http://127.0.0.1:${(other.address() as { port: number }).port}/`)
    const got = await page.evaluate(async (target) => {
      const body = JSON.stringify({ name: 'clients.list', payload: {} })
      const tries: Record<string, () => Promise<string>> = {
        plain: async () =>
          (await fetch(`${target}/ask`, { method: 'POST', body, credentials: 'include' })).text(),
        json: async () =>
          (
            await fetch(`${target}/ask`, {
              method: 'POST',
              body,
              credentials: 'include',
              headers: { 'Content-Type': 'application/json' },
            })
          ).text(),
        blind: async () =>
          (
            await fetch(`${target}/ask`, { method: 'POST', body, mode: 'no-cors', credentials: 'include' })
          ).text(),
        page: async () => (await fetch(target, { credentials: 'include' })).text(),
        kept: async () => JSON.stringify({ ...localStorage, cookies: document.cookie }),
        frame: () =>
          new Promise((done) => {
            const frame = document.createElement('iframe')
            frame.src = target
            frame.onload = () => {
              try {
                done(frame.contentDocument?.body.textContent ?? '')
              } catch {
                done('')
              }
            }
            document.body.append(frame)
            setTimeout(() => done(''), 1500)
          }),
      }
      const results: Record<string, string> = {}
      for (const [name, attempt] of Object.entries(tries)) results[name] = await attempt().catch(() => '')
      return results
    }, `http://127.0.0.1:${second.port}`)
    expect(got).toEqual({ plain: '', json: '', blind: '', page: '', kept: '{"cookies":""}', frame: '' })
    expect(heard).not.toContain('ellwand')
    expect(heard).not.toContain('cookie')
    await context.close()
    await second.close()
  })
})
