import { spawn } from 'node:child_process'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { parseArgs } from 'node:util'
import { electronBinary, hasDisplay } from './electron-binary.ts'
import { oldNode } from './node-version.ts'

// `npm start`: the planner in its own window where that can be had, else in the browser.

const root = resolve(import.meta.dirname, '..')
const { values } = parseArgs({ options: { browser: { type: 'boolean' }, port: { type: 'string' } } })
const refused = oldNode(process.versions.node)
if (refused !== undefined) {
  console.error(refused)
  process.exit(1)
}

const windows = values.browser !== true && hasDisplay(process.env, process.platform)
const binary = windows ? electronBinary(resolve(root, 'node_modules'), process.env) : undefined
if (binary !== undefined) {
  const child = spawn(binary, [resolve(root, 'dist/electron/main.js')], { stdio: 'inherit' })
  child.on('exit', (code) => process.exit(code ?? 0))
} else {
  // As it was built: its hundreds of sources would take longer to read than a store of many years.
  const built = (name: string) => pathToFileURL(resolve(root, 'dist/electron', name))
  const { openInBrowser } = (await import(built('browser.js').href)) as typeof import('./browser.ts')
  await openInBrowser(built('store-thread.js'), resolve(root, 'dist/renderer'), Number(values.port ?? 0))
}
