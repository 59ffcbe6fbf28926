import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join, resolve } from 'node:path'
import type { Rolldown } from 'vite'

type Made = Rolldown.RolldownOutput | Rolldown.RolldownOutput[] | Rolldown.RolldownWatcher

const requireFrom = createRequire(import.meta.url)
const modules = resolve(import.meta.dirname, '../node_modules')

/**
 * The folders of the packages that went into some bundles, or of which files are brought along.
 * @param files names by which files of packages are found
 */
export function packagesIn(made: readonly Made[], files: readonly string[]): string[] {
  const ids = made
    .flat()
    .flatMap((one) => ('output' in one ? one.output : []))
    .flatMap((part) =>
      part.type === 'chunk'
        ? part.moduleIds
        : part.originalFileNames.map((name) => resolve(modules, '..', 'renderer', name)),
    )
  const found = [...ids, ...files.map((file) => requireFrom.resolve(file))].map(folderOf)
  return [...new Set(found.filter((folder) => folder !== undefined))].sort()
}

/** The package a file belongs to: the last `node_modules` of its path and the name after it. */
function folderOf(file: string): string | undefined {
  const [, folder] = /^\0?(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/.exec(file) ?? []
  return folder
}

/**
 * The licences of some packages, one after the other with their text.
 * @throws Error when a package does not say under which licence it may be passed on
 */
export function licencesOf(folders: readonly string[]): string {
  const parts = folders.map((folder) => {
    const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as About
    const text = textIn(folder)
    if (text === undefined && about.license === undefined) throw new Error(`${folder} names no licence`)
    return [`${about.name} ${about.version}`, about.license, text ?? `by ${authorOf(about)}`]
      .filter((part) => part !== undefined)
      .join('\n\n')
  })
  return [HEAD, ...parts].join(`\n\n${'-'.repeat(80)}\n\n`)
}

type About = { name: string; version: string; license?: string; author?: string | { name: string } }

const HEAD =
  'Ellwand is under the MIT licence. It is built from what follows, each under its own licence. The window it opens\n' +
  'in is Electron; the licences of Electron and Chromium are in files of their own beside the program.'

const authorOf = ({ author, name }: About): string =>
  typeof author === 'object' ? author.name : (author ?? `the authors of ${name}`)

/** What a package says of its licence: in a file of its own, or at least in the last part of its introduction. */
function textIn(folder: string): string | undefined {
  const files = readdirSync(folder)
  const own = files.find((name) => /^(licen[cs]e|copying)(\.|$)/i.test(name))
  if (own !== undefined) return readFileSync(join(folder, own), 'utf8').trim()
  const readme = files.find((name) => /^readme(\.|$)/i.test(name))
  if (readme === undefined) return undefined
  return /^#+ *licen[cs]e[\s\S]*/im.exec(readFileSync(join(folder, readme), 'utf8'))?.[0].trim()
}
