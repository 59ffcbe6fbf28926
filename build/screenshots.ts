import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { serveLoopback } from '../electron/loopback.ts'
import { startStore } from '../electron/store-host.ts'
import { threadCode } from '../electron/thread-code.ts'
import { buildScreen } from './bundles.ts'
import { launchChromium } from './chromium.ts'

/**
 * `npm run screenshots`: pictures of every screen of the sample workroom into a folder; the README shows some
 * of them. `-- --width 900 --dark --full` for another window, `-- --every` for each of three windows, light and dark,
 * in a folder of its own.
 */
const { values } = parseArgs({
  options: {
    folder: { type: 'string', default: 'build/screenshots' },
    width: { type: 'string', default: '1280' },
    dark: { type: 'boolean', default: false },
    full: { type: 'boolean', default: false },
    every: { type: 'boolean', default: false },
  },
})
type Shot = { folder: string; width: number; dark: boolean }
const shots: Shot[] = values.every
  ? [900, 1280, 1920].flatMap((width) =>
      [false, true].map((dark) => ({
        ...{ folder: resolve(values.folder, `${width}-${dark ? 'dark' : 'light'}`), width, dark },
      })),
    )
  : [{ folder: resolve(values.folder), width: Number(values.width), dark: values.dark }]
const root = resolve(import.meta.dirname, '..')
const scratch = mkdtempSync(join(tmpdir(), 'ellwand-pictures-'))

await buildScreen()
const store = startStore(scratch, threadCode('store-thread'))
const browser = await launchChromium()
try {
  for (const shot of shots) await taken(shot)
} finally {
  await browser.close()
  await store.close()
  rmSync(scratch, { recursive: true, force: true })
}

/** Walks through every place once, from the first start, and takes a picture of each. */
async function taken({ folder, width, dark }: Shot): Promise<void> {
  mkdirSync(folder, { recursive: true })
  await store.enter('own')
  const server = await serveLoopback(store, resolve(root, 'dist/renderer'))
  const page = await browser.newPage({
    viewport: { width, height: 800 },
    colorScheme: dark ? 'dark' : 'light',
  })
  const picture = async (name: string) => {
    await page.evaluate(() => document.fonts.ready)
    await page.screenshot({ path: join(folder, `${name}.png`), fullPage: values.full })
  }
  const room = async (name: string, entry?: string) => {
    await page.getByRole('link', { name, exact: true }).click()
    await page.getByRole('heading', { name, level: 1 }).waitFor()
    await page
      .locator(entry ?? 'main li')
      .first()
      .waitFor()
    await picture(name.toLowerCase())
  }
  await page.goto(server.address)
  await page.getByRole('heading', { name: 'A new workroom' }).waitFor()
  await picture('first-start')
  await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
  await page.locator('.desk-results[aria-busy="false"] .bill').waitFor()
  await page.locator('.bill .old').waitFor({ state: 'detached' })
  await picture('quote-desk')
  await room('Clients', 'a.entry')
  await page.locator('a.entry').last().click()
  await page.locator('.sheet h2').first().waitFor()
  await picture('client')
  await room('Cloth')
  await room('Commissions', '.at-a-glance:not(.bygone) a')
  await page.locator('.at-a-glance:not(.bygone) a').first().click()
  await page.locator('.tick').first().waitFor()
  await picture('commission')
  await room('Quotes', 'a.entry')
  await page.locator('a.entry').first().click()
  await page.locator('.sheet h2').first().waitFor()
  await picture('quote')
  await page.getByRole('link', { name: 'Today', exact: true }).click()
  await page.getByRole('heading', { name: 'What to do next' }).waitFor()
  await picture('today')
  await page.getByText('At the cutting table').first().click()
  await page.getByText(/^Step \d+ of \d+$/).waitFor()
  await picture('cutting-table')
  await page.goBack()
  await page.getByRole('link', { name: 'Workroom', exact: true }).click()
  await page.getByText('On your papers').waitFor()
  await picture('workroom')
  await page.close()
  await server.close()
}
