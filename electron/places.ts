import { mkdirSync } from 'node:fs'
import { homedir } from 'node:os'
import { join } from 'node:path'

/** Where a maker's files belong on this system, made if it is not there. */
export function dataFolder(environment: NodeJS.ProcessEnv, platform: NodeJS.Platform): string {
  const home = homedir()
  const folder =
    environment.ELLWAND_FOLDER ??
    (platform === 'darwin'
      ? join(home, 'Library', 'Application Support', 'Ellwand')
      : platform === 'win32'
        ? join(environment.APPDATA ?? join(home, 'AppData', 'Roaming'), 'Ellwand')
        : join(environment.XDG_DATA_HOME ?? join(home, '.local', 'share'), 'ellwand'))
  mkdirSync(folder, { recursive: true })
  return folder
}
