import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { type Browser, chromium, type Page } from 'playwright-core'
import { serveLoopback } from '../../electron/loopback.ts'
import { STORE_FILES, startStore } from '../../electron/store-host.ts'
import { buildScreen, buildShell } from '../bundles.ts'
import { yearsOfWork } from './scale.ts'
import { summedUp, type Timing } from './timing.ts'

const CHROMIUM = process.env.ELLWAND_CHROMIUM ?? '/usr/bin/chromium'
const STARTS = 5
/** After so many changes of screen the memory is first looked at, and after so many again. */
const [SETTLED, CHANGES] = [200, 1000]

/**
 * From the start of the store's thread to a first screen that can be used, on a store of many years in a browser that is
 * open already; and what a thousand changes of screen leave behind in the page. Nothing where there is no Chromium.
 */
export async function startTimings(): Promise<Timing[]> {
  if (!existsSync(CHROMIUM)) return []
  await buildScreen()
  await buildShell()
  const folder = mkdtempSync(join(tmpdir(), 'ellwand-start-'))
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox'] })
  try {
    await yearsOfWork(join(folder, STORE_FILES.own))
    const starts: number[] = []
    for (let i = 0; i < STARTS; i++)
      starts.push(await opened(browser, folder, async (_, started) => performance.now() - started))
    const [before, after] = await opened(browser, folder, memoryOver)
    // Beside the timings, which may be asked for as JSON.
    console.error(
      `page memory: ${megabytes(before)} MB after ${SETTLED} changes of screen, ${megabytes(after)} MB after ${CHANGES}`,
    )
    return [summedUp('start with 5000 commissions: thread → screen that can be used', starts)]
  } finally {
    await browser.close()
    rmSync(folder, { recursive: true, force: true })
  }
}

const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(1)

/** Opens the planner, on the quote desk; `started` is when its store's thread was begun. */
async function opened<T>(
  browser: Browser,
  folder: string,
  use: (page: Page, started: number) => Promise<T>,
): Promise<T> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } })
  const page = await context.newPage()
  const started = performance.now()
  const store = startStore(folder, new URL('../../dist/electron/store-thread.js', import.meta.url))
  const entered = await store.enter('own')
  if (!entered.ok) throw new Error(entered.error.message)
  const server = await serveLoopback(store, resolve(import.meta.dirname, '../../dist/renderer'))
  try {
    await page.goto(server.address)
    await page.locator('main select').first().waitFor()
    return await use(page, started)
  } finally {
    await context.close()
    await server.close()
    await store.close()
  }
}

const ROUND = ['today', 'desk', 'clients', 'cloths', 'quotes', 'commissions', 'commissions/plan', 'workroom']

/** The page's memory after all that can be freed is, bytes, early and late in a long walk through the rooms. */
async function memoryOver(page: Page): Promise<[number, number]> {
  const session = await page.context().newCDPSession(page)
  const held = async () => {
    await session.send('HeapProfiler.collectGarbage')
    const { usedSize } = await session.send('Runtime.getHeapUsage')
    return usedSize
  }
  let before = 0
  for (let i = 1; i <= CHANGES; i++) {
    await page.evaluate(
      (room) =>
        new Promise<void>((done) => {
          location.hash = `#/${room}`
          requestAnimationFrame(() => setTimeout(done, 20))
        }),
      ROUND[i % ROUND.length],
    )
    if (i === SETTLED) before = await held()
  }
  return [before, await held()]
}
