import { useSyncExternalStore } from 'react'

/** Where the maker is: a room and, within it, one thing. */
export type Place = { room: string; id: string | undefined; query: URLSearchParams }

/** How deep in the history of the window an entry of ours lies; the first is nought. */
type Depth = { depth: number }
const depthOf = (): number | undefined => (history.state as Depth | null)?.depth
let depth = depthOf() ?? 0
/** How far each entry of the history was scrolled when she left it, px. */
const scrolled = new Map<number, number>()
addEventListener('hashchange', () => {
  scrolled.set(depth, scrollY)
  const known = depthOf()
  depth = known ?? depth + 1
  if (known === undefined) {
    history.replaceState({ depth } satisfies Depth, '')
    scrolled.delete(depth)
  }
  scrollAgain(scrolled.get(depth) ?? 0)
})

/** Scrolls to where she was, as soon as what was there is there again. */
function scrollAgain(to: number): void {
  scrollTo(0, to)
  if (to === 0) return
  const watch = new ResizeObserver(() => {
    scrollTo(0, to)
    if (scrollY >= to - 1) leave()
  })
  const leave = () => watch.disconnect()
  watch.observe(document.body)
  // Whoever moves by herself is not dragged back.
  for (const moved of ['wheel', 'pointerdown', 'keydown', 'hashchange'])
    addEventListener(moved, leave, { once: true })
}

const subscribe = (hear: () => void) => {
  addEventListener('hashchange', hear)
  return () => removeEventListener('hashchange', hear)
}

/** The place by the window's address, which the screen follows wherever it goes. */
export function usePlace(): Place {
  const hash = useSyncExternalStore(subscribe, () => location.hash)
  const [path = '', query = ''] = hash.replace(/^#\/?/, '').split('?')
  const [room = '', id] = path.split('/')
  return { room, id, query: new URLSearchParams(query) }
}

/** What a link to a place says. */
export const addressOf = (room: string, id?: string, query?: Record<string, string>): string =>
  `#/${room}${id === undefined ? '' : `/${id}`}${query === undefined ? '' : `?${new URLSearchParams(query)}`}`

/** Goes to a place by a new entry in the window's history. */
export function goTo(room: string, id?: string, query?: Record<string, string>): void {
  location.hash = addressOf(room, id, query)
}

/** Goes back to where the maker came from, or, where she came from nowhere, to what is around this place. */
export function goBack(around: string): void {
  if (depth > 0) {
    history.back()
    return
  }
  history.replaceState({ depth } satisfies Depth, '', around)
  dispatchEvent(new HashChangeEvent('hashchange'))
}
