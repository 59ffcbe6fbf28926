import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'

/** What axe-core finds wrong with a page by WCAG 2.2 AA, a line each. */
export async function axeFaults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze()
  return violations.map(({ id, nodes }) => `${id} at ${nodes[0]!.target}`)
}

/** By how much a page is wider than its window, px; nothing or less when it fits. */
export const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - innerWidth)

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
