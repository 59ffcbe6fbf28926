import { readFileSync, renameSync, writeFileSync } from 'node:fs'

/** Where a window is on the screens, in their own points. */
export type Bounds = { x: number; y: number; width: number; height: number }

/** A window as it is to open again; where no `bounds` are known it opens in the usual size. */
export type WindowState = { bounds: Bounds | undefined; maximized: boolean }

/** As narrow and as low as the planner can be used. */
export const LEAST = { width: 900, height: 600 }
const USUAL = { width: 1280, height: 800 }

/** So much of a window must be on some screen for a hand to reach it. */
const REACHABLE = 120

/** The window as it was left; as if there had been none where that cannot be read. */
export function readState(file: string): WindowState {
  try {
    const { bounds, maximized } = JSON.parse(readFileSync(file, 'utf8')) as Record<string, unknown>
    return { bounds: isBounds(bounds) ? bounds : undefined, maximized: maximized === true }
  } catch {
    return { bounds: undefined, maximized: false }
  }
}

function isBounds(value: unknown): value is Bounds {
  if (typeof value !== 'object' || value === null) return false
  const { x, y, width, height } = value as Record<string, unknown>
  const points = [x, y, width, height]
  return (
    points.every((n) => typeof n === 'number' && Math.abs(n) < 100_000) &&
    Number(width) > 0 &&
    Number(height) > 0
  )
}

/** Keeps the window as it is left; where it cannot be kept, nothing is lost but that. */
export function keepState(file: string, state: WindowState): void {
  try {
    writeFileSync(`${file}.part`, JSON.stringify(state))
    renameSync(`${file}.part`, file)
  } catch {}
}

/**
 * Where to open the window: where it was, if that screen is still there, else in the middle of the first. Never larger
 * than its screen.
 * @param screens the parts of the screens that windows may use, the main one first
 */
export function placedOn(screens: readonly Bounds[], before: Bounds | undefined): Partial<Bounds> {
  const [main] = screens
  if (before === undefined || main === undefined) return fitted(USUAL, main ?? { x: 0, y: 0, ...USUAL })
  const shared = (screen: Bounds): number => overlap(screen, before)
  const screen = screens.reduce((best, one) => (shared(one) > shared(best) ? one : best))
  const size = fitted(before, screen)
  const right = Math.min(before.x + before.width, screen.x + screen.width)
  const reached = right - Math.max(before.x, screen.x)
  const onTop = before.y >= screen.y && before.y <= screen.y + screen.height - REACHABLE
  if (reached < REACHABLE || !onTop) return size
  const within = (at: number, least: number, most: number) => Math.round(Math.max(least, Math.min(at, most)))
  return {
    ...size,
    x: within(before.x, screen.x, screen.x + screen.width - size.width),
    y: within(before.y, screen.y, screen.y + screen.height - size.height),
  }
}

const fitted = (size: { width: number; height: number }, screen: Bounds) => ({
  width: Math.round(Math.min(Math.max(size.width, LEAST.width), screen.width)),
  height: Math.round(Math.min(Math.max(size.height, LEAST.height), screen.height)),
})

const overlap = (a: Bounds, b: Bounds): number =>
  Math.max(0, Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)) *
  Math.max(0, Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y))
