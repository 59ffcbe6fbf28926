import { resolve } from 'node:path'
import { build, type InlineConfig } from 'vite'

/** `npm run build`: the screen, and the bundles that a window of its own runs from, into `dist/`. */

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

await build(screen)
if (!process.argv.includes('--screen')) {
  await build(shell('electron/main.ts', 'es', true))
  await build(shell('electron/store-thread.ts', 'es', false))
  await build(shell('electron/preload.ts', 'cjs', false))
}
