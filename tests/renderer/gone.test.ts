import { describe, expect, test } from 'vitest'
import { serveLoopback } from '../../electron/loopback.ts'
import { Refused, Workroom } from '../../renderer/bridge/ask.ts'
import type { Bridge } from '../../renderer/bridge/bridge.ts'
import { Unreached } from '../../renderer/bridge/reach.ts'
import { hasBrowser, openPlanner, screenFolder, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults, tooWide } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'

const NOT_RUNNING = /^The planner is not running any more\. Start it again; what you kept is safe\./

/** A far end that can be taken away, with a job that never ends by itself. */
function fading() {
  const far = { how: undefined as Unreached['how'] | undefined, ended: () => {}, listened: 0 }
  const reached = async () => {
    if (far.how !== undefined) throw new Unreached(far.how)
    return { ok: true as const, result: { job: 'j' } }
  }
  const bridge: Bridge = {
    ...{ ask: reached, cancel: reached, enter: reached, paper: reached },
    listen: (_, ended = () => {}) => {
      far.ended = ended
      far.listened++
    },
  }
  const workroom = new Workroom(bridge)
  workroom.sayUnreached = (how) => `it is ${how}`
  return { far, workroom }
}

test('what is asked while nobody answers is refused in a sentence, and what was being done is not waited for', async () => {
  const { far, workroom } = fading()
  const searching = workroom.ask('backup.make', {}).catch((error: unknown) => error)
  await expect.poll(() => workroom.running().length).toBe(1)
  far.how = 'away'
  await expect(workroom.ask('clients.list', {})).rejects.toThrow('it is away')
  expect(await searching).toEqual(new Refused({ code: 'shell.gone.away', message: 'it is away' }))
  await expect(workroom.bridge.enter('own')).rejects.toThrow('it is away')
  expect(workroom.reach.reached()).toBe('away')
})

test('the end of the news tells it before anything is asked, and they are listened to again afterwards', async () => {
  const { far, workroom } = fading()
  far.how = 'away'
  far.ended()
  await expect.poll(() => workroom.reach.reached()).toBe('away')
  expect(await workroom.reach.tryAgain()).toBe(false)
  expect(far.listened).toBe(1)
  far.how = undefined
  expect(await workroom.reach.tryAgain()).toBe(true)
  expect(workroom.reach.reached()).toBe('here')
  expect(far.listened).toBe(2)
})

describe.runIf(hasBrowser)(`a planner that stops${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('says so wherever she is, keeps what is typed on the page, and goes on when it answers again', async () => {
    const planner = await openPlanner(browser(), scratch(), { viewport: { width: 900, height: 800 } })
    const { page } = planner
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.locator('.bill').waitFor()
    // The code of every room is there before the planner stops: it comes in turn, that of the Workroom last.
    await page.waitForFunction(() =>
      performance.getEntriesByType('resource').some(({ name }) => name.includes('workroom-settings')),
    )
    await page.keyboard.press('Control+3')
    await page.getByLabel('New client').fill('Maud')
    await page.context().setOffline(true)
    await page.getByRole('button', { name: 'Enter in the book' }).click()
    const said = page.locator('.gone')
    await said.getByText(NOT_RUNNING).waitFor()
    expect(await page.getByText('Failed to fetch').count()).toBe(0)
    expect(await axeFaults(page)).toEqual([])
    expect(await tooWide(page)).toBeLessThanOrEqual(0)
    await page.context().setOffline(false)
    await said.waitFor({ state: 'detached' })
    expect(await page.getByLabel('New client').inputValue()).toBe('Maud')
    await page.getByRole('button', { name: 'Enter in the book' }).click()
    await page.getByRole('heading', { name: 'First measures' }).waitFor()
    await planner.close()
  }, 60_000)

  test('stops before the code of a room has come: it is there once the planner is', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.locator('.bill').waitFor()
    const code = /assets\/commissions-/
    await page.route(code, (route) => route.abort())
    await page.reload()
    await page.locator('.bill').waitFor()
    await page.context().setOffline(true)
    await page.keyboard.press('Control+5')
    await page.getByText(NOT_RUNNING).waitFor()
    await page.unroute(code)
    await page.context().setOffline(false)
    await page.getByRole('heading', { name: 'Commissions', level: 1 }).waitFor()
    await planner.close()
  }, 60_000)

  test('is known before anything is asked, and one started in its place does not pass for it', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page, server, store } = planner
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.locator('.desk-results[aria-busy="false"] .bill').waitFor()
    const { port } = server
    await server.close()
    await page.getByText(NOT_RUNNING).waitFor()
    const another = await serveLoopback(store, screenFolder, port)
    await page.getByRole('button', { name: 'Try again' }).click()
    await page.getByText(/^The planner was started anew, and this page is not known to it\./).waitFor()
    await another.close()
    await page.context().close()
    await store.close()
  }, 60_000)
})

test.skipIf(hasBrowser)('there is no Chromium here, so a planner that stops was not tried', () => {})
