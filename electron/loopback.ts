import { randomBytes, timingSafeEqual } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import { extname } from 'node:path'
import { z } from 'zod'
import { PAGE_HEADERS, screenFile } from './screen-files.ts'
import type { StoreHost } from './store-host.ts'

/**
 * The planner served to a browser on this machine alone.
 *
 * Cookies are sent to every port of a host, so another server on this machine would receive one; there is
 * none. The address that opens the planner carries a key that works once, in the part that no browser sends
 * to any server; the page trades it for a second key, keeps that where only pages of this very origin can
 * read it, and shows it in a header with every request.
 */
export type Loopback = { server: Server; port: number; address: string; close(): Promise<void> }

/** A picture as large as a note takes, with all that is said of it, bytes. Whoever has no key yet sends no more than one. */
const BODY_LIMIT = 24_000_000
const KEY_LIMIT = 1000
/** A request that is sent more slowly than this is dropped, ms; a page on this machine has no reason to. */
const PATIENCE = { headersTimeout: 4000, requestTimeout: 8000, connectionsCheckingInterval: 1000 }
/** So many connections at once; a browser opens six for a page, and keeps one for news of jobs. */
const MOST_CONNECTIONS = 200
const TICKET_MS = 60_000
const KEY_HEADER = 'x-ellwand-key'

/** What is handed over, where it is no PDF. */
const TYPES: Record<string, string> = {
  '.svg': 'image/svg+xml',
  '.zip': 'application/zip',
  '.sealed': 'application/octet-stream',
}
/** What a browser shows by itself; everything else is saved. */
const SHOWN = /\.(pdf|svg)$/

type Ticket = { path: string; name: string; until: number }

