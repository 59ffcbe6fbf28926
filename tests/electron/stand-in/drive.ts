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

const built = process.argv[2] ?? resolve(import.meta.dirname, '../../../dist/electron')
const { world, app } = await import('./electron.ts')
const { attack, breakDown, pressEverything, saveCopy } = await import('./attack.ts')
const found: Record<string, unknown> = {}

type News = {
  job: string
  answer?: { ok: boolean; result?: { document?: { id: string }; ended?: string } }
}
const APRON = {
  construction: 'apron',
  measures: { waistGirth: '31 in', hipGirth: '40 in', cervicalHeight: '56 1/2 in', waistHeight: '40 3/4 in' },
  cloth: { width: '1 yd', pricePerMetre: { minor: 1320, currency: 'GBP' } },
  seconds: 0.5,
}

const { screens } = process.env
if (screens !== undefined) world.screens = JSON.parse(screens) as typeof world.screens
Object.assign(globalThis, { location: { hash: '' } })
await import(pathToFileURL(join(built, 'main.js')).href)
for (let i = 0; i < 200 && world.windows[0]?.loads.length !== 1 && world.errors.length === 0; i++)
  await after(25)

if (world.errors.length > 0) {
  found.errors = world.errors
} else {
  tellPlace()
  if (process.env.glance === undefined) await lookRound()
  else {
    createRequire(import.meta.url)(join(built, 'preload.cjs'))
    found.damage = await world.exposed.ellwand!.ask!('damaged.describe', {})
  }
}
process.stdout.write(`${JSON.stringify(found)}\n`)
process.exit(0)

function tellPlace(): void {
  const { options, maximized } = world.windows[0]!
  const { x, y, width, height } = options
  found.opened = { x, y, width, height, maximized }
}

async function lookRound(): Promise<void> {
  createRequire(import.meta.url)(join(built, 'preload.cjs'))
  const api = world.exposed.ellwand!
  const window = world.windows[0]!
  found.exposed = Object.keys(world.exposed)
  found.api = Object.keys(api)
  found.loaded = window.loads[0]
  found.preferences = window.options.webPreferences
  found.schemes = world.schemes
  found.sandboxed = world.sandboxed

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

  await attack(found)

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

  const news: News[] = []
  api.listen!((event: unknown) => news.push(event as News))
  const finished = async (asked: unknown): Promise<NonNullable<News['answer']>> => {
    const { job } = (asked as { result: { job: string } }).result
    for (;;) {
      const answer = news.find((one) => one.job === job && one.answer !== undefined)?.answer
      if (answer !== undefined) return answer
      await after(25)
    }
  }
  await api.enter!('sample')
  const { result } = (await api.ask!('quotes.list', {})) as { result: { quotes: { id: string }[] } }
  const printed = await finished(await api.ask!('quote.print', { id: result.quotes[0]!.id }))
  found.printed = printed.ok
  found.laid = (await finished(await api.ask!('lay.best', APRON))).result?.ended
  found.paper = await api.paper!(printed.result!.document!.id)
  found.noPaper = await api.paper!('../../../etc/passwd')
  found.shown = world.shown.map((path) => path.replace(/.*\//, ''))
  found.saved = await saveCopy(process.env.ELLWAND_FOLDER!)
  await api.enter!('own')
  found.still = await api.ask!('clients.list', {})
  found.menu = pressEverything()

  app.emit('second-instance')
  found.focused = window.focused
  await breakDown(found)
  window.maximized = true
  window.bounds = { x: 40, y: 50, width: 1000, height: 700 }
  // The page breaks down once more than it is opened again.
  for (let i = 0; i < 3; i++) window.webContents.emit('render-process-gone', {}, { reason: 'crashed' })
  found.closed = [window.closed, window.loads.length]
  for (let i = 0; i < 200 && world.quits === 0; i++) await after(25)
  found.quits = world.quits
  found.errors = world.errors
}
