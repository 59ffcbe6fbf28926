import { useSyncExternalStore } from 'react'

/** Where the maker is: a room and, within it, one thing. */
export type Place = { room: string; id: string | undefined; query: URLSearchParams }

const subscribe = (hear: () => void) => {
  addEventListener('hashchange', hear)
  return () => removeEventListener('hashchange', hear)
}

export function usePlace(): Place {
  const hash = useSyncExternalStore(subscribe, () => location.hash)
  const [path = '', query = ''] = hash.replace(/^#\/?/, '').split('?')
  const [room = '', id] = path.split('/')
  return { room, id, query: new URLSearchParams(query) }
}

export const addressOf = (room: string, id?: string, query?: Record<string, string>): string =>
  `#/${room}${id === undefined ? '' : `/${id}`}${query === undefined ? '' : `?${new URLSearchParams(query)}`}`

export function goTo(room: string, id?: string, query?: Record<string, string>): void {
  location.hash = addressOf(room, id, query)
}
