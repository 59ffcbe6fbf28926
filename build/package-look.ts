import { isBuiltin } from 'node:module'
import { basename } from 'node:path'
import { parseSync } from 'oxc-parser'
import type { Archived } from './package-archive.ts'
import { SENTINEL, WIRE } from './package-stand-in.ts'

/** What a package must bring along and may not. */
export type Wanted = {
  /** Names of the font files. */
  fonts: readonly string[]
  /** Names of the migrations. */
  migrations: readonly string[]
  /** The one binary of SQLite, as in 'linux-x64'. */
  binary: string
}

/** All that a package may take on a maker's disk besides Electron, bytes. */
const MOST = 25_000_000

/** What may lie in an archive, from its beginning; everything else was swept in by mistake. */
const BELONGS = [
  /^package\.json$/,
  /^dist\/electron\/(main|[\w-]*thread[\w-]*)\.js$/,
  /^dist\/electron\/(preload\.cjs|package\.json|data\/\w+\.icc)$/,
  /^dist\/renderer\/(index\.html|mark\.svg)$/,
  /^dist\/renderer\/assets\/[\w.-]+\.(js|css|woff2?)$/,
  /^migrations\/\d{4}_\w+\.sql$/,
  /^migrations\/meta\/_journal\.json$/,
  /^fonts\/\w+\.ttf$/,
  /^node_modules\/better-sqlite3\/(LICENSE|package\.json|lib\/[\w/-]+\.js|prebuilds\/[\w-]+\.node)$/,
]

/** What must lie outside the archive, because it is loaded as a file or read by a thread that is. */
const OUTSIDE =
  /^(dist\/electron\/(package\.json|data\/.*|.*thread.*)|migrations\/.*|fonts\/.*|node_modules\/.*)$/

/** What is wrong with the files of a package, one sentence each. */
export function faultsOfFiles(files: readonly Archived[], { fonts, migrations, binary }: Wanted): string[] {
  const paths = new Set(files.map(({ path }) => path))
  const needed = [
    ...['package.json', 'dist/electron/main.js', 'dist/electron/preload.cjs', 'dist/electron/package.json'],
    ...['dist/electron/store-thread.js', 'dist/electron/lay-thread.js', 'dist/renderer/index.html'],
    ...['migrations/meta/_journal.json', 'node_modules/better-sqlite3/lib/index.js'],
    ...fonts.map((name) => `fonts/${basename(name)}`),
    ...migrations.map((name) => `migrations/${name}`),
    `node_modules/better-sqlite3/prebuilds/${binary}.node`,
  ]
  const binaries = files.filter(({ path }) => path.endsWith('.node')).map(({ path }) => path)
  const size = files.reduce((sum, file) => sum + file.size, 0)
  return [
    ...needed.filter((path) => !paths.has(path)).map((path) => `${path} is missing`),
    ...files
      .filter(({ path }) => !BELONGS.some((one) => one.test(path)))
      .map(({ path }) => `${path} was swept in`),
    ...files
      .filter(({ path, unpacked }) => unpacked !== OUTSIDE.test(path))
      .map(({ path, unpacked }) => `${path} lies ${unpacked ? 'beside' : 'in'} the archive`),
    ...(binaries.length > 1 ? [`binaries of several systems: ${binaries.join(', ')}`] : []),
    ...(size > MOST ? [`${size} bytes, more than ${MOST}`] : []),
  ]
}

/** What a file of the shell still looks for outside the package. */
export function faultsOfCode(path: string, source: string): string[] {
  const { module } = parseSync(path, source)
  const asked = [
    ...module.staticImports.map(({ moduleRequest }) => moduleRequest.value),
    ...module.dynamicImports.map(({ moduleRequest }) =>
      source.slice(moduleRequest.start, moduleRequest.end).replace(/^['"`]|['"`]$/g, ''),
    ),
    ...[...source.matchAll(/\brequire\("([^"]+)"\)/g)].map(([, name]) => name!),
  ]
  const brought = /^(\.{1,2}\/|electron$|better-sqlite3$)/
  return asked
    .filter((name) => !brought.test(name) && !isBuiltin(name))
    .map((name) => `${path} looks for ${name}`)
}

/** What is not as it should be with what a packaged program can be talked into. */
export function faultsOfFuses(binary: Buffer, fuses: Record<(typeof WIRE)[number], boolean>): string[] {
  const at = binary.indexOf(SENTINEL)
  if (at < 0) return ['the program has no fuses']
  const wire = binary.subarray(at + SENTINEL.length + 2)
  return WIRE.filter((name, i) => wire[i] !== (fuses[name] ? '1' : '0').charCodeAt(0)).map(
    (name) => `${name} is not ${fuses[name] ? 'on' : 'off'}`,
  )
}
