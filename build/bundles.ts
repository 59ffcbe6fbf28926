import { resolve } from 'node:path'
import { build, type InlineConfig } from 'vite'

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
  },
}

/** Code of the shell; packages are left outside and found where they are installed. */
const shell = (entry: string, format: 'es' | 'cjs', emptyOutDir: boolean): InlineConfig => ({
  ...quiet,
  root,
  publicDir: false,
  ssr: { external: true },
  build: {
    ssr: resolve(root, entry),
    outDir: resolve(root, 'dist/electron'),
    emptyOutDir,
    target: 'node24',
    minify: false,
    rollupOptions: {
      external: ['electron'],
      output: { format, entryFileNames: `[name].${format === 'cjs' ? 'cjs' : 'js'}` },
    },
  },
})

/** The screen into `dist/renderer`. */
export const buildScreen = () => build(screen)

/** What a window of its own runs from, into `dist/electron`. */
export async function buildShell(): Promise<void> {
  await build(shell('electron/main.ts', 'es', true))
  await build(shell('electron/store-thread.ts', 'es', false))
  await build(shell('electron/lay-thread.ts', 'es', false))
  await build(shell('electron/preload.ts', 'cjs', false))
}
