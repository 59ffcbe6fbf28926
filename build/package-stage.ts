import { copyFileSync, cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { basename, dirname, join, resolve } from 'node:path'
import { fontFiles } from '../core/paper/fonts.ts'
import { buildScreen, buildShell } from './bundles.ts'
import { LICENCES, root, STAGED } from './electron-builder.ts'
import { licencesOf, packagesIn } from './package-licences.ts'

/**
 * Puts together in `dist/package` what goes into the packages: code with its libraries in it, the screen, migrations,
 * fonts, SQLite's library, and the licences of all of it.
 */
export async function stage(): Promise<void> {
  rmSync(STAGED, { recursive: true, force: true })
  mkdirSync(STAGED, { recursive: true })
  const made = [
    await buildScreen(join(STAGED, 'dist/renderer')),
    ...(await buildShell({ outDir: join(STAGED, 'dist/electron'), bundled: true })),
  ]
  // The threads lie outside the archive, where the package's own description, which says the same, is not to be found.
  writeFileSync(join(STAGED, 'dist/electron/package.json'), '{ "type": "module" }\n')
  // Of drizzle-kit's notes a store reads the journal only.
  const shipped = (path: string) => !path.endsWith('_snapshot.json')
  cpSync(join(root, 'migrations'), join(STAGED, 'migrations'), { recursive: true, filter: shipped })
  bringFonts()
  bringColours()
  const { name, version, description, license } = JSON.parse(
    readFileSync(join(root, 'package.json'), 'utf8'),
  ) as Record<string, string>
  const main = 'dist/electron/main.js'
  const about = { name, productName: 'Ellwand', version, description, license, type: 'module', main }
  const dependencies = { 'better-sqlite3': bringSqlite() }
  // Whoever gives packages to others puts her own address here.
  const whose = { author: 'Ellwand', homepage: 'https://ellwand.invalid' }
  writeFileSync(
    join(STAGED, 'package.json'),
    `${JSON.stringify({ ...about, ...whose, dependencies }, null, 2)}\n`,
  )
  const used = packagesIn(made, [...fontFiles(), 'better-sqlite3/package.json'])
  writeFileSync(LICENCES, licencesOf(used))
}

const requireFrom = createRequire(import.meta.url)

function bringFonts(): void {
  const fonts = join(STAGED, 'fonts')
  mkdirSync(fonts)
  for (const file of fontFiles()) copyFileSync(requireFrom.resolve(file), join(fonts, basename(file)))
}

/** What colours mean in a paper that is kept for long; the printer looks for it beside the code that it is bundled into. */
function bringColours(): void {
  const profile = 'data/sRGB_IEC61966_2_1.icc'
  const from = join(dirname(requireFrom.resolve('pdfkit')), profile)
  cpSync(from, join(STAGED, 'dist/electron', profile))
}

/**
 * SQLite's library without its sources and what those are compiled with; which of its binaries are packed is said in the
 * configuration.
 * @returns its version
 */
function bringSqlite(): string {
  const from = dirname(requireFrom.resolve('better-sqlite3/package.json'))
  const to = resolve(STAGED, 'node_modules/better-sqlite3')
  for (const part of ['lib', 'prebuilds', 'LICENSE'])
    cpSync(join(from, part), join(to, part), { recursive: true })
  const { name, version, license, main, exports } = JSON.parse(
    readFileSync(join(from, 'package.json'), 'utf8'),
  ) as { name: string; version: string } & Record<string, unknown>
  writeFileSync(join(to, 'package.json'), JSON.stringify({ name, version, license, main, exports }))
  return version
}
