import { recount } from '../plan/stock/small-things.ts'
import { getCloth } from '../store/cloths.ts'
import { insertSupplyMove } from '../store/stock.ts'
import { addDays } from '../words/dates.ts'
import { thingsOf } from './drawer.ts'
import type { Context } from './request.ts'
import { today } from './settings.ts'
import { entered } from './stock.ts'

/** What lies on the shelves of Tenter Lane, by the place of the cloth in its list, mm; one length is on its way. */
const LENGTHS = [
  { cloth: 2, mm: 1100, washed: true, place: 'the shelf by the window', comesIn: null },
  { cloth: 1, mm: 2600, washed: false, place: 'the long chest', comesIn: null },
  { cloth: 2, mm: 3500, washed: false, place: '', comesIn: 5 },
] as const

/** And in its drawer: metres of thread, pieces, mm of tape. What is not here was never counted. */
const DRAWER = new Map([
  ['thread:hand', 20],
  ['thread:machine', 850],
  ['notion:button', 14],
  ['notion:tape', 3500],
])

/** Fills the shelves and the drawer of the sample. */
export function stockUp(cloths: readonly string[], context: Context): void {
  const { db } = context.store
  const day = today(context)
  for (const { cloth: at, mm, washed, place, comesIn } of LENGTHS) {
    const cloth = getCloth(db, cloths[at]!)
    const days =
      comesIn === null
        ? { orderedDay: null, expectedDay: null }
        : { orderedDay: day, expectedDay: addDays(day, comesIn) }
    const width = washed ? cloth.width * (1 - cloth.weftShrinkage) : cloth.width
    entered(cloth, { mm, width, washed }, { place, note: '', supplier: '', ...days }, 'stock.add', context)
  }
  for (const thing of thingsOf(context)) {
    const amount = DRAWER.get(thing.id)
    if (amount === undefined) continue
    const act = recount(thing, { day, amount })
    insertSupplyMove(db, { id: context.newId(), supply: thing.id, act, at: context.now() })
  }
}
