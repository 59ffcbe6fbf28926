import { spawn } from 'node:child_process'
import { join, resolve } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { buildScreen, buildShell } from '../bundles.ts'
import { hasChromium, launchChromium } from '../chromium.ts'
import { type Made, withYears, type Years } from './scale.ts'
import { runsOf, summedUp, type Timing } from './timing.ts'

const STARTS = runsOf(8)
const root = resolve(import.meta.dirname, '../..')

/**
 * From the start of the planner's process until the quote desk in the browser shows a price, with a store of many years.
 * Process, store and page are new each time, and so is the browser's profile; the browser itself runs already, and the
 * system may still have files at hand. Nothing where there is no Chromium.
 */
export async function startTimings({ folder }: Years): Promise<Timing[]> {
  return inBrowser(async (browser) => {
    const [serving, usable, priced]: [number[], number[], number[]] = [[], [], []]
    const frames = await whileOpen(folder, async (address) => scrolled(await pageOf(browser, address)))
    for (let i = 0; i < STARTS; i++) {
      const started = performance.now()
      await whileOpen(folder, async (address) => {
        serving.push(performance.now() - started)
        const page = await opened(browser, address)
        usable.push(performance.now() - started)
        await page.locator(PRICED).waitFor()
        priced.push(performance.now() - started)
        await page.context().close()
      })
    }
    return [
      summedUp('5000 commissions: start of the process → it serves', serving),
      summedUp('5000 commissions: start of the process → a desk one can work at', usable),
      summedUp('5000 commissions: start of the process → a price on it', priced),
      summedUp('5000 commissions: frame to frame, scrolling through all of them', frames),
    ]
  })
}

/** Garments of many years that must have come into sight, and a way of so many px that is longer than all of them. */
const SEEN = runsOf(19_000)
const WAY = 48 * SEEN

/** The times between frames while all work of many years is scrolled past, three quarters of a window at a time. */
async function scrolled(page: Page): Promise<number[]> {
  await page.evaluate(() => {
    location.hash = '#/commissions'
  })
  await page.locator('.bygone').waitFor()
  const { frames, rows } = await page.evaluate(async (way) => {
    const frames: number[] = []
    // At the end for a second, nothing more comes.
    for (let [then, at, still] = [performance.now(), -1, 0]; still < 60 && scrollY < way; ) {
      scrollBy(0, 600)
      const now = await new Promise<number>((next) => requestAnimationFrame(next))
      frames.push(now - then)
      then = now
      still = scrollY === at ? still + 1 : 0
      at = scrollY
    }
    const last = [...document.querySelectorAll('.bygone tr[aria-rowindex]')].at(-1)
    return { frames, rows: Number(last?.getAttribute('aria-rowindex')) }
  }, WAY)
  if (!(rows >= SEEN)) throw new Error(`only ${rows} garments could be scrolled to`)
  return frames
}

/** What a page holds after so many changes of the screen; `heap` in bytes. */
export type Held = { changes: number; heap: number; nodes: number; listeners: number }

/**
 * What a page holds after so many changes of the screen, once what it let go of is collected: heap of its scripts in
 * bytes, elements, listeners.
 */
export async function heldAfter(changes: readonly number[]): Promise<Held[]> {
  return withYears(({ folder, made }) =>
    inBrowser((browser) =>
      whileOpen(folder, async (address) => {
        const page = await pageOf(browser, address)
        const places = placesOf(made)
        const held: Held[] = []
        for (let done = 0; done < Math.max(...changes); ) {
          await goTo(page, places[done % places.length]!)
          done++
          if (changes.includes(done)) held.push({ changes: done, ...(await holds(page)) })
        }
        return held
      }),
    ),
  )
}

const PRICED = '.desk-results[aria-busy="false"] .bill'

/** A page of a profile of its own, with the quote desk on it for somebody who is measured, all of its choices there. */
async function opened(browser: Browser, address: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } })
  const page = await context.newPage()
  await page.goto(address)
  await page.getByLabel('Hem level', { exact: true }).waitFor()
  return page
}

/** The same, when it shows a price. */
async function pageOf(browser: Browser, address: string): Promise<Page> {
  const page = await opened(browser, address)
  await page.locator(PRICED).waitFor()
  return page
}

type Screen = { at: string; shows: string }

/** Every room, and one thing in each that has things. */
const placesOf = ({ clients, quotes, commission }: Made): Screen[] => [
  { at: 'today', shows: 'h1' },
  { at: 'clients', shows: 'a.entry' },
  { at: `clients/${clients[0]}`, shows: '.sheet h2' },
  { at: 'cloths', shows: 'h2' },
  { at: 'cloths/shopping', shows: 'h1' },
  { at: 'quotes', shows: 'a.entry' },
  { at: `quotes/${quotes[0]}`, shows: '.sheet h2' },
  { at: 'commissions', shows: 'tbody a' },
  { at: `commissions/${commission}`, shows: '.sheet h2' },
  { at: 'commissions/accounts', shows: 'h1' },
  { at: 'commissions/plan', shows: 'h1' },
  { at: 'commissions/books', shows: 'h1' },
  { at: 'workroom', shows: 'form' },
  { at: 'workroom/times', shows: 'h1' },
  { at: 'own', shows: 'h1' },
  { at: 'desk', shows: '.desk-results[aria-busy="false"] .bill' },
]

/** Goes to a screen and waits until it shows what it is there for, and what was there before is gone. */
async function goTo(page: Page, { at, shows }: Screen): Promise<void> {
  await page.evaluate((hash) => {
    for (const left of document.querySelectorAll('main > *')) left.classList.add('left')
    location.hash = hash
  }, `#/${at}`)
  await page.locator('main > :not(.left)').first().waitFor()
  await page.locator(`main > :not(.left) ${shows}, main > ${shows}:not(.left)`).first().waitFor()
}

async function holds(page: Page): Promise<Omit<Held, 'changes'>> {
  const devtools = await page.context().newCDPSession(page)
  await devtools.send('Performance.enable')
  // Twice, for what the first time only lets go of.
  for (let i = 0; i < 2; i++) await devtools.send('HeapProfiler.collectGarbage')
  const { metrics } = await devtools.send('Performance.getMetrics')
  const of = (name: string) => metrics.find((metric) => metric.name === name)!.value
  const held = { heap: of('JSHeapUsedSize'), nodes: of('Nodes'), listeners: of('JSEventListeners') }
  await devtools.detach()
  return held
}

/** The built screen and shell, and a browser, for as long as some work takes; nothing where there is no Chromium. */
async function inBrowser<T>(work: (browser: Browser) => Promise<T[]>): Promise<T[]> {
  if (!hasChromium) return []
  await buildScreen()
  await buildShell()
  const browser = await launchChromium()
  try {
    return await work(browser)
  } finally {
    await browser.close()
  }
}

/** The planner as `npm start -- --browser` starts it, for as long as some work takes. */
async function whileOpen<T>(folder: string, work: (address: string) => Promise<T>): Promise<T> {
  const child = spawn(process.execPath, [join(root, 'electron/start.ts'), '--browser'], {
    env: { ...process.env, ELLWAND_FOLDER: folder },
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const ended = new Promise((done) => child.once('exit', done))
  try {
    const address = await new Promise<string>((done, failed) => {
      let said = ''
      child.stdout.on('data', (part) => {
        said += part
        const [, found] = / (http:\S+) /.exec(said) ?? []
        if (found !== undefined) done(found)
      })
      child.once('exit', () => failed(new Error('the planner did not start')))
    })
    return await work(address)
  } finally {
    child.kill('SIGTERM')
    await ended
  }
}
