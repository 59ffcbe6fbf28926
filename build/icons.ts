import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { launchChromium } from './chromium.ts'
import { icnsOf, icoOf } from './icon-files.ts'

/**
 * `npm run icons`: the pictures that systems show for the planner, made from `build/icon.svg`, into `build/icon/`,
 * and the mark of the page. Made once and kept with the sources, so that packaging needs no browser.
 */
const SIZES = [16, 24, 32, 48, 64, 128, 256, 512, 1024]

const folder = resolve(import.meta.dirname, 'icon')
const source = resolve(import.meta.dirname, 'icon.svg')
const drawing = readFileSync(source, 'utf8')
const browser = await launchChromium()
const pictures = new Map<number, Buffer>()
try {
  const page = await browser.newPage()
  for (const size of SIZES) {
    await page.setViewportSize({ width: size, height: size })
    await page.setContent(
      `<style>body { margin: 0 } svg { display: block; width: ${size}px; height: ${size}px }</style>${drawing}`,
    )
    pictures.set(size, await page.screenshot({ omitBackground: true }))
  }
} finally {
  await browser.close()
}
mkdirSync(folder, { recursive: true })
for (const [size, png] of pictures) writeFileSync(join(folder, `${size}x${size}.png`), png)
writeFileSync(join(folder, 'icon.ico'), icoOf(pictures))
writeFileSync(join(folder, 'icon.icns'), icnsOf(pictures))
copyFileSync(source, resolve(import.meta.dirname, '../renderer/public/mark.svg'))
