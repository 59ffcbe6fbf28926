import { readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { firstLoad } from '../../build/bench/first-load.ts'
import { hasBrowser, openPlanner, screenFolder, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'

const scripts = (names: readonly string[]) => names.filter((name) => /\.(js|css)$/.test(name)).sort()

describe('what is loaded first', () => {
  const load = firstLoad(screenFolder)

  test('is no more than 350 kB gzipped, the fonts of a Latin page included', () => {
    expect(scripts(load.map(({ name }) => name)).length).toBeGreaterThan(2)
    expect(load.filter(({ name }) => name.endsWith('.woff2')).length).toBe(3)
    expect(load.reduce((sum, { gzipped }) => sum + gzipped, 0)).toBeLessThanOrEqual(350_000)
  })

  test('is in no file that takes long to read by itself', () => {
    const assets = join(screenFolder, 'assets')
    for (const name of scripts(readdirSync(assets)))
      expect(statSync(join(assets, name)).size, name).toBeLessThan(500_000)
  })
})

describe.runIf(hasBrowser)(`the rooms behind the first screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('come after it, and only what the first screen needs comes before', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByRole('heading', { name: 'A new workroom' }).waitFor()
    const fetched = () =>
      page.evaluate(() =>
        performance
          .getEntriesByType('resource')
          .filter(({ name }) => /\.(js|css)$/.test(name))
          .sort((a, b) => a.startTime - b.startTime)
          .map(({ name }) => new URL(name).pathname.slice(1)),
      )
    const first = scripts(firstLoad(screenFolder).map(({ name }) => name))
    // Another language is fetched when it is read.
    const here = readdirSync(join(screenFolder, 'assets')).filter((name) => !name.startsWith('german-'))
    const all = scripts(here).map((name) => `assets/${name}`)
    await page.waitForFunction(
      (files) =>
        files ===
        performance.getEntriesByType('resource').filter(({ name }) => /\.(js|css)$/.test(name)).length,
      all.length,
    )
    expect((await fetched()).slice(0, first.length).sort()).toEqual(first)
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('open by their address, before their code came', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.locator('.bill').waitFor()
    let release = () => {}
    const held = new Promise<void>((done) => {
      release = done
    })
    await page.route('**/assets/books-*.js', async (route) => {
      await held
      await route.continue()
    })
    await page.goto(`http://127.0.0.1:${planner.server.port}/#/commissions/books`)
    await page.reload()
    await page.getByRole('navigation').first().waitFor()
    expect(await page.locator('main').textContent()).toBe('')
    release()
    await page.getByRole('heading', { level: 1, name: 'Books' }).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
