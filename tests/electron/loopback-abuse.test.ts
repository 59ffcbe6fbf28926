import { spawnSync } from 'node:child_process'
import { connect, type Socket } from 'node:net'
import { dirname, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Loopback, serveLoopback } from '../../electron/loopback.ts'
import type { StoreHost } from '../../electron/store-host.ts'
import { newStore } from '../support/store.ts'

const root = resolve(import.meta.dirname, '../..')

/** A store that remembers what reached it. */
const reached: string[] = []
const ask = async (name: string) => {
  reached.push(name)
  return { ok: true as const, result: {} }
}
const unused = () => {
  throw new Error('not asked for here')
}
const store: StoreHost = { ask, cancel: unused, paper: unused, enter: unused, listen: unused, close: unused }

let server: Loopback
beforeAll(async () => {
  server = await serveLoopback(store, resolve(root, 'dist/renderer'))
})
afterAll(() => server.close())

/** Sends some bytes and no more; hears everything until the server hangs up. */
function raw(bytes: string): { socket: Socket; end: Promise<string> } {
  const socket = connect(server.port, '127.0.0.1')
  socket.write(bytes)
  let heard = ''
  socket.on('data', (part) => {
    heard += part
  })
  socket.on('error', () => {})
  return { socket, end: new Promise((done) => socket.on('close', () => done(heard))) }
}

const host = () => `Host: 127.0.0.1:${server.port}\r\n`
const json = 'Content-Type: application/json\r\n'
const opening = () => JSON.stringify({ key: server.address.split('#')[1] })

describe('the planner on loopback, when it is abused', () => {
  test.concurrent.each([
    ['a head that never ends', () => `POST /ask HTTP/1.1\r\n${host()}X-Slow: `],
    ['a body that never comes', () => `POST /session HTTP/1.1\r\n${host()}${json}Content-Length: 60\r\n\r\n`],
    [
      'a body in pieces without an end',
      () => `POST /session HTTP/1.1\r\n${host()}${json}Transfer-Encoding: chunked\r\n\r\n5\r\n{"key\r\n`,
    ],
  ])('hangs up on %s, and answers others meanwhile', async (_, bytes) => {
    const slow = Array.from({ length: 40 }, () => raw(bytes()))
    const page = await fetch(`http://127.0.0.1:${server.port}/`)
    expect(page.status).toBe(200)
    for (const said of await Promise.all(slow.map(({ end }) => end)))
      expect(said).toMatch(/^$|HTTP\/1\.1 408/)
  })

  test.each([
    ['two hosts', () => `GET / HTTP/1.1\r\n${host()}Host: planner.example\r\n\r\n`],
    ['no host', () => 'GET / HTTP/1.1\r\n\r\n'],
    ['no host in the old manner', () => 'GET / HTTP/1.0\r\n\r\n'],
    [
      'two lengths',
      () =>
        `POST /session HTTP/1.1\r\n${host()}${json}Content-Length: 4\r\nContent-Length: ${opening().length}\r\n\r\n${opening()}`,
    ],
    [
      'a length and pieces at once',
      () =>
        `POST /session HTTP/1.1\r\n${host()}${json}Content-Length: 4\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`,
    ],
    ['a head beyond all measure', () => `GET / HTTP/1.1\r\n${host()}X: ${'x'.repeat(100_000)}\r\n\r\n`],
    ['something that is no request', () => '\u0016\u0003\u0001 hello\r\n\r\n'],
    [
      'another protocol in its place',
      () => `POST /events HTTP/1.1\r\n${host()}Upgrade: websocket\r\nConnection: Upgrade\r\n\r\n`,
    ],
  ])('refuses %s and hangs up', async (_, bytes) => {
    const { socket, end } = raw(bytes())
    const said = await Promise.race([
      end,
      new Promise<string>((done) => socket.once('data', (part) => done(String(part)))),
    ])
    expect(said).toMatch(/^HTTP\/1\.1 4\d\d /)
    expect(said).not.toContain('<title>')
    socket.destroy()
  })

  test('takes no more of a body than it may hold', async () => {
    const { socket, end } = raw(
      `POST /session HTTP/1.1\r\n${host()}${json}Transfer-Encoding: chunked\r\n\r\n`,
    )
    const piece = `186a0\r\n${' '.repeat(100_000)}\r\n`
    let sent = 0
    while (!socket.destroyed && sent < 2000) {
      sent++
      if (!socket.write(piece))
        await new Promise<void>((ready) => {
          socket.once('drain', ready)
          socket.once('close', () => ready())
        })
    }
    await end
    expect(sent).toBeLessThan(200)
  })

  test('let nothing of all that through to the store', () => {
    expect(reached).toEqual([])
  })

  test('closes at once, whoever still holds a line', async () => {
    const own = await serveLoopback(store, resolve(root, 'dist/renderer'))
    const held = connect(own.port, '127.0.0.1')
    const dropped = new Promise((done) => held.on('close', done))
    held.on('error', () => {})
    await new Promise((ready) => held.on('connect', ready))
    await own.close()
    await dropped
  })

  test('is not given out at a name or to the net', async () => {
    const elsewhere = connect({ port: server.port, host: '::1' })
    expect(
      await new Promise((done) =>
        elsewhere.on('error', () => done('refused')).on('connect', () => done('open')),
      ),
    ).toBe('refused')
    elsewhere.destroy()
  })
})

test('a second planner on the same workroom says in a sentence that the first has it', () => {
  const held = newStore()
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [resolve(root, 'electron/start.ts'), '--browser'],
    { encoding: 'utf8', env: { ...process.env, ELLWAND_FOLDER: dirname(held.path) } },
  )
  expect(status).toBe(1)
  expect(stdout).toBe('')
  expect(stderr.trim()).toBe(
    `Another window or program has the store ${held.path} open. Close it there first.`,
  )
})
