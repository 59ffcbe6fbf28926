import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { parseSync } from 'oxc-parser'

/** A file of the built screen and its length, bytes, as it is sent. */
export type Load = { name: string; gzipped: number }

/**
 * What a page of the built screen waits for: the scripts and styles that its first file names, what those scripts import
 * before they run, and the fonts of a page in Latin letters. Rooms that are fetched afterwards are not in it.
 * @param screen the folder of the built screen
 */
export function firstLoad(screen: string): Load[] {
  const page = readFileSync(join(screen, 'index.html'), 'utf8')
  const named = [...page.matchAll(/(?:src|href)="\/([^"]+\.(?:js|css))"/g)].map(([, name]) => name!)
  const all = new Set<string>()
  const take = (name: string): void => {
    if (all.has(name)) return
    all.add(name)
    if (!name.endsWith('.js')) return
    const { module } = parseSync(name, readFileSync(join(screen, name), 'utf8'))
    const from = [...module.staticImports.map(({ moduleRequest }) => moduleRequest.value)]
    for (const other of from) take(join('assets', other))
  }
  named.forEach(take)
  const fonts = readdirSync(join(screen, 'assets')).filter((name) => /-latin-\d+-normal.*\.woff2$/.test(name))
  return [...all, ...fonts.map((name) => join('assets', name))].map((name) => ({
    name,
    gzipped: gzipSync(readFileSync(join(screen, name)), { level: 9 }).length,
  }))
}
