import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { build, DIR_TARGET, Platform } from 'electron-builder'
import { fontFiles } from '../core/paper/fonts.ts'
import { configuration, FUSES, root } from './electron-builder.ts'
import { type Archived, filesOfArchive } from './package-archive.ts'
import { faultsOfCode, faultsOfFiles, faultsOfFuses } from './package-look.ts'
import { stage } from './package-stage.ts'
import { standInElectron } from './package-stand-in.ts'

/**
 * `npm run package:check`: makes the package for Linux with a stand-in for Electron, looks whether everything is in it
 * that must be and nothing that may not, and has its own main and threads open a store, print and lay under this Node,
 * away from the project.
 */
const scratch = mkdtempSync(join(tmpdir(), 'ellwand-package-'))
try {
  const electronDist = join(scratch, 'electron')
  standInElectron(electronDist)
  await stage()
  await build({
    projectDir: root,
    config: {
      ...configuration,
      electronDist,
      directories: { ...configuration.directories, output: scratch },
    },
    publish: 'never',
    targets: Platform.LINUX.createTarget(DIR_TARGET),
  })
  const made = join(scratch, process.arch === 'x64' ? 'linux-unpacked' : `linux-${process.arch}-unpacked`)
  const archive = join(made, 'resources/app.asar')
  const files = filesOfArchive(archive)
  const bytes = ({ unpacked, path, bytes: packed }: Archived): Buffer =>
    unpacked ? readFileSync(join(`${archive}.unpacked`, path)) : packed()
  const shell = files.filter(({ path }) => /^dist\/electron\/.*\.c?js$/.test(path))
  const faults = [
    ...faultsOfFiles(files, {
      fonts: fontFiles(),
      migrations: readdirSync(join(root, 'migrations')).filter((name) => name.endsWith('.sql')),
      binary: `linux-${process.arch}`,
    }),
    ...shell.flatMap((file) => faultsOfCode(file.path, bytes(file).toString('utf8'))),
    ...faultsOfFuses(readFileSync(join(made, 'ellwand')), FUSES),
    ...faultsOfLicences(readFileSync(join(made, 'resources/licences.txt'), 'utf8')),
    ...faultsOfRun(files, bytes),
  ]
  for (const fault of faults) console.error(fault)
  const size = files.reduce((sum, file) => sum + file.size, 0)
  console.log(
    `${files.length} files, ${(size / 1e6).toFixed(1)} MB besides Electron; ${faults.length} faults`,
  )
  if (faults.length > 0) process.exitCode = 1
} finally {
  rmSync(scratch, { recursive: true, force: true })
}

/** Some that are certainly shipped, of each kind: code of the shell, code of the screen, fonts for paper and screen. */
function faultsOfLicences(text: string): string[] {
  const shipped = [
    ...['better-sqlite3', 'drizzle-orm', 'zod', 'pdfkit', 'fontkit', 'react-dom', 'react-aria-components'],
    ...['@expo-google-fonts/eb-garamond', '@fontsource/source-sans-3'],
  ]
  return shipped
    .filter((name) => !text.includes(`\n${name} `))
    .map((name) => `the licence of ${name} is not told`)
}

/** Lays out the archive as files, as Electron shows it to the program, and runs what the program would run. */
function faultsOfRun(files: readonly Archived[], bytes: (file: Archived) => Buffer): string[] {
  const resources = join(scratch, 'resources')
  for (const file of files) {
    const to = join(resources, file.unpacked ? 'app.asar.unpacked' : 'app.asar', file.path)
    mkdirSync(dirname(to), { recursive: true })
    writeFileSync(to, bytes(file))
  }
  const driver = join(scratch, 'driver')
  cpSync(join(root, 'tests/electron/stand-in'), driver, { recursive: true })
  const { stdout, stderr } = spawnSync(
    process.execPath,
    [join(driver, 'drive.ts'), join(resources, 'app.asar/dist/electron')],
    { encoding: 'utf8', cwd: scratch, env: { ...process.env, ELLWAND_FOLDER: join(scratch, 'store') } },
  )
  const last = stdout.trim().split('\n').at(-1) ?? ''
  if (last === '') return [`the packaged program did not run: ${stderr.trim()}`]
  const found = JSON.parse(last) as Record<string, unknown>
  const wished = { loaded: 'ellwand://planner/', printed: true, laid: 'done', quits: 1 }
  return Object.entries(wished)
    .filter(([name, value]) => found[name] !== value)
    .map(([name]) => `the packaged program: ${name} is ${JSON.stringify(found[name] ?? found.errors)}`)
}
