import { readFile } from 'node:fs/promises'
import { extname, join, normalize, sep } from 'node:path'

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.woff2': 'font/woff2',
  '.svg': 'image/svg+xml',
}

/** The one style element that the accessibility library writes by itself (touch-action of what can be pressed). */
const PRESSABLE = "'sha256-38RhXrc7EdReTKsOm23ZPOCUgniTUUcjky8QOOrQx6o='"

/** What a page of the planner may do: run its own files and talk to its own shell, nothing else. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  `style-src 'self' ${PRESSABLE}`,
  "font-src 'self'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ')

/** What every answer of the shell says of how its page may be used. */
export const PAGE_HEADERS = {
  'Content-Security-Policy': POLICY,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
}

/** A file of the built screen, or undefined: only what lies in its folder, and only types it is made of. */
export async function screenFile(
  folder: string,
  urlPath: string,
): Promise<{ bytes: Uint8Array<ArrayBuffer>; type: string } | undefined> {
  const asked = normalize(decoded(urlPath === '/' ? '/index.html' : urlPath))
  const path = join(folder, asked)
  const type = TYPES[extname(path)]
  if (type === undefined || !path.startsWith(folder + sep)) return undefined
  try {
    return { bytes: new Uint8Array(await readFile(path)), type }
  } catch {
    return undefined
  }
}

function decoded(path: string): string {
  try {
    return decodeURIComponent(path)
  } catch {
    return '/'
  }
}
