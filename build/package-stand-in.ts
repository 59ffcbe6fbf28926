import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** Before the bytes by which a packaged program's abilities are switched off. */
export const SENTINEL = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX'

/** The abilities in the order of their bytes. */
export const WIRE = [
  'runAsNode',
  'enableCookieEncryption',
  'enableNodeOptionsEnvironmentVariable',
  'enableNodeCliInspectArguments',
  'enableEmbeddedAsarIntegrityValidation',
  'onlyLoadAppFromAsar',
  'loadBrowserProcessSpecificV8Snapshot',
  'grantFileProtocolExtraPrivileges',
] as const

/** A folder with as much of Electron in it as packaging touches, all abilities on; it cannot be run. */
export function standInElectron(folder: string): void {
  for (const part of ['locales', 'resources']) mkdirSync(join(folder, part), { recursive: true })
  const fuses = Buffer.from([1, WIRE.length, ...WIRE.map(() => '1'.charCodeAt(0))])
  const binary = Buffer.concat([Buffer.from(`stand-in ${SENTINEL}`), fuses, Buffer.from(' end')])
  writeFileSync(join(folder, 'electron'), binary, { mode: 0o755 })
  writeFileSync(join(folder, 'chrome-sandbox'), '')
  writeFileSync(join(folder, 'locales', 'en-US.pak'), '')
  writeFileSync(join(folder, 'LICENSE'), 'the licence of Electron')
  writeFileSync(join(folder, 'LICENSES.chromium.html'), 'the licences of Chromium')
}
