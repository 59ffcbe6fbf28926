import axe from 'axe-core'
import type { Browser, Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { openPlanner, type Planner } from './browser.ts'
import { scratch } from './store.ts'

const RULES = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice']

/**
 * What axe-core finds wrong with a page by WCAG 2.2 AA, a line each. No page here has frames, so it runs in the page itself,
 * which takes a sixth of the time of a runner that looks for them.
 * @param within the part of the page that is looked over
 */
export async function axeFaults(page: Page, within = 'html'): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source)
  return page.evaluate(
    async ([root, rules]) => {
      const found = await (window as unknown as { axe: typeof axe }).axe.run(root, {
        ...{ runOnly: [...rules], resultTypes: ['violations'] },
      })
      return found.violations.map(({ id, nodes }) => `${id} at ${nodes[0]!.target}`)
    },
    [within, RULES] as const,
  )
}

/** By how much a page is wider than its window, px; nothing or less when it fits. */
export const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - innerWidth)

/** The innermost thing on a page that reaches past the right edge of its window, with its first words. */
const sticksOut = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const last = [...document.querySelectorAll('body *')]
      .filter((one) => one.getBoundingClientRect().right > innerWidth)
      .at(-1)
    return last === undefined
      ? 'nothing that can be named'
      : `${last.tagName.toLowerCase()} “${last.textContent?.slice(0, 40)}”`
  })

/** Controls on a page that are lower than so many px. */
export const tooLow = (page: Page, controls: string, least: number) =>
  page.evaluate(
    ([selector, lowest]) =>
      [...document.querySelectorAll(selector)]
        .filter((control) => control.getClientRects().length > 0)
        .map((control) => ({
          text: control.textContent ?? '',
          height: control.getBoundingClientRect().height,
        }))
        .filter(({ height }) => height < lowest),
    [controls, least] as const,
  )

/** Windows that a screen is looked at in, px; the narrowest is that of 1280 at 200 %. */
const WIDTHS = [640, 900, 1280, 1920]
const TOUCHED =
  'button, .button, input:not([type="checkbox"]):not([type="radio"]), select, summary, nav a, .tick, .found a'

/** What is wrong with a screen in light and in dark, and in any window: a line each. */
async function faultsOfScreen(page: Page, screen: string): Promise<string[]> {
  const faults: string[] = []
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme })
    faults.push(...(await axeFaults(page)).map((fault) => `${screen}, ${colorScheme}: ${fault}`))
  }
  const usual = page.viewportSize()!
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: usual.height })
    const over = await tooWide(page)
    if (over > 0)
      faults.push(`${screen} is ${over} wider than a window of ${width}: ${await sticksOut(page)}`)
    for (const { text, height } of await tooLow(page, TOUCHED, 43.9))
      faults.push(`${screen}, ${width} wide: “${text}” is ${height} high`)
  }
  await page.setViewportSize(usual)
  return faults
}

/** Walks through some screens once, and looks each over. */
export function screensAreSound(
  browser: () => Browser,
  tour: (planner: Planner, look: (screen: string) => Promise<void>) => Promise<void>,
): void {
  test('are clean by axe-core, WCAG 2.2 AA, in light and dark, and fit any window', async () => {
    const planner = await openPlanner(browser(), scratch(), { reducedMotion: 'reduce' })
    const found: string[] = []
    await tour(planner, async (screen) => {
      found.push(...(await faultsOfScreen(planner.page, screen)))
    })
    expect(found).toEqual([])
    expect(planner.errors).toEqual([])
    await planner.close()
  }, 240_000)
}
