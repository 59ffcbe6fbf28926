import { existsSync } from 'node:fs'
import { type Browser, chromium } from 'playwright-core'

/** Where systems put it; the one without windows starts and paints soonest. */
const CANDIDATES = [
  process.env.ELLWAND_CHROMIUM,
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
]

/** Path of the Chromium in which screens are tried, measured and pictured here, if there is one. */
const found = CANDIDATES.find((path): path is string => path !== undefined && existsSync(path))

/** Whether there is a Chromium here. */
export const hasChromium = found !== undefined

/** Starts Chromium out of sight. @throws Error where there is none */
export async function launchChromium(): Promise<Browser> {
  if (found === undefined) throw new Error('Chromium is needed for this, and none was found.')
  // The sandbox is refused to root, as whom checks are often run; only the planner's own pages are opened.
  return chromium.launch({ executablePath: found, args: ['--no-sandbox'] })
}
