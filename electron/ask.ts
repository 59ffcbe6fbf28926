import { oldNode } from './node-version.ts'

// The store's own library ends an older Node without a word, so nothing of it is loaded before this check.
const refused = oldNode(process.versions.node)
if (refused === undefined) {
  const { ask } = await import('./ask-shell.ts')
  process.exitCode = await ask(process.argv.slice(2), process.stdin, process.stdout, process.stderr)
} else {
  process.stderr.write(`${refused}\n`)
  process.exitCode = 1
}
