import { copyFileSync, mkdtempSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { fontFiles, takeFontsFrom, textWidth } from '../../core/paper/fonts.ts'

const folder = mkdtempSync(join(tmpdir(), 'fonts-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

it('fonts are taken from the folder that a packaged planner brings along, and measure the same', () => {
  const before = textWidth('Þórunn', 'serif', 12)
  takeFontsFrom(folder)
  expect(() => textWidth('Þórunn', 'serif', 12)).toThrow('ENOENT')
  for (const file of fontFiles())
    copyFileSync(createRequire(import.meta.url).resolve(file), join(folder, basename(file)))
  expect(textWidth('Þórunn', 'serif', 12)).toBe(before)
})
