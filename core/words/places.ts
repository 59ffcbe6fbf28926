/** The places to be, in the order of the page's head; the number of each is its key. */
export const PLACES = ['today', 'desk', 'clients', 'cloths', 'commissions', 'workroom'] as const
export type PlaceName = (typeof PLACES)[number]

type Screen = {
  /** Its address behind `#/`. */
  at: string
  /** What it is called among the screens of its place: a code of the catalogue. */
  name:
    | 'rooms.today'
    | 'bin.title'
    | 'rooms.desk'
    | 'rooms.own'
    | 'rooms.clients'
    | 'rooms.cloths'
    | 'shopping.title'
    | 'rooms.commissions'
    | 'screen.room.quotes'
    | 'weeks.title'
    | 'life.books'
    | 'times.accounts.title'
    | 'rooms.workroom'
    | 'times.title'
  /** Other words that it is looked for by. */
  also?: 'find.also.accounts' | 'find.also.books'
}

/** The screens within each place, the place's own first: a quote becomes a commission, so it stands with them. */
export const SCREENS: Record<PlaceName, readonly Screen[]> = {
  today: [
    { at: 'today', name: 'rooms.today' },
    { at: 'today/bin', name: 'bin.title' },
  ],
  desk: [
    { at: 'desk', name: 'rooms.desk' },
    { at: 'own', name: 'rooms.own' },
  ],
  clients: [{ at: 'clients', name: 'rooms.clients' }],
  cloths: [
    { at: 'cloths', name: 'rooms.cloths' },
    { at: 'cloths/shopping', name: 'shopping.title' },
  ],
  commissions: [
    { at: 'commissions', name: 'rooms.commissions' },
    { at: 'quotes', name: 'screen.room.quotes' },
    { at: 'commissions/plan', name: 'weeks.title' },
    { at: 'commissions/books', name: 'life.books', also: 'find.also.books' },
    { at: 'commissions/accounts', name: 'times.accounts.title', also: 'find.also.accounts' },
  ],
  workroom: [
    { at: 'workroom', name: 'rooms.workroom' },
    { at: 'workroom/times', name: 'times.title' },
  ],
}

/** Where an address is: the place in the head, and the screen of it that it is, or that it is something within. */
export type Within = { place: PlaceName; screen: string; exact: boolean }

/** An address that leads nowhere leads to the desk. @param path the address behind `#/`, without what is asked of it */
export function whereIs(path: string): Within {
  const all = PLACES.flatMap((place) => SCREENS[place].map(({ at }) => ({ place, at })))
  const exact = all.find(({ at }) => at === path)
  if (exact !== undefined) return { place: exact.place, screen: exact.at, exact: true }
  const room = path.split('/')[0]!
  const inside = all.find(({ at }) => at === room)
  return { place: inside?.place ?? 'desk', screen: inside?.at ?? 'desk', exact: inside === undefined }
}
