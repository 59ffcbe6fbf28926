import type { ClothNeed } from '../plan/stock/need.ts'
import { offerFor } from '../plan/stock/offer.ts'
import type { ClothState } from '../plan/waits.ts'
import { listCloths } from '../store/cloths.ts'
import { addDays, type Day, daysBetween } from '../words/dates.ts'
import type { Context } from './request.ts'
import { today } from './settings.ts'
import { lengthsIn } from './stock.ts'

/** A garment nothing of which is cut: what it needs, when it was accepted, and whether anything of it was done. */
export type Uncut = { id: string; needs: readonly ClothNeed[]; accepted: Day; touched: boolean }

/**
 * How the cloths of garments are off, by garment; of several cloths the one that is furthest from the table. Where no
 * lengths are entered at all, cloth counts as ordered on the day of acceptance, and as there once any step is done.
 */
export function clothStates(garments: readonly Uncut[], context: Context): Map<string, ClothState> {
  const shelf = shelfOf(context)
  const day = today(context)
  return new Map(
    garments.flatMap(({ id, needs, accepted, touched }): [string, ClothState][] => {
      const states = needs.flatMap((need) => shelf.stateOf(need))
      const furthest = states.sort((a, b) => FURTHEST.indexOf(a.at) - FURTHEST.indexOf(b.at))[0]
      if (furthest === undefined) return []
      if (shelf.kept || furthest.at !== 'toBuy') return [[id, furthest]]
      const there = addDays(accepted, furthest.days)
      return touched || there <= day ? [] : [[id, { ...furthest, days: daysBetween(day, there) }]]
    }),
  )
}

/**
 * Days until cloth can lie on the table, from the day on which it is seen to: none where the shelf has it, those until it
 * comes where it is on its way, else those that an order takes.
 */
export function daysToComeOf(context: Context): (needs: readonly ClothNeed[], from: Day) => number {
  const shelf = shelfOf(context)
  return (needs, from) =>
    needs
      .flatMap((need) => shelf.stateOf(need))
      .reduce((most, state) => Math.max(most, daysOf(state, from)), 0)
}

/** Where the cloth of a garment that is not accepted yet is: of several the one furthest from the table; null where none is needed. */
export type Whereabouts = 'here' | 'coming' | 'order' | null

/** Tells where cloths are that are needed, whomever they are set aside for. */
export function whereaboutsOf(context: Context): (needs: readonly ClothNeed[]) => Whereabouts {
  const shelf = shelfOf(context)
  const whereIs = (state: ClothState): Whereabouts => {
    if (state.at === 'toBuy') return 'order'
    return state.at === 'here' || (state.at === 'unpromised' && state.day === undefined) ? 'here' : 'coming'
  }
  return (needs) => {
    const all = needs.flatMap((need) => shelf.stateOf(need)).map(whereIs)
    return (['order', 'coming', 'here'] as const).find((one) => all.includes(one)) ?? null
  }
}

/** A day that nobody named hinders nothing that can be reckoned. */
const daysOf = (state: ClothState, from: Day): number =>
  state.at === 'toBuy'
    ? state.days
    : state.at === 'unpromised' && typeof state.day === 'string'
      ? daysBetween(from, state.day)
      : 0

const FURTHEST: readonly ClothState['at'][] = ['toBuy', 'coming', 'unpromised', 'here']

/** What is known of cloth: whether lengths are entered at all, and how the shelf meets a need. */
function shelfOf(context: Context) {
  const lengths = lengthsIn(context)
  const here = lengths.flatMap(({ row, length }) => (row.arrivedDay === null ? [] : [length]))
  const cloths = new Map(listCloths(context.store.db).map((cloth) => [cloth.id, cloth]))
  const stateOf = (need: ClothNeed): ClothState[] => {
    const own = lengths.filter(
      ({ length: { clothId, reservedFor } }) =>
        clothId === need.clothId && reservedFor.some(({ garmentId }) => garmentId === need.garmentId),
    )
    const coming = own.filter(({ row }) => row.arrivedDay === null).map(({ row }) => row.expectedDay)
    if (coming.length > 0) return [{ at: 'coming', day: coming.reduce(later) }]
    if (own.length > 0) return [{ at: 'here' }]
    const cloth = cloths.get(need.clothId)
    if (cloth === undefined) return []
    const { offers, buy } = offerFor(need, here, cloth.increment)
    if (offers.length > 0) return [{ at: 'unpromised' }]
    // What is on its way and promised to nobody serves as well, and is not ordered a second time.
    const { offers: sooner } = offerFor(
      need,
      lengths.map(({ length }) => length),
      cloth.increment,
    )
    const next = lengths.find(({ row }) => row.id === sooner[0]?.lengthId)
    if (next !== undefined) return [{ at: 'unpromised', day: next.row.expectedDay }]
    return buy === undefined ? [] : [{ at: 'toBuy', mm: buy.toBuy, days: cloth.leadDays }]
  }
  return { kept: lengths.length > 0, stateOf }
}

/** A day that nobody named is later than any. */
const later = (a: Day | null, b: Day | null): Day | null => (a === null || b === null ? null : a > b ? a : b)
