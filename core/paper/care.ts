import type { Fibre } from '../lay/fibres.ts'

/**
 * Washing by fibre, in the five steps of ISO 3758 (from memory, edition of 2012: iron dots at 110, 150 and 200 °C). What
 * suits each fibre, given that its cloth was washed before it was cut, is common practice.
 */

/** The hottest wash, °C; by hand where it must not be moved about. */
const WASHES = ['hand30', 'gentle30', 'wash40', 'wash60'] as const
/** Dots of the iron, from the coolest. */
const IRONS = ['one', 'two', 'three'] as const
const DRYINGS = ['flat', 'line'] as const

/** How a cloth is washed (the number is °C at the most), dried and ironed. */
export type Care = {
  wash: (typeof WASHES)[number]
  dry: (typeof DRYINGS)[number]
  iron: (typeof IRONS)[number]
}

const BY_FIBRE: Record<Fibre, Care> = {
  linen: { wash: 'wash60', dry: 'line', iron: 'three' },
  cotton: { wash: 'wash60', dry: 'line', iron: 'three' },
  wool: { wash: 'hand30', dry: 'flat', iron: 'two' },
  silk: { wash: 'hand30', dry: 'flat', iron: 'one' },
  other: { wash: 'hand30', dry: 'flat', iron: 'one' },
}

/** What every one of these fibres bears: a lining is washed with its garment. */
export function careOf(fibres: readonly Fibre[]): Care {
  const least = <T>(order: readonly T[], pick: (care: Care) => T): T =>
    order[Math.min(...fibres.map((one) => order.indexOf(pick(BY_FIBRE[one]))))]!
  return {
    wash: least(WASHES, ({ wash }) => wash),
    dry: least(DRYINGS, ({ dry }) => dry),
    iron: least(IRONS, ({ iron }) => iron),
  }
}
