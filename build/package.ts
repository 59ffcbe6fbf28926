import { parseArgs } from 'node:util'
import { build, DIR_TARGET, Platform } from 'electron-builder'
import { configuration, root } from './electron-builder.ts'
import { stage } from './package-stage.ts'

/**
 * `npm run package`: packages for the system it runs on, into `release/`. `-- --linux --windows --mac` for others, as
 * far as they can be made here; `-- --unpacked` leaves the program in a folder.
 */
const { values } = parseArgs({
  options: {
    linux: { type: 'boolean', default: false },
    windows: { type: 'boolean', default: false },
    mac: { type: 'boolean', default: false },
    unpacked: { type: 'boolean', default: false },
  },
})
const named = [
  ...(values.linux ? [Platform.LINUX] : []),
  ...(values.windows ? [Platform.WINDOWS] : []),
  ...(values.mac ? [Platform.MAC] : []),
]
const platforms = named.length === 0 ? [Platform.current()] : named

await stage()
await build({
  projectDir: root,
  config: configuration,
  publish: 'never',
  targets: new Map(
    platforms.flatMap((platform) => [...platform.createTarget(values.unpacked ? DIR_TARGET : null)]),
  ),
})
