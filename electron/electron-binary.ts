import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** Time given to the download of Electron's binary, ms. */
const FETCH_MS = 120_000

/** Whether windows can be shown here at all. */
export const hasDisplay = (
  { DISPLAY, WAYLAND_DISPLAY }: NodeJS.ProcessEnv,
  platform: NodeJS.Platform,
): boolean => platform !== 'linux' || DISPLAY !== undefined || WAYLAND_DISPLAY !== undefined

/**
 * Electron's binary among the installed packages, fetched if it is missing and may be had. Its package is
 * never loaded to find out: in a plain Node that would start a download by itself.
 */
export function electronBinary(modules: string, environment: NodeJS.ProcessEnv): string | undefined {
  const found = binaryIn(modules, environment)
  if (found !== undefined) return found
  const installer = join(modules, 'electron', 'install.js')
  if (!existsSync(installer)) return undefined
  console.log('Fetching the window this planner opens in (Electron), once …')
  spawnSync(process.execPath, [installer], { stdio: 'ignore', timeout: FETCH_MS, env: environment })
  return binaryIn(modules, environment)
}

/** The binary that is there already; undefined where the package is missing, or came without it. */
export function binaryIn(
  modules: string,
  { ELECTRON_OVERRIDE_DIST_PATH }: NodeJS.ProcessEnv,
): string | undefined {
  const pathFile = join(modules, 'electron', 'path.txt')
  if (!existsSync(pathFile)) return undefined
  const folder = ELECTRON_OVERRIDE_DIST_PATH ?? join(modules, 'electron', 'dist')
  const binary = join(folder, readFileSync(pathFile, 'utf8').trim())
  return existsSync(binary) ? binary : undefined
}
