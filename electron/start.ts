import { spawn } from 'node:child_process'
import { resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { electronBinary, hasDisplay } from './electron-binary.ts'
import { oldNode } from './node-version.ts'
import { dataFolder } from './places.ts'

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
  const { serveLoopback } = await import('./loopback.ts')
  const { startStore } = await import('./store-host.ts')
  const store = startStore(
    dataFolder(process.env, process.platform),
    new URL('../dist/electron/store-thread.js', import.meta.url),
  )
  const entered = await store.enter('own')
  if (!entered.ok) {
    console.error(entered.error.message)
    await store.close()
    process.exit(1)
  }
  const { address, close } = await serveLoopback(
    store,
    resolve(root, 'dist/renderer'),
    Number(values.port ?? 0),
  )
  console.log(
    `The planner is open in your browser at ${address} (there is no window of its own here; Ctrl-C closes it)`,
  )
  const end = async () => {
    await close()
    await store.close()
    process.exit(0)
  }
  process.on('SIGINT', end)
  process.on('SIGTERM', end)
}