/** @param port 0 for any that is free */
export async function serveLoopback(store: StoreHost, screen: string, port = 0): Promise<Loopback> {
  const newKey = () => randomBytes(32).toString('base64url')
  const session = newKey()
  let opening: string | undefined = newKey()
  const tickets = new Map<string, Ticket>()

  const server = createServer(PATIENCE, (request, response) => {
    handle(request, response).catch((error) => {
      // Whoever hung up in the middle of a request is no fault of the planner, and hears no answer.
      if (!request.complete) {
        response.destroy()
        return
      }
      console.error(error)
      if (!response.headersSent) refuse(response, 500)
      else response.destroy()
    })
  })

  server.maxConnections = MOST_CONNECTIONS

  async function handle(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const { port: own } = server.address() as { port: number }
    if (!comesFromHere(request, own)) return refuse(response, 403)
    const path = pathOf(request)
    if (path === undefined) return refuse(response, 400)
    if (request.method === 'GET')
      return path.startsWith('/paper/') ? paper(path.slice(7), response) : page(path, response)
    if (request.method !== 'POST') return refuse(response, 405)
    if (request.headers['content-type'] !== 'application/json') return refuse(response, 415)
    const stranger = path === '/session'
    if (!stranger && !same(request.headers[KEY_HEADER], session)) return refuse(response, 403)
    const body = await bodyOf(request, stranger ? KEY_LIMIT : BODY_LIMIT)
    if (body === undefined) return refuse(response, 413)
    if (stranger) return trade(body, response)
    return granted(path, body, request, response)
  }

  /** Trades the key of the opening address, once, for that of the session. */
  function trade(body: unknown, response: ServerResponse): void {
    const { key } = z.object({ key: z.string() }).catch({ key: '' }).parse(body)
    if (opening !== undefined && same(key, opening)) {
      opening = undefined
      json(response, { key: session })
    } else refuse(response, 403)
  }

  async function granted(
    path: string,
    body: unknown,
    request: IncomingMessage,
    response: ServerResponse,
  ): Promise<void> {
    if (path === '/events') return events(request, response)
    if (path === '/ask') {
      const { name, payload } = z
        .object({ name: z.string(), payload: z.unknown() })
        .catch({ name: '', payload: {} })
        .parse(body)
      return json(response, await store.ask(name, payload ?? {}))
    }
    if (path === '/cancel') return json(response, await store.cancel(textOf(body, 'job')))
    if (path === '/enter')
      return json(response, await store.enter(textOf(body, 'which') === 'sample' ? 'sample' : 'own'))
    if (path === '/ticket') {
      const found = await store.paper(textOf(body, 'document'))
      if (!found.ok) return json(response, found)
      const ticket = newKey()
      tickets.set(ticket, { ...found.result, until: Date.now() + TICKET_MS })
      return json(response, { ok: true, result: { url: `/paper/${ticket}` } })
    }
    return refuse(response, 404)
  }

  function events(request: IncomingMessage, response: ServerResponse): void {
    response.writeHead(200, {
      ...PAGE_HEADERS,
      'Content-Type': 'application/x-ndjson',
      'Cache-Control': 'no-store',
    })
    response.write('\n')
    const stop = store.listen((event) => response.write(`${JSON.stringify(event)}\n`))
    request.on('close', stop)
  }

  /** A paper by its ticket, which works once and not for long. */
  function paper(key: string, response: ServerResponse): void {
    const ticket = tickets.get(key)
    tickets.delete(key)
    if (ticket === undefined || ticket.until < Date.now()) {
      refuse(response, 404)
      return
    }
    response.writeHead(200, {
      ...PAGE_HEADERS,
      'Content-Type': TYPES[extname(ticket.name)] ?? 'application/pdf',
      'Content-Disposition': `${SHOWN.test(ticket.name) ? 'inline' : 'attachment'}; filename="${ticket.name.replace(/[^\w.-]/g, '_')}"`,
      'Cache-Control': 'no-store',
    })
    createReadStream(ticket.path).pipe(response)
  }

  async function page(path: string, response: ServerResponse): Promise<void> {
    const file = await screenFile(screen, path)
    if (file === undefined) return refuse(response, 404)
    response.writeHead(200, { ...PAGE_HEADERS, 'Content-Type': file.type, 'Cache-Control': 'no-cache' })
    response.end(file.bytes)
  }

  await new Promise<void>((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, '127.0.0.1', resolve)
  })
  const own = (server.address() as { port: number }).port
  return {
    server,
    port: own,
    address: `http://127.0.0.1:${own}/#${opening}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
}

/** Whether a request names this server, and no other page or site stands behind it. */
function comesFromHere({ headers, headersDistinct }: IncomingMessage, port: number): boolean {
  const host = `127.0.0.1:${port}`
  if (headersDistinct.host?.length !== 1 || headers.host !== host) return false
  if (headers.origin !== undefined && headers.origin !== `http://${host}`) return false
  const site = headers['sec-fetch-site']
  return site === undefined || site === 'same-origin' || site === 'none'
}

/** What is asked for, without what comes after a question mark; undefined where it is no address. */
const pathOf = ({ url = '/' }: IncomingMessage): string | undefined =>
  url.startsWith('/') ? URL.parse(url, 'http://planner')?.pathname : undefined

function same(given: string | string[] | undefined, key: string): boolean {
  if (typeof given !== 'string') return false
  const [a, b] = [Buffer.from(given), Buffer.from(key)]
  return a.length === b.length && timingSafeEqual(a, b)
}

const textOf = (body: unknown, field: string): string => {
  const value =
    typeof body === 'object' && body !== null && Object.hasOwn(body, field)
      ? (body as Record<string, unknown>)[field]
      : ''
  return typeof value === 'string' ? value : ''
}

/** The JSON of a request, `null` when it is none, undefined when there is too much of it. */
async function bodyOf(request: IncomingMessage, limit: number): Promise<unknown> {
  const parts: Buffer[] = []
  let size = 0
  for await (const part of request) {
    size += (part as Buffer).length
    if (size > limit) return undefined
    parts.push(part as Buffer)
  }
  try {
    return JSON.parse(Buffer.concat(parts).toString('utf8'))
  } catch {
    return null
  }
}

function json(response: ServerResponse, value: unknown): void {
  response.writeHead(200, {
    ...PAGE_HEADERS,
    'Content-Type': 'application/json',
    'Cache-Control': 'no-store',
  })
  response.end(JSON.stringify(value))
}

function refuse(response: ServerResponse, status: number): void {
  response.writeHead(status, { ...PAGE_HEADERS, 'Content-Type': 'text/plain', Connection: 'close' })
  response.end(String(status))
}
