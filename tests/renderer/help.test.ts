import { describe, expect, test } from 'vitest'
import { CONSTRUCTIONS } from '../../core/draft/constructions.ts'
import { pieced } from '../../core/draft/piecing.ts'
import { drawExplained, EXPLAINED_WORDS } from '../../core/draw/explained.ts'
import { svgOf } from '../../core/draw/svg.ts'
import { drawTape } from '../../core/draw/tape.ts'
import { pathBox } from '../../core/geometry/segment.ts'
import { MEASURE_IDS } from '../../core/measure/vocabulary.ts'
import { english } from '../../core/words/catalogue/english.ts'
import { wordOfChoice, wordOfStep } from '../../renderer/help/topics.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'
import { openUncut } from '../support/uncut.ts'

/** Cloth so narrow that pieces of many garments are joined, mm. */
const NARROW = 800

const said = english as Record<string, string>

describe('help', () => {
  test('has two sentences and a drawing of our own for every measure', () => {
    for (const id of MEASURE_IDS) {
      expect(said[`measure.how.${id}`]).toMatch(/\.$/)
      expect(said[`help.measure.${id}`]).toMatch(/^[A-Z].*\.$/)
      const { items } = drawTape(id, 'label', 0.036)
      expect(items.some((item) => item.kind === 'strokes' && item.line === 'tape')).toBe(true)
    }
  })

  test.each(EXPLAINED_WORDS)(
    'draws the %s within its frame, what it names in the heavy line, and says it twice',
    (word) => {
      const drawing = drawExplained(word, 'label')
      const { box, items } = drawing
      expect(items.some((item) => item.kind === 'strokes' && item.line === 'tape')).toBe(true)
      for (const item of items) {
        if (item.kind !== 'strokes') continue
        for (const path of item.paths) {
          const own = pathBox(path)
          expect(own.x).toBeGreaterThan(box.x)
          expect(own.y).toBeGreaterThan(box.y)
          expect(own.x + own.width).toBeLessThan(box.x + box.width)
          expect(own.y + own.height).toBeLessThan(box.y + box.height)
        }
      }
      expect(svgOf(drawing)).toContain('role="img"')
      for (const code of [`help.${word}.what`, `help.${word}.why`]) expect(said[code]).toMatch(/\.$/)
    },
  )

  test('the choices and steps it stands beside are those of real garments', () => {
    const choices = new Set(CONSTRUCTIONS.flatMap(({ choices: of }) => Object.keys(of)))
    const steps = new Set(
      CONSTRUCTIONS.flatMap((one) => {
        const narrow = pieced(one.draft(bodyOf(WOMAN), {}, 'cm'), () => NARROW)
        return narrow.steps.map(({ id }) => id)
      }),
    )
    expect([...choices].filter((id) => wordOfChoice(id) !== undefined).length).toBeGreaterThan(25)
    expect([...steps].filter((id) => wordOfStep(id) !== undefined).length).toBeGreaterThan(15)
    expect(wordOfChoice('constructor')).toBeUndefined()
    // A word that nothing leads to would never be read.
    const shown = new Set([...[...choices].map(wordOfChoice), ...[...steps].map(wordOfStep)])
    const elsewhere = ['shrinkage', 'tucks', 'inlay']
    expect(EXPLAINED_WORDS.filter((word) => !shown.has(word) && !elsewhere.includes(word))).toEqual([])
  })
})

describe.runIf(hasBrowser)(`help on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test.each(['light', 'dark'] as const)(
    'opens by key beside a choice, is read, and closes with Escape (%s)',
    async (colorScheme) => {
      const planner = await openPlanner(browser(), scratch(), { colorScheme })
      const { page } = planner
      await openUncut(planner)
      await page.locator('.bill').waitFor()
      await page.getByText(/more choices$/).click()
      const mark = page.getByRole('button', { name: 'What is this: Gusset' })
      await mark.focus()
      await page.keyboard.press('Enter')
      const dialog = page.getByRole('dialog', { name: 'Gusset' })
      await dialog.getByText('Laid flat it adds its diagonal').waitFor()
      await dialog.getByRole('img', { name: /^A scheme: A square let in/ }).waitFor()
      expect(await axeFaults(page)).toEqual([])
      await page.keyboard.press('Escape')
      await dialog.waitFor({ state: 'detached' })
      expect(await mark.evaluate((one) => one === document.activeElement)).toBe(true)
      expect(planner.errors).toEqual([])
      await planner.close()
    },
  )

  test('stands beside each measure of a client, and beside how much a cloth shrinks', async () => {
    const planner = await openPlanner(browser(), scratch(), { viewport: { width: 900, height: 800 } })
    const { page } = planner
    await openUncut(planner)
    await page.getByRole('link', { name: 'Clients', exact: true }).click()
    await page.getByRole('link', { name: /Ása Holt/ }).click()
    await page.getByRole('button', { name: 'What is this: bust girth' }).click()
    const measure = page.getByRole('dialog', { name: 'bust girth' })
    await measure.getByText('named as in ISO 8559-1:2017').waitFor()
    await measure.getByRole('button', { name: 'Close' }).click()
    await measure.waitFor({ state: 'detached' })
    await page.getByRole('link', { name: 'Cloth', exact: true }).click()
    await page.getByRole('button', { name: 'What is this: Shrinkage in the wash' }).first().click()
    await page.getByRole('dialog', { name: 'Shrinkage in the wash' }).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
