import type { Answer } from '../../core/workroom.ts'
import type { Bridge, JobNews } from './bridge.ts'
import { Unreached } from './reach.ts'

const KEPT = 'ellwand-key'

/**
 * The planner in a browser: requests to the server on this machine that served the page, each with the key
 * that only pages of its own origin can read.
 *
 * @returns undefined when the page was opened without a key: by a bookmark, or after the planner was closed
 */
export async function browserBridge(): Promise<Bridge | undefined> {
  const key = (await tradedKey()) ?? localStorage.getItem(KEPT)
  if (key === null) return undefined
  const post = (path: string, body: unknown) =>
    fetch(path, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', 'X-Ellwand-Key': key },
      body: JSON.stringify(body),
    })
  const answered = async (path: string, body: unknown): Promise<Answer> => {
    const response = await post(path, body).catch(() => {
      throw new Unreached('away')
    })
    if (response.status === 403) throw new Unreached('other')
    // An answer that breaks off in the middle is of a planner that was closed meanwhile.
    return (await response.json().catch(() => {
      throw new Unreached('away')
    })) as Answer
  }
  if ((await post('/ask', { name: 'workroom.describe', payload: {} })).status === 403) {
    localStorage.removeItem(KEPT)
    return undefined
  }
  return {
    ask: (name, payload) => answered('/ask', { name, payload }),
    cancel: (job) => answered('/cancel', { job }),
    enter: (which) => answered('/enter', { which }),
    paper: async (document) => {
      const ticket = await answered('/ticket', { document })
      if (ticket.ok) handOver((ticket.result as { url: string }).url, document)
      return ticket
    },
    listen: (hear, ended = () => {}) => void read(post, hear).then(ended, ended),
  }
}

/** A paper opens beside the planner; an archive is saved, for no browser shows it. */
function handOver(url: string, name: string): void {
  if (!name.endsWith('.zip')) {
    window.open(url, '_blank', 'noopener')
    return
  }
  const link = window.document.createElement('a')
  link.href = url
  link.download = name
  link.click()
}

/** Trades the key of the address for the session's, and takes it out of the address and its history. */
async function tradedKey(): Promise<string | null> {
  const opening = /^#[\w-]{40,}$/.test(location.hash) ? location.hash.slice(1) : ''
  if (opening === '') return null
  history.replaceState(null, '', '/')
  const response = await fetch('/session', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ key: opening }),
  })
  if (!response.ok) return null
  const { key } = (await response.json()) as { key: string }
  localStorage.setItem(KEPT, key)
  return key
}

/** Reads the stream of events line by line, for as long as the planner runs. */
async function read(
  post: (path: string, body: unknown) => Promise<Response>,
  hear: (news: JobNews) => void,
): Promise<void> {
  const reader = (await post('/events', {})).body!.pipeThrough(new TextDecoderStream()).getReader()
  let rest = ''
  for (;;) {
    const { done, value } = await reader.read()
    if (done) return
    const lines = (rest + value).split('\n')
    rest = lines.pop()!
    for (const line of lines) if (line !== '') hear(JSON.parse(line) as JobNews)
  }
}
