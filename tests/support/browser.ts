import { cpSync } from 'node:fs'
import { join, resolve } from 'node:path'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll } from 'vitest'
import { hasChromium, launchChromium } from '../../build/chromium.ts'
import { type Loopback, serveLoopback } from '../../electron/loopback.ts'
import { STORE_FILES, type StoreHost, startStore } from '../../electron/store-host.ts'
import { threadCode } from '../../electron/thread-code.ts'

/** Whether the screens can be tried here. Where the check demands it, a missing browser is an error. */
export const hasBrowser = hasChromium
if (!hasBrowser && process.env.ELLWAND_BROWSER === 'required') {
  throw new Error('Chromium is needed for the browser tests, and none was found.')
}
export const withoutBrowser = hasBrowser ? '' : ' (skipped: no Chromium here)'

const root = resolve(import.meta.dirname, '../..')
export const screenFolder = resolve(root, 'dist/renderer')

/** Has a browser open for a file of tests. */
export function usingBrowser(): () => Browser {
  let browser: Browser
  beforeAll(async () => {
    browser = await launchChromium()
  })
  afterAll(async () => {
    await browser?.close()
  })
  return () => browser
}

export type Planner = {
  page: Page
  server: Loopback
  store: StoreHost
  errors: string[]
  close(): Promise<void>
}

type Opened = BrowserContextOptions & {
  /** The store's thread, where a test has one of its own. */
  thread?: URL
  /** The instant at which the planner is opened, for store and page, if that is not now. */
  at?: string
}

/** The book of the sample is made once for all tests that open it today. */
const SAMPLE = STORE_FILES.sample
const THREAD = threadCode('store-thread')
const DATED = new URL('./dated-thread.ts', import.meta.url)

/** The planner as `npm start` serves it, with a page of it open. */
export async function openPlanner(
  browser: Browser,
  folder: string,
  { at, thread = at === undefined ? THREAD : DATED, ...options }: Opened = {},
): Promise<Planner> {
  if (at !== undefined) process.env.TEST_NOW = at
  else cpSync(join(process.env.TEST_SAMPLE!, SAMPLE), join(folder, SAMPLE), { force: false })
  const store = startStore(folder, thread)
  const entered = await store.enter('own')
  if (!entered.ok) throw new Error(entered.error.message)
  const server = await serveLoopback(store, screenFolder)
  const context = await browser.newContext({
    ...{ viewport: { width: 1280, height: 800 }, locale: 'en-GB' },
    ...options,
  })
  const page = await context.newPage()
  if (at !== undefined) await page.clock.setFixedTime(at)
  const errors: string[] = []
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()))
  page.on('pageerror', (error) => errors.push(error.message))
  await page.goto(server.address)
  const close = async () => {
    await context.close()
    await server.close()
    await store.close()
  }
  return { page, server, store, errors, close }
}

type Chosen = string | { name: string; mimeType: string; buffer: Buffer }

/** Chooses a file by a button of the page; by key, since what still comes onto a page may move it from under the pointer. */
export async function chooseFile(page: Page, button: string, file: Chosen): Promise<void> {
  const chosen = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: button }).press('Enter')
  await (await chosen).setFiles(file)
}
