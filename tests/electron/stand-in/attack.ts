import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { BrowserWindow, session, world } from './electron.ts'

type Found = Record<string, unknown>

const PLACES = [
  'https://evil.example/',
  'http://127.0.0.1:8080/',
  'file:///etc/passwd',
  'javascript:alert(1)',
  'data:text/html,<script>alert(1)</script>',
  'ellwand://planner.evil/',
  'ellwand://other/',
  'ellwand://planner@evil.example/',
  'ellwand://maker@planner/',
  'ellwand://planner:80/',
  'ellwand:planner/',
  'ELLWAND://PLANNER.evil/',
  'ellwand://planner/mark.svg',
  'ellwand://planner/?from=evil',
  'no address',
  '',
  'ellwand://planner/#/clients',
]

/** Tries every way out of the page, and every way into main but that of the page. */
export async function attack(found: Found): Promise<void> {
  const { webContents } = world.windows[0]!
  // Whatever contents come to be later are walled in too.
  const later = new BrowserWindow({}).webContents
  world.windows.pop()
  const navigations: Record<string, boolean> = {}
  for (const [whose, contents] of Object.entries({ own: webContents, later }))
    for (const event of ['will-navigate', 'will-redirect', 'will-frame-navigate'])
      for (const url of PLACES) {
        let prevented = false
        contents.emit(event, { url, preventDefault: () => (prevented = true) })
        navigations[`${whose} ${event} ${url}`] = prevented
      }
  found.navigations = navigations
  let webview = false
  webContents.emit('will-attach-webview', { preventDefault: () => (webview = true) })
  let download = false
  session.defaultSession.emit('will-download', { preventDefault: () => (download = true) })
  found.prevented = { webview, download }
  found.windows = [webContents, later].map(
    (contents) => contents.openHandler!({ url: 'ellwand://planner/' }).action,
  )
  found.fetched = PLACES.filter((url) => {
    let cancelled: boolean | undefined
    world.fetching!({ url }, ({ cancel }) => (cancelled = cancel))
    return cancelled !== true
  })
  found.permissions = permissions()
  await attackMain(found)
}

function permissions(): unknown[] {
  const given: unknown[] = []
  for (const permission of [
    'geolocation',
    'media',
    'clipboard-read',
    'openExternal',
    'fileSystem',
  ] as const) {
    world.permission!(null as never, permission, (answer) => given.push(answer), {} as never)
    given.push(world.permissionCheck!(null, permission as never, 'ellwand://planner', {} as never))
  }
  given.push(world.devices!({ deviceType: 'usb', origin: 'ellwand://planner' } as never))
  return given
}

async function attackMain(found: Found): Promise<void> {
  const frames: Record<string, string> = {}
  const own = { url: 'ellwand://planner/', parent: null }
  for (const [name, frame, foreign] of [
    ['gone', null, false],
    ['nested', { url: 'ellwand://planner/', parent: {} }, false],
    ['strange', { url: 'https://evil.example/', parent: null }, false],
    ['lookalike', { url: 'ellwand://planner.evil/', parent: null }, false],
    ['named', { url: 'ellwand://maker@planner/', parent: null }, false],
    ['picture', { url: 'ellwand://planner/mark.svg', parent: null }, false],
    ['blank', { url: 'about:blank', parent: null }, false],
    ['other contents', own, true],
  ] as const)
    for (const call of ['ask', 'cancel', 'enter', 'paper']) {
      Object.assign(world, { frame, foreign })
      frames[`${name} ${call}`] = await Promise.resolve(
        world.exposed.ellwand![call]!('clients.list', {}),
      ).then(
        (answer) => `answered ${JSON.stringify(answer)}`,
        (error: Error) => error.message,
      )
    }
  Object.assign(world, { frame: own, foreign: false })
  found.frames = frames
}

/** Presses all that is in the menu, and tells where the page went. */
export function pressEverything(): { rooms: string[]; labels: string[]; roles: string[] } {
  const items = world.menu.flatMap(({ submenu }) => (Array.isArray(submenu) ? submenu : []))
  const { location } = globalThis as unknown as { location: { hash: string } }
  const rooms: string[] = []
  for (const { accelerator, click } of items) {
    if (accelerator === undefined || accelerator.includes('Shift')) continue
    click!({} as never, undefined, {} as never)
    rooms.push(`${accelerator} ${location.hash}`)
  }
  const all = [...world.menu, ...items]
  return {
    rooms,
    labels: all.map(({ label }) => label).filter((label) => label !== undefined),
    roles: all.map(({ role }) => role).filter((role) => role !== undefined),
  }
}

/** Saves the paper shown last, as the maker does by the menu: nowhere, where it cannot be, and where it can. */
export async function saveCopy(folder: string): Promise<unknown> {
  const items = world.menu.flatMap(({ submenu }) => (Array.isArray(submenu) ? submenu : []))
  const { click } = items.find(({ accelerator }) => accelerator === 'CmdOrCtrl+Shift+S')!
  const to = join(folder, 'copy.pdf')
  for (const path of ['', join(folder, 'no', 'such', 'folder.pdf'), to]) {
    world.saveTo = path
    click!({} as never, undefined, {} as never)
    const told = world.errors.length
    for (let i = 0; i < 80 && world.errors.length === told && !isThere(to); i++)
      await after(path === '' ? 5 : 25)
  }
  return {
    name: world.asked.at(-1),
    begins: readFileSync(to, 'latin1').slice(0, 5),
    told: world.errors.splice(0),
  }
}

function isThere(path: string): boolean {
  try {
    return readFileSync(path).length > 0
  } catch {
    return false
  }
}

/** Lets things go wrong that hold private words, and reads what was kept of it. */
export async function breakDown(found: Found): Promise<void> {
  const window = world.windows[0]!
  for (const secret of ['Ada Secret, 97 cm', 'Ada Secret again'])
    process.emit('uncaughtException', Object.assign(new TypeError(secret), { code: 'E_SECRET' }))
  process.emit('unhandledRejection', 'Ada Secret', Promise.resolve())
  window.webContents.emit('preload-error', {}, '/home/secret/preload.cjs', new Error('Ada Secret'))
  found.told = world.errors.splice(0)
  world.presses = 1
  window.emit('unresponsive')
  await after(25)
  found.stuck = world.asked.at(-1)
  found.loads = window.loads.length
  found.again = world.errors.splice(0)
  found.log = readFileSync(join(process.env.ELLWAND_FOLDER!, 'log/planner.log'), 'utf8')
}
