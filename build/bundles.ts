import { resolve } from 'node:path'
import { build, type InlineConfig, type Rolldown } from 'vite'

const root = resolve(import.meta.dirname, '..')
const quiet = { configFile: false, logLevel: 'warn' } as const

const screen: InlineConfig = {
  ...quiet,
  root: resolve(root, 'renderer'),
  build: {
    outDir: resolve(root, 'dist/renderer'),
    emptyOutDir: true,
    target: 'es2024',
    modulePreload: false,
    assetsInlineLimit: 0,
    // What several rooms use comes with the first screen: one file for all, and one for each room.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'shared', minShareCount: 2 }] } } },
  },
}

type Made = Rolldown.RolldownOutput | Rolldown.RolldownOutput[] | Rolldown.RolldownWatcher

/** Where the code of a shell goes, and whether the packages it uses go into it; SQLite's own is always found outside. */
export type ShellKind = { outDir: string; bundled: boolean }
const INSTALLED: ShellKind = { outDir: resolve(root, 'dist/electron'), bundled: false }

/** Packages of many files, which Node would look for one by one; those that read files of their own stay as installed. */
const SMALL = ['date-fns', 'drizzle-orm', 'zod', 'clipper2-ts', 'bidi-js']

type Entry = { file: string; name: string; format: 'es' | 'cjs'; first: boolean }

const shell = ({ file, name, format, first }: Entry, { outDir, bundled }: ShellKind): InlineConfig => ({
  ...quiet,
  root,
  publicDir: false,
  ssr: { noExternal: bundled ? true : SMALL },
  build: {
    ssr: resolve(root, file),
    outDir,
    emptyOutDir: first,
    target: 'node24',
    minify: false,
    rollupOptions: {
      external: ['electron', 'better-sqlite3'],
      output: {
        format,
        entryFileNames: `${name}.${format === 'cjs' ? 'cjs' : 'js'}`,
        chunkFileNames: `${name}-[name].js`,
      },
    },
  },
})

/** The screen into a folder, `dist/renderer` where none is named. */
export const buildScreen = (outDir?: string): Promise<Made> =>
  build({ ...screen, build: { ...screen.build, ...(outDir === undefined ? {} : { outDir }) } })

const THREADS = [
  ['electron/store-thread.ts', 'store-thread', 'es'],
  ['electron/lay-thread.ts', 'lay-thread', 'es'],
] as const

const PACKED = [['electron/packaged-thread.ts', 'store-thread', 'es'], THREADS[1]] as const

/** Only the code of the threads, for what itself runs from its sources. */
export async function buildThreads(): Promise<void> {
  for (const [file, name, format] of THREADS)
    await build(shell({ file, name, format, first: false }, INSTALLED))
}

/** What a window of its own runs from, into `dist/electron` where nothing else is said. */
export async function buildShell(kind = INSTALLED): Promise<Made[]> {
  const made: Made[] = []
  for (const [file, name, format] of [
    ['electron/main.ts', 'main', 'es'],
    ...(kind.bundled ? PACKED : THREADS),
    ['electron/preload.ts', 'preload', 'cjs'],
    // A package has a window, and no use for a browser.
    ...(kind.bundled ? [] : [['electron/browser.ts', 'browser', 'es'] as const]),
  ] as const)
    made.push(await build(shell({ file, name, format, first: made.length === 0 }, kind)))
  return made
}
