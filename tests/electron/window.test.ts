import { spawnSync } from 'node:child_process'
import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { PLACES } from '../../core/words/places.ts'
import { binaryIn, hasDisplay } from '../../electron/electron-binary.ts'
import { dataFolder } from '../../electron/places.ts'
import { newStore, scratch } from '../support/store.ts'

type Answer = { ok: boolean; result?: Record<string, unknown>; error?: { code: string; message: string } }
type Found = Record<string, unknown> & {
  served: Record<string, { status: number; policy: string }>
  navigations: Record<string, boolean>
  frames: Record<string, string>
  menu: { rooms: string[]; labels: string[]; roles: string[] }
}

const drive = (folder: string, more: Record<string, string> = {}): Found => {
  const driver = resolve(import.meta.dirname, 'stand-in/drive.ts')
  const { stdout, stderr } = spawnSync(process.execPath, [driver], {
    encoding: 'utf8',
    env: { ...process.env, ELLWAND_FOLDER: folder, ...more },
  })
  if (stdout === '') throw new Error(stderr)
  return JSON.parse(stdout.trim().split('\n').at(-1)!) as Found
}

describe('the planner’s own window, main and preload run for real', () => {
  const folder = mkdtempSync(join(tmpdir(), 'ellwand-window-'))
  const found = drive(folder)
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  test('isolates the page and gives it five functions and nothing else', () => {
    expect(found.preferences).toMatchObject({
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webviewTag: false,
      spellcheck: false,
    })
    expect(found.sandboxed).toBe(true)
    expect(found.schemes).toEqual([
      { scheme: 'ellwand', privileges: { standard: true, secure: true, supportFetchAPI: true } },
    ])
    expect(found.exposed).toEqual(['ellwand'])
    expect(found.api).toEqual(['ask', 'cancel', 'enter', 'paper', 'listen'])
  })

  test('opens by its own scheme and answers its own page', () => {
    expect(found.loaded).toBe('ellwand://planner/')
    expect((found.added as Answer).ok).toBe(true)
    expect(JSON.stringify(found.listed)).toContain('Ada')
  })

  test('serves files of the screen with a strict policy, and nothing beside them', () => {
    for (const [url, { status, policy }] of Object.entries(found.served)) {
      expect(status, url).toBe(['ellwand://planner/', 'ellwand://planner/mark.svg'].includes(url) ? 200 : 404)
      expect(policy, url).toContain("default-src 'none'")
      expect(policy, url).not.toContain('unsafe')
    }
  })

  test('goes nowhere else, opens no window, fetches nothing and grants no permission', () => {
    expect(Object.keys(found.navigations)).toHaveLength(2 * 3 * 17)
    for (const [move, prevented] of Object.entries(found.navigations)) {
      expect(prevented, move).toBe(!move.endsWith(' ellwand://planner/#/clients'))
    }
    expect(found.prevented).toEqual({ webview: true, download: true })
    expect(found.windows).toEqual(['deny', 'deny'])
    for (const url of found.fetched as string[]) expect(url).toMatch(/^(data:|ellwand:\/\/planner\/)/)
    expect(found.permissions).toEqual(Array(11).fill(false))
  })

  test('answers no frame but its own', () => {
    expect(Object.keys(found.frames)).toHaveLength(32)
    for (const [frame, said] of Object.entries(found.frames))
      expect(said, frame).toContain('from outside the planner')
  })

  test('answers malformed requests by a sentence and lives on', () => {
    for (const answer of found.malformed as { ok: boolean; sentence: string }[]) {
      expect(answer.ok).toBe(false)
      expect(answer.sentence).toMatch(/^[A-ZT]/)
    }
    expect(found.polluted).toBe(false)
    expect(JSON.stringify(found.still)).toContain('Ada')
    expect(JSON.stringify(found.still)).not.toContain('Eve')
  })

  test('prints in the background and shows the paper, and no other file', () => {
    expect(found.printed).toBe(true)
    expect(found.paper).toMatchObject({ ok: true })
    expect(found.noPaper).toMatchObject({ ok: false, error: { code: 'refusal.store.notFound' } })
    expect(found.shown).toEqual([expect.stringMatching(/^[0-9a-f]{64}\.pdf$/)])
  })

  test('saves a copy under the paper’s own name, whole or not at all', () => {
    expect(found.saved).toEqual({
      name: '/documents/Q-2026-001.pdf',
      begins: '%PDF-',
      told: [expect.stringMatching(/^Save a copy: The copy could not be saved there\./)],
    })
    expect(readdirSync(folder).filter((name) => name.includes('.part'))).toEqual([])
  })

  test('goes to every room by keys, and its menu throws nothing away', () => {
    const { rooms, labels, roles } = found.menu
    expect(rooms).toEqual([
      'Alt+N #/desk',
      ...['today', 'desk', 'clients', 'cloths', 'commissions', 'workroom'].map(
        (room, i) => `CmdOrCtrl+${i + 1} #/${room}`,
      ),
    ])
    expect(labels).toContain('Quote desk')
    expect(roles).not.toContain('reload')
    expect(roles).not.toContain('forceReload')
  })

  test('tells of a fault in one sentence and keeps a note without private words', () => {
    expect(found.told).toEqual([expect.stringMatching(/^Something went wrong in the planner: What was kept/)])
    expect(found.log).toMatch(/ uncaught TypeError E_SECRET drive\.ts:|attack\.ts:/)
    expect(found.log).toMatch(/ unhandled string\n/)
    expect(found.log).not.toMatch(/Secret|97 cm|\/home|Ada|clients\.list/)
  })

  test('opens a page again that breaks down or is stuck, and gives up when it always does', () => {
    expect(found.stuck).toMatch(/does not answer/)
    expect(found.loads).toBe(2)
    expect(found.again).toEqual([expect.stringMatching(/was opened again/)])
    expect(found.closed).toEqual([true, 4])
    expect((found.errors as string[]).at(-1)).toMatch(/broke down several times/)
  })

  test('comes to the front for a second start, and closes its store before it quits', () => {
    // Once for each place, for a new quote, and for the second start.
    expect(found.focused).toBe(PLACES.length + 2)
    expect(found.quits).toBe(1)
    expect(readdirSync(folder).filter((name) => name.endsWith('-wal'))).toEqual([])
  })

  test('opens where it was left, unless that screen is gone', () => {
    const left = { x: 40, y: 50, width: 1000, height: 700, maximized: true }
    const glance = { glance: 'yes' }
    expect(drive(folder, glance).opened).toEqual(left)
    const screens = JSON.stringify([{ x: 0, y: 0, width: 950, height: 620 }])
    expect(drive(folder, { ...glance, screens }).opened).toEqual({
      ...left,
      x: 0,
      y: 0,
      width: 950,
      height: 620,
    })
    writeFileSync(join(folder, 'window.json'), '{"bounds":{"x":"left"')
    expect(drive(folder, glance).opened).toEqual({ width: 1280, height: 800, maximized: false })
  })

  test('says so when another window or program has the workroom open, and leaves it alone', () => {
    const store = newStore()
    const folder = dirname(store.path)
    expect(drive(folder).errors).toEqual([
      expect.stringMatching(/^The workroom cannot be opened: Another window or program has the store/),
    ])
    expect(store.db.$client.open).toBe(true)
    expect(readdirSync(folder)).not.toContain('window.json')
  })

  test('shows a damaged workroom for the page to tell of, and leaves its file as it was', () => {
    const folder = scratch()
    const damaged = 'not a store '.repeat(500)
    writeFileSync(join(folder, 'workroom.ellwand'), damaged)
    const { damage } = drive(folder, { glance: 'yes' })
    expect(damage).toMatchObject({ ok: true, result: { damaged: { missing: false } } })
    expect(readFileSync(join(folder, 'workroom.ellwand'), 'utf8')).toBe(damaged)
  })
})

