import { describe, expect, test } from 'vitest'
import { quoteForNew, quoteForReturning } from '../../build/bench/first-quotes.ts'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'

describe.runIf(hasBrowser)(`a quote for a linen undertunic${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('takes a practised hand a minute and a half at most, and five with a new client to be measured', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page, store } = planner
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    // Typed without capitals and marks, by the beginning of any of her names.
    const returning = await quoteForReturning(page, 'vale')
    expect(returning.heading).toContain('Þórunn Vale')
    expect(returning.seconds).toBeLessThanOrEqual(90)
    expect(returning.interactions).toBeLessThanOrEqual(25)
    const fresh = await quoteForNew(page, 'Maud Orchard')
    expect(fresh.heading).toContain('Maud Orchard')
    expect(fresh.seconds).toBeLessThanOrEqual(300)
    // Both are in the book, as they were asked for.
    type Quotes = { quotes: { id: string; number: string }[] }
    const listed = (await store.ask('quotes.list', {})) as { ok: true; result: Quotes }
    for (const { heading } of [returning, fresh]) {
      const { id } = listed.result.quotes.find(({ number }) => heading.includes(number))!
      const kept = JSON.stringify(await store.ask('quote.get', { id }))
      const parts = ['goredUndertunic', '"gores":6', '"hemLevel":"ankle"', 'sew.finishPlan.allByHand']
      expect(parts.filter((part) => !kept.includes(part))).toEqual([])
    }
    expect(planner.errors).toEqual([])
    await planner.close()
  }, 120_000)
})

test.skipIf(hasBrowser)('there is no Chromium here, so no quote was timed', () => {})
