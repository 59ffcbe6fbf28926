import { type ComponentType, useEffect, useState } from 'react'
import { useHouse } from '../workroom.tsx'

/** Whether a room's code did not come. A browser does not fetch it a second time for the same page. */
let missed = false
/** Whether any did not come. */
export const hasMissedRooms = (): boolean => missed

/** How the code of the rooms behind the first screen is fetched. */
const fetches: (() => Promise<void>)[] = []

/** A room whose code is fetched beside the first screen, and which is there once that came. */
type Door<P> = { room: ComponentType<P> | undefined; fetch: () => Promise<void> }

/**
 * A room that is entered before its code came stays blank until then; afterwards it is there at once, like any other.
 * (React's own way to wait shows what it waited for only after a third of a second, even if that came at once.)
 */
function Entered<P extends object>({ door, given }: { door: Door<P>; given: P }) {
  const { tryAgain } = useHouse().workroom.reach
  const [, setThere] = useState(door.room !== undefined)
  useEffect(() => {
    if (door.room !== undefined) return
    void door.fetch().then(() => {
      if (door.room === undefined) void tryAgain()
      else setThere(true)
    })
  }, [door, tryAgain])
  const Room = door.room
  return Room === undefined ? null : <Room {...given} />
}

function later<P extends object>(load: () => Promise<ComponentType<P>>): ComponentType<P> {
  const door: Door<P> = {
    room: undefined,
    fetch: async () => {
      try {
        door.room = await load()
      } catch {
        missed = true
      }
    },
  }
  fetches.push(door.fetch)
  return (given) => <Entered door={door} given={given} />
}

/** So long the first screen has the line and the reading of code for itself, ms. */
const AFTER_FIRST = 1500

/** Fetches all rooms, one after the other, once the first screen has been painted and has what it asks for. */
export function fetchRooms(): void {
  setTimeout(async () => {
    for (const fetchRoom of fetches) await fetchRoom()
  }, AFTER_FIRST)
}

/** The rooms that no first screen needs: neither today, the desk nor the beginning. */
export const Bin = later(async () => (await import('./bin.tsx')).Bin)
export const Books = later(async () => (await import('./books.tsx')).Books)
export const Client = later(async () => (await import('./client.tsx')).Client)
export const Clients = later(async () => (await import('./clients.tsx')).Clients)
export const Cloths = later(async () => (await import('./cloths.tsx')).Cloths)
export const Commission = later(async () => (await import('./commission.tsx')).Commission)
export const Commissions = later(async () => (await import('./commissions.tsx')).Commissions)
export const Damaged = later(async () => (await import('./damaged.tsx')).Damaged)
export const Own = later(async () => (await import('./own.tsx')).Own)
export const Plan = later(async () => (await import('./plan.tsx')).Plan)
export const Quote = later(async () => (await import('./quote.tsx')).Quote)
export const Quotes = later(async () => (await import('./quotes.tsx')).Quotes)
export const SavedStrip = later(async () => (await import('./damaged.tsx')).SavedStrip)
export const Shopping = later(async () => (await import('./shopping.tsx')).Shopping)
export const Table = later(async () => (await import('../table/table.tsx')).Table)
export const Times = later(async () => (await import('./times.tsx')).Times)
export const WhatItCameTo = later(async () => (await import('./accounts.tsx')).WhatItCameTo)
export const WorkroomSettings = later(async () => (await import('./workroom-settings.tsx')).WorkroomSettings)
