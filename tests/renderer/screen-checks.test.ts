import { describe, expect, test } from 'vitest'
import { hasBrowser, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults, tooLow, tooWide } from '../support/screen-checks.ts'

describe.runIf(hasBrowser)(`what looks the screens over${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('finds a name that is lacking, a colour too pale, what is too wide and what is too low', async () => {
    const page = await browser().newPage({ viewport: { width: 400, height: 400 } })
    await page.setContent(`<html lang="en"><title>Faulty</title><main><h1>Faulty</h1>
      <p style="color: #ccc">hardly to be read</p><button style="height: 20px; width: 500px"></button></main>`)
    const faults = await axeFaults(page)
    expect(faults.map((fault) => fault.split(' at ')[0]).sort()).toEqual(['button-name', 'color-contrast'])
    expect(await axeFaults(page, 'h1')).toEqual([])
    expect(await tooWide(page)).toBeGreaterThan(0)
    expect(await tooLow(page, 'button', 44)).toEqual([{ text: '', height: 20 }])
    await page.close()
  })
})
