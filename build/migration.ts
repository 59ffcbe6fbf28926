import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/**
 * `npm run migration -- name`: writes the next migration from the schema, every new table STRICT, which the
 * generator cannot say by itself.
 */
const name = process.argv[2]
if (name === undefined) {
  console.error('Give the migration a name: npm run migration -- add_stock')
  process.exit(1)
}
const folder = join(import.meta.dirname, '../migrations')
const before = new Set(readdirSync(folder))
execFileSync('npx', ['drizzle-kit', 'generate', '--config', 'build/drizzle.config.ts', '--name', name], {
  stdio: 'inherit',
})
for (const file of readdirSync(folder).filter((entry) => entry.endsWith('.sql') && !before.has(entry))) {
  const path = join(folder, file)
  writeFileSync(
    path,
    readFileSync(path, 'utf8')
      .replace(/^\);$/gm, ') STRICT;')
      .replace(/^\);(-->)/gm, ') STRICT;$1'),
  )
  console.log(`migrations/${file}: tables are STRICT`)
}
