import { createRequire, registerHooks } from 'node:module'
import { join, resolve } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { pathToFileURL } from 'node:url'

// Runs the built main and preload for real, in a process of their own, and tells what they did.

const standIn = pathToFileURL(join(import.meta.dirname, 'electron.ts')).href
registerHooks({
  resolve: (specifier, context, next) =>
    specifier === 'electron' ? { url: standIn, shortCircuit: true } : next(specifier, context),
})

const built = resolve(import.meta.dirname, '../../../dist/electron')
const { world, app } = await import('./electron.ts')
const found: Record<string, unknown> = {}

await import(pathToFileURL(join(built, 'main.js')).href)
for (let i = 0; i < 200 && (world.windows[0]?.loaded ?? '') === '' && world.errors.length === 0; i++)
  await after(25)

if (world.errors.length > 0) {
  found.errors = world.errors
} else {
  await lookRound()
}
process.stdout.write(`${JSON.stringify(found)}\n`)
process.exit(0)

async function lookRound(): Promise<void> {
  createRequire(import.meta.url)(join(built, 'preload.cjs'))
  const api = world.exposed.ellwand!
  const window = world.windows[0]!
  found.exposed = Object.keys(world.exposed)
  found.api = Object.keys(api)
  found.loaded = window.loaded
  found.preferences = window.options.webPreferences

  found.added = await api.ask!('client.add', { name: 'Ada' })
  found.listed = await api.ask!('clients.list', {})

  found.served = {}
  for (const url of [
    'ellwand://planner/',
    'ellwand://planner/mark.svg',
    'ellwand://planner/../../package.json',
    'ellwand://planner/%2e%2e/%2e%2e/package.json',
    'ellwand://planner/..%2f..%2fpackage.json',
    'ellwand://other/',
    'ellwand://planner/nothing.js',
  ]) {
    const response = await world.serve!(new Request(url))
    ;(found.served as Record<string, unknown>)[url] = {
      status: response.status,
      policy: response.headers.get('Content-Security-Policy'),
    }
  }

  found.navigations = {}
  for (const event of ['will-navigate', 'will-redirect', 'will-frame-navigate']) {
    for (const url of [
      'https://evil.example/',
      'http://127.0.0.1:8080/',
      'file:///etc/passwd',
      'javascript:alert(1)',
      'ellwand://planner.evil/',
      'ellwand://other/',
      'ellwand://planner/#/clients',
    ]) {
      let prevented = false
      window.webContents.emit(event, { url, preventDefault: () => (prevented = true) })
      ;(found.navigations as Record<string, boolean>)[`${event} ${url}`] = prevented
    }
  }
  let webview = false
  window.webContents.emit('will-attach-webview', { preventDefault: () => (webview = true) })
  found.webviewPrevented = webview
  found.opened = world.openHandler!({ url: 'https://evil.example/' })
  let permitted: unknown
  world.permission!(null, 'geolocation', (answer: unknown) => (permitted = answer))
  found.permission = [permitted, world.permissionCheck!()]

  found.frames = {}
  for (const [name, frame] of Object.entries({
    gone: null,
    nested: { url: 'ellwand://planner/', parent: {} },
    foreign: { url: 'https://evil.example/', parent: null },
    lookalike: { url: 'ellwand://planner.evil/', parent: null },
    blank: { url: 'about:blank', parent: null },
  })) {
    for (const call of ['ask', 'cancel', 'enter', 'paper']) {
      world.frame = frame
      ;(found.frames as Record<string, string>)[`${name} ${call}`] = await Promise.resolve(
        api[call]!('clients.list', {}),
      ).then(
        (answer) => `answered ${JSON.stringify(answer)}`,
        (error: Error) => error.message,
      )
    }
  }
  world.frame = { url: 'ellwand://planner/', parent: null }

  const odd: [unknown, unknown][] = [
    [undefined, undefined],
    [null, null],
    [{ toString: 'x' }, {}],
    ['constructor', {}],
    ['__proto__', {}],
    ['client.add', 'text'],
    ['client.add', JSON.parse('{"name":"Eve","__proto__":{"admin":true}}')],
    ['client.add', { name: { $gt: '' } }],
    ['client.get', { id: "' OR 1=1 --" }],
    ['x'.repeat(1_000_000), {}],
  ]
  found.malformed = []
  for (const [name, payload] of odd) {
    const answer = (await api.ask!(name, payload)) as { ok: boolean; error?: { message: string } }
    ;(found.malformed as unknown[]).push({ ok: answer.ok, sentence: answer.error?.message.slice(0, 60) })
  }
  found.polluted = ({} as { admin?: boolean }).admin ?? false

  const news: { job: string; answer?: { ok: boolean; result?: { document: { id: string } } } }[] = []
  api.listen!((event: unknown) => news.push(event as (typeof news)[number]))
  await api.enter!('sample')
  const { result } = (await api.ask!('quotes.list', {})) as { result: { quotes: { id: string }[] } }
  const job = (await api.ask!('quote.print', { id: result.quotes[0]!.id })) as { result: { job: string } }
  for (
    let i = 0;
    i < 400 && !news.some(({ job: of, answer }) => of === job.result.job && answer !== undefined);
    i++
  )
    await after(25)
  const printed = news.find(({ answer }) => answer !== undefined)!.answer!
  found.printed = printed.ok
  found.paper = await api.paper!(printed.result!.document.id)
  found.noPaper = await api.paper!('../../../etc/passwd')
  found.shown = world.shown.map((path) => path.replace(/.*\//, ''))
  await api.enter!('own')
  found.still = await api.ask!('clients.list', {})

  app.emit('second-instance')
  found.focused = window.focused
  app.emit('window-all-closed')
  for (let i = 0; i < 200 && world.quits === 0; i++) await after(25)
  found.quits = world.quits
}
