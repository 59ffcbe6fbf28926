import { readdirSync } from 'node:fs'
import { resolve } from 'node:path'
import { _electron } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { binaryIn, hasDisplay } from '../../electron/electron-binary.ts'
import { lookAtFirstQuote } from '../support/first-quote.ts'
import { scratch } from '../support/store.ts'

const root = resolve(import.meta.dirname, '../..')
const binary = binaryIn(resolve(root, 'node_modules'), process.env)
const missing =
  binary === undefined
    ? ' (skipped: Electron’s binary is not installed here)'
    : hasDisplay(process.env, process.platform)
      ? ''
      : ' (skipped: no screen here to show a window on)'

describe.runIf(missing === '')(`the planner in its real window${missing}`, () => {
  test('opens, shows the first quote of the sample, and closes with its store', async () => {
    const folder = scratch()
    const app = await _electron.launch({
      executablePath: binary!,
      // A folder of its own for Electron too, so that a planner that is open meanwhile is another one.
      args: [resolve(root, 'dist/electron/main.js'), `--user-data-dir=${scratch()}`],
      env: { ...(process.env as Record<string, string>), ELLWAND_FOLDER: folder },
    })
    const page = await app.firstWindow()
    const faults: string[] = []
    page.on('console', (message) => message.type() === 'error' && faults.push(message.text()))
    page.on('pageerror', (error) => faults.push(error.message))
    expect(page.url()).toBe('ellwand://planner/')
    await lookAtFirstQuote(page)
    expect(await page.title()).toBe('Ellwand')
    expect(await app.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows().length)).toBe(1)
    // What walls the page in, tried for real: no window, no other address, nothing of Node.
    const opened = await page.evaluate(() => window.open('https://planner.example/') === null)
    expect(opened).toBe(true)
    expect(await page.evaluate(() => 'require' in globalThis || 'process' in globalThis)).toBe(false)
    await page.evaluate(() => {
      location.href = 'https://planner.example/'
    })
    expect(await page.evaluate(() => location.origin)).toBe('ellwand://planner')
    expect(faults).toEqual([])
    const closed = new Promise<number | null>((done) => app.process().once('exit', (code) => done(code)))
    await app.close()
    expect(await closed).toBe(0)
    expect(readdirSync(folder).filter((name) => name.endsWith('-wal'))).toEqual([])
  })
})
