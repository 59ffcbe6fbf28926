import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'

const quietly = (command: string, ...args: string[]) => execFileSync(command, args, { stdio: 'ignore' })

function mayMount(): boolean {
  const place = mkdtempSync(join(tmpdir(), 'ellwand-volume-'))
  try {
    quietly('mount', '-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', place)
    quietly('umount', place)
    return true
  } catch {
    return false
  } finally {
    rmSync(place, { recursive: true, force: true })
  }
}

/** Whether a disk of its own can be made for a test: on Linux, by root. */
export const hasVolumes = process.platform === 'linux' && mayMount()
export const withoutVolumes = hasVolumes ? '' : ' (skipped: no disk can be mounted here)'

/** A small disk of its own for one test, which can be full or forbidden to write on. */
export function smallVolume(size: string) {
  const place = mkdtempSync(join(tmpdir(), 'ellwand-volume-'))
  quietly('mount', '-t', 'tmpfs', '-o', `size=${size}`, 'tmpfs', place)
  onTestFinished(() => {
    // Lazily: a store that a failed test left open would hold it.
    quietly('umount', '-l', place)
    rmSync(place, { recursive: true, force: true })
  })
  const folder = join(place, 'workroom')
  mkdirSync(folder)
  return {
    folder,
    resize: (to: string) => quietly('mount', '-o', `remount,size=${to}`, place),
    forbidWriting: () => quietly('mount', '-o', 'remount,ro', place),
    allowWriting: () => quietly('mount', '-o', 'remount,rw', place),
  }
}
