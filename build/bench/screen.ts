import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import type { Page } from 'playwright-core'
import { serveLoopback } from '../../electron/loopback.ts'
import { startStore } from '../../electron/store-host.ts'
import { threadCode } from '../../electron/thread-code.ts'
import { buildScreen } from '../bundles.ts'
import { hasChromium, launchChromium } from '../chromium.ts'
import { quoteForNew, quoteForReturning } from './first-quotes.ts'
import { runsOf, summedUp, type Timing } from './timing.ts'

const TRIALS = runsOf(80)
/** A search for a shorter lay is watched for this long, s. */
const WATCHED = 8
/** Keys pressed while it goes on. */
const KEYS = 60

/**
 * From keys that are really pressed while a lay is looked for to the frame that shows them, by the browser's own event
 * timing (rounded to 8 ms, what is sooner than 16 counts as 16), and how far the page shifts by itself meanwhile (web.dev's
 * measure, without what follows an input at once).
 */
async function typedWhileLooking(page: Page): Promise<{ inputs: number[]; shift: number }> {
  await page.evaluate(() => {
    const seen = { inputs: [] as number[], shift: 0 }
    Object.assign(window, { seen })
    new PerformanceObserver((list) => {
      for (const { name, duration } of list.getEntries()) if (name === 'keydown') seen.inputs.push(duration)
    }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit)
    type Shift = PerformanceEntry & { value: number; hadRecentInput: boolean }
    new PerformanceObserver((list) => {
      for (const one of list.getEntries() as Shift[]) if (!one.hadRecentInput) seen.shift += one.value
    }).observe({ type: 'layout-shift' })
  })
  const field = page.getByLabel('Your price before tax')
  await field.click()
  for (let i = 0; i < KEYS; i++) {
    await page.keyboard.press(i % 4 === 3 ? 'Backspace' : String(1 + (i % 3)))
    await page.waitForTimeout(60)
  }
  const { inputs, shift } = await page.evaluate(
    () => (window as unknown as { seen: { inputs: number[]; shift: number } }).seen,
  )
  // What took no longer than a frame is not told of.
  return {
    inputs: [...inputs, ...Array.from({ length: Math.max(0, KEYS - inputs.length) }, () => 16)],
    shift,
  }
}

/**
 * From a choice changed at the quote desk to the frame in which the new figures and drawings are shown, and
 * from a key to the frame in which its letter is, in Chromium; and while a shorter lay is looked for, the time
 * between frames and the tasks that hold them up. Nothing where there is no Chromium.
 */
export async function screenTimings(): Promise<Timing[]> {
  if (!hasChromium) return []
  await buildScreen()
  const scratch = mkdtempSync(join(tmpdir(), 'ellwand-bench-'))
  const store = startStore(scratch, threadCode('store-thread'))
  await store.enter('sample')
  const server = await serveLoopback(store, resolve(import.meta.dirname, '../../dist/renderer'))
  const browser = await launchChromium()
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
    await page.goto(server.address)
    await page.locator('.desk-results[aria-busy="false"] .bill').waitFor()
    const measured = await page.evaluate(async (trials) => {
      const field = (label: string) => {
        const found = [...document.querySelectorAll('label')].find(({ textContent }) => textContent === label)
        return document.getElementById(found!.htmlFor) as HTMLInputElement
      }
      const results = () => document.querySelector('.desk-results')!
      const shown = () =>
        `${results().querySelector('.bill')!.textContent}${results().querySelector('.drawn-pieces')!.innerHTML.length}`
      const painted = () =>
        new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done())))
      const enter = (input: HTMLInputElement | HTMLSelectElement, value: string) => {
        const own =
          input instanceof HTMLSelectElement ? HTMLSelectElement.prototype : HTMLInputElement.prototype
        Object.getOwnPropertyDescriptor(own, 'value')!.set!.call(input, value)
        input.dispatchEvent(
          new Event(input instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }),
        )
      }
      const change: number[] = []
      const key: number[] = []
      for (let i = 0; i < trials; i++) {
        const before = shown()
        const started = performance.now()
        if (i % 4 === 3) enter(field('Gores'), i % 8 === 3 ? '6' : '4')
        else
          enter(
            field(i % 2 === 0 ? 'Length' : 'Ease at the chest'),
            String(i % 2 === 0 ? 100 + (i % 17) : 8 + (i % 11)),
          )
        await new Promise<void>((done) => requestAnimationFrame(() => done()))
        key.push(performance.now() - started)
        await new Promise<void>((done) => {
          const watch = new MutationObserver(() => {
            if (results().getAttribute('aria-busy') === 'true' || shown() === before) return
            watch.disconnect()
            done()
          })
          watch.observe(results(), { subtree: true, childList: true, characterData: true, attributes: true })
          if (shown() !== before) done()
        })
        await painted()
        change.push(performance.now() - started)
      }
      return { change, key }
    }, TRIALS)
    const watched = await page.evaluate(async (seconds) => {
      const tasks: number[] = []
      new PerformanceObserver((list) => {
        for (const { duration } of list.getEntries()) tasks.push(duration)
      }).observe({ type: 'longtask' })
      const button = [...document.querySelectorAll('button')].find(
        ({ textContent }) => textContent === 'Look for a shorter lay',
      )!
      button.click()
      const frames: number[] = []
      const started = performance.now()
      for (let last = started; last - started < seconds * 1000; ) {
        const now = await new Promise<number>((next) => requestAnimationFrame(next))
        frames.push(now - last)
        last = now
      }
      return { tasks, frames: frames.slice(1), running: document.querySelector('progress') !== null }
    }, WATCHED)
    const typed = await typedWhileLooking(page)
    if (!watched.running) throw new Error('the search was over before it was watched')
    const { tasks, frames } = watched
    await page.reload()
    const quotes = [await quoteForReturning(page, 'vale'), await quoteForNew(page, 'Maud Orchard')]
    return [
      summedUp('screen: frame to frame while a lay is looked for', frames),
      summedUp(`screen: ${tasks.length} tasks over 50 ms meanwhile, the longest`, [0, ...tasks]),
      summedUp(
        `screen: input → paint meanwhile; the page shifted by ${typed.shift.toFixed(4)} in all`,
        typed.inputs,
      ),
      summedUp('screen: choice changed → everything new is painted', measured.change.slice(8)),
      summedUp('screen: key → its letter is painted', measured.key.slice(8)),
      ...quotes.map(({ seconds, interactions }, i) =>
        summedUp(
          `a quote, ${i === 0 ? 'returning' : 'new'} client: ${interactions} interactions by the keystroke-level model`,
          [seconds * 1000],
        ),
      ),
    ]
  } finally {
    await browser.close()
    await server.close()
    await store.close()
    rmSync(scratch, { recursive: true, force: true })
  }
}
