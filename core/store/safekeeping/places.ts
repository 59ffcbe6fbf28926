import {
  accessSync,
  constants,
  existsSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { dirname, isAbsolute, join, resolve, sep } from 'node:path'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { roomIn } from '../disk.ts'

/** What may go wrong with a folder that holds a book: it lies on a network, or something copies it elsewhere. */
export type Care = 'network' | 'copied'

/** A folder that the maker may choose, with what is in it. */
export type Place = {
  folder: string
  /** The folder it lies in; null at the top. */
  above: string | null
  folders: string[]
  writable: boolean
  /** Bytes that may be written here. */
  room: number
  cares: Care[]
}

/**
 * Looks at a folder in which a book may be put.
 *
 * @throws Refusal when there is no such folder, or it may not be looked into
 */
export function lookAt(typed: string): Place {
  const folder = folderAt(typed)
  const above = dirname(folder)
  return {
    folder,
    above: above === folder ? null : above,
    folders: foldersIn(folder),
    writable: mayWrite(folder),
    room: roomIn(folder),
    cares: caresOf(folder),
  }
}

function foldersIn(folder: string): string[] {
  try {
    return readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'))
      .map(({ name }) => name)
      .sort((a, b) => a.localeCompare(b))
  } catch {
    throw new Refusal(phrase('refusal.place.shut', { folder }), 'folder')
  }
}

/** @throws Refusal for what is no whole path, or no folder */
export function folderAt(typed: string): string {
  if (!isAbsolute(typed) || typed.includes('\0')) throw new Refusal(phrase('refusal.place.noPath'), 'folder')
  const folder = resolve(typed)
  if (!existsSync(folder) || !statSync(folder).isDirectory())
    throw new Refusal(phrase('refusal.place.noFolder', { folder }), 'folder')
  return folder
}

/** @throws Refusal when nothing can be written to a folder; tried, for rights alone do not tell */
export function refuseUnwritable(folder: string): void {
  const trial = join(folder, '.ellwand-trial')
  try {
    writeFileSync(trial, 'Only a trial whether files can be written here.\n')
    rmSync(trial)
  } catch {
    throw new Refusal(phrase('refusal.place.unwritable', { folder }), 'folder')
  }
}

function mayWrite(folder: string): boolean {
  try {
    accessSync(folder, constants.W_OK)
    return true
  } catch {
    return false
  }
}

const NETWORKS =
  /^(nfs\d?|cifs|smb\d?|smbfs|afs|ceph|9p|davfs|glusterfs|fuse\.(?=.*(ssh|dav|s3|smb|gvfs|gluster|ceph)).*)$/
const COPIED = /sync|cloud/i

/** @param mounts the table of file systems, where the system has one to read */
export function caresOf(folder: string, mounts = mountsHere()): Care[] {
  const isShare = /^[\\/]{2}[^\\/]/.test(folder)
  const network = isShare || NETWORKS.test(systemOf(folder, mounts))
  const copied = folder.split(/[\\/]/).some((part) => COPIED.test(part))
  return [...(network ? (['network'] as const) : []), ...(copied ? (['copied'] as const) : [])]
}

/** The kind of file system a folder lies on: that of the longest mount point above it (fstab(5), the third field). */
function systemOf(folder: string, mounts: string): string {
  let found = { point: '', kind: '' }
  for (const line of mounts.split('\n')) {
    const [, escaped = '', kind = ''] = line.split(' ')
    const point = escaped.replace(/\\([0-7]{3})/g, (_, octal: string) =>
      String.fromCharCode(Number.parseInt(octal, 8)),
    )
    const above = folder === point || folder.startsWith(point.endsWith(sep) ? point : `${point}${sep}`)
    if (point !== '' && above && point.length >= found.point.length) found = { point, kind }
  }
  return found.kind
}

function mountsHere(): string {
  try {
    return readFileSync('/proc/mounts', 'utf8')
  } catch {
    return ''
  }
}
