import { describe, expect, test } from 'vitest'
import { asShaped } from '../../core/paper/bidi.ts'
import { characters } from '../../core/paper/fonts.ts'
import { oneLine } from '../../core/paper/lines.ts'
import { LOOKS } from '../../core/paper/style.ts'
import { phrase } from '../../core/words/phrase.ts'
import { say } from '../../core/words/say.ts'
import { hasBrowser, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { chance } from '../support/chance.ts'

const LEFTWARD = /[\p{Script=Hebrew}\p{Script=Arabic}]/u

/** The characters of a line as they are seen from the left. */
const seen = (text: string): string =>
  oneLine(text, LOOKS.prose)
    .runs.map((run) => (LEFTWARD.test(run.text) ? characters(run.text).reverse().join('') : run.text))
    .join('')

/** Which way a bracket faces is tried apart from where it stands. */
const faceless = (text: string): string => text.replace(/[()]/g, '|')

const WORDS = [
  ...['שרה', 'לוי', 'ליאת', 'ليلى', 'بنت', 'حسن', 'Anna', 'Łucja', 'tunic'],
  ...['12', '3.5', '(2)', '(', ')', '“', '”', '–', '-', ',', '%', '1/2', ':', '£20'],
]

describe('what is written from right to left', () => {
  test('leaves a line that holds none of it as it is', () => {
    expect(seen('gored undertunic (2), 35 tall')).toBe('gored undertunic (2), 35 tall')
  })

  test('stands turned round within a line read from the left, figures the right way', () => {
    expect(seen('for שרה לוי and 2 more')).toBe('for יול הרש and 2 more')
    // By the algorithm a figure after a name belongs to it; a sentence of the catalogue keeps names apart.
    expect(seen('for שרה לוי, 2 of them')).toBe('for 2 ,יול הרש of them')
    expect(seen('for \u2068שרה לוי\u2069, 2 of them')).toBe('for יול הרש, 2 of them')
    const words = phrase('paper.garment.forWhom', { title: '2', wearer: 'שרה לוי' })
    expect(seen(say(words))).toBe('2 for יול הרש')
    expect(seen('for ليلى')).toBe('for ىليل')
  })

  test('turns brackets to face the other way', () => {
    expect(seen('שרה (לוי) שרה')).toBe('הרש (יול) הרש')
    expect(asShaped('(א', 1)).toBe(')א')
    expect(asShaped('(–', 1)).toBe('–)')
    expect(asShaped('(a', 0)).toBe('(a')
  })

  test('is as wide as its runs, each beginning where the one before it ends', () => {
    const { runs, width } = oneLine('for שרה לוי, tunic, ليلى 12', LOOKS.prose)
    let x = 0
    for (const run of runs) {
      expect(run.x).toBeCloseTo(x, 9)
      x += run.width
    }
    expect(x).toBeCloseTo(width, 9)
  })
})

describe.runIf(hasBrowser)(`its order beside Chromium’s${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('is the same for four hundred lines put together by chance', async () => {
    const draw = chance(90)
    const pick = <T>(of: readonly T[]): T => of[Math.floor(draw.uniform() * of.length)]!
    const lines = Array.from({ length: 400 }, () =>
      Array.from({ length: 1 + Math.floor(draw.uniform() * 7) }, () => pick(WORDS)).join(' '),
    )
    const page = await browser().newPage()
    // Each character by the middle of where it is drawn; letters that are joined are told apart by the range all the same.
    const drawn = await page.evaluate((texts) => {
      document.body.innerHTML =
        '<p dir="ltr" style="white-space:pre;font:40px serif;font-variant-ligatures:none"></p>'
      const p = document.querySelector('p')!
      return texts.map((text) => {
        p.textContent = text
        const range = document.createRange()
        const at = [...text].map((_, i, all) => {
          const from = all.slice(0, i).join('').length
          range.setStart(p.firstChild!, from)
          range.setEnd(p.firstChild!, from + all[i]!.length)
          const { left, right } = range.getBoundingClientRect()
          return { one: all[i]!, middle: (left + right) / 2 }
        })
        return at
          .sort((a, b) => a.middle - b.middle)
          .map(({ one }) => one)
          .join('')
      })
    }, lines)
    await page.close()
    expect(lines.map((line) => faceless(seen(line)))).toEqual(drawn.map(faceless))
  })
})