describe('where the window comes from', () => {
  test('is an installed binary, or one put in its place, and nothing else', () => {
    const modules = scratch()
    expect(binaryIn(modules, {})).toBeUndefined()
    mkdirSync(join(modules, 'electron', 'dist'), { recursive: true })
    writeFileSync(join(modules, 'electron', 'path.txt'), 'electron')
    expect(binaryIn(modules, {})).toBeUndefined()
    const binary = join(modules, 'electron', 'dist', 'electron')
    writeFileSync(binary, '')
    chmodSync(binary, 0o755)
    expect(binaryIn(modules, {})).toBe(binary)
    expect(binaryIn(modules, { ELECTRON_OVERRIDE_DIST_PATH: scratch() })).toBeUndefined()
  })

  test('needs a display on Linux only', () => {
    expect(hasDisplay({}, 'linux')).toBe(false)
    expect(hasDisplay({ DISPLAY: ':0' }, 'linux')).toBe(true)
    expect(hasDisplay({ WAYLAND_DISPLAY: 'w' }, 'linux')).toBe(true)
    expect(hasDisplay({}, 'darwin')).toBe(true)
  })

  test('keeps a maker’s files where her system keeps such files', () => {
    const folder = join(scratch(), 'data')
    expect(dataFolder({ XDG_DATA_HOME: folder }, 'linux')).toBe(join(folder, 'ellwand'))
    expect(dataFolder({ APPDATA: folder }, 'win32')).toBe(join(folder, 'Ellwand'))
    expect(dataFolder({ ELLWAND_FOLDER: folder }, 'darwin')).toBe(folder)
  })
})
