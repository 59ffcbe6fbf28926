import { execFileSync } from 'node:child_process'
import { join } from 'node:path'

/** Builds once what the browser and window tests run against, just as it is built for makers. */
export default function setup(): void {
  const env = { ...process.env, NODE_ENV: 'production' }
  execFileSync(process.execPath, [join(import.meta.dirname, 'build.ts')], { stdio: 'inherit', env })
}
