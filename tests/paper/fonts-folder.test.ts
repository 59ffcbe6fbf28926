import { copyFileSync, mkdtempSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { afterAll, expect, it, vi } from 'vitest'

const folder = mkdtempSync(join(tmpdir(), 'fonts-'))
afterAll(() => {
  vi.resetModules()
  rmSync(folder, { recursive: true, force: true })
})

it('fonts are taken from the folder that a packaged planner brings along, and measure the same', async () => {
  // Fonts of its own: others go on measuring with those of the packages.
  vi.resetModules()
  const { fontFiles, takeFontsFrom, textWidth } = await import('../../core/paper/fonts.ts')
  const before = textWidth('Þórunn', 'serif', 12)
  takeFontsFrom(folder)
  expect(() => textWidth('Þórunn', 'serif', 12)).toThrow('ENOENT')
  for (const file of fontFiles())
    copyFileSync(createRequire(import.meta.url).resolve(file), join(folder, basename(file)))
  expect(textWidth('Þórunn', 'serif', 12)).toBe(before)
})
