import { type Day, daysBetween } from '../../words/dates.ts'
import { fromHundredths, hundredths } from './exact.ts'
import { type ClothNeed, lengthNeeded, metBy, UNWASHED } from './need.ts'
import { whyNot } from './offer.ts'
import type { ClothLength } from './types.ts'

/** Cloth of open work, and the day it is needed, if there is one. */
export type DatedCloth = { need: ClothNeed; day: Day | null }

/** What a garment lacks of something: unwashed cloth in mm, thread in metres, notions in pieces or mm. */
export type Lack = { articleId: string; garmentId: string; missing: number; day: Day | null }

/** A length that is free and would do for a garment: to be promised to it, instead of buying. */
export type FromStock = { lengthId: string; garmentId: string; mm: number }

/** Cloth that a garment has already, promised or cut, mm of a length as it lies. */
type Had = Pick<ClothLength, 'clothId' | 'washed' | 'shrinkage'> & { garmentId: string; left: number }

/**
 * What open work lacks of its cloths: its needs, less what was promised to it or cut for it, less the free lengths
 * that would do in one piece. Who needs it first is served first, by the shortest that is enough, and nothing is
 * counted twice. Whoever has all but the margin lacks nothing: that is what the margin is for, and a hand's breadth
 * more could not be joined to it anyway.
 */
export function missingCloth(
  wanted: readonly DatedCloth[],
  lengths: readonly ClothLength[],
): { lacks: Lack[]; fromStock: FromStock[] } {
  const had = lengths.flatMap(hadOf)
  const free = new Map(lengths.map((length) => [length.id, length.free]))
  const fromStock: FromStock[] = []
  const lacks = byDay(wanted).flatMap(({ need, day }): Lack[] => {
    const { garmentId, clothId } = need
    const rest = { ...need, length: lessHad(need, had) }
    if (hundredths(need.length - rest.length) >= hundredths(need.least)) return []
    const stock = lengths
      .filter((length) => length.clothId === clothId)
      .filter((length) => whyNot(rest, length, free.get(length.id)!) === undefined)
      .sort((a, b) => free.get(a.id)! - free.get(b.id)!)
      .at(0)
    if (stock === undefined)
      return [{ ...{ articleId: clothId, garmentId, day }, missing: lengthNeeded(rest, UNWASHED) }]
    const mm = lengthNeeded(rest, stock)
    free.set(stock.id, fromHundredths(hundredths(free.get(stock.id)!) - hundredths(mm)))
    fromStock.push({ lengthId: stock.id, garmentId, mm })
    return []
  })
  return { lacks, fromStock }
}

/** The earliest day first; what has no day comes last, in the order given. */
export const byDay = <T extends { day: Day | null }>(all: readonly T[]): T[] =>
  [...all].sort((a, b) =>
    a.day === null || b.day === null
      ? Number(a.day === null) - Number(b.day === null)
      : daysBetween(b.day, a.day),
  )

/** What is still needed, washed, when what the garment has already is taken, which then serves no other need of it. */
function lessHad(need: ClothNeed, had: Had[]): number {
  let length = need.length
  for (const one of had) {
    if (one.garmentId !== need.garmentId || one.clothId !== need.clothId || hundredths(length) === 0) continue
    const mm = Math.min(one.left, lengthNeeded({ ...need, length }, one))
    one.left -= mm
    length = Math.max(0, length - metBy(need, one, mm))
  }
  return length
}

/** What was cut before a washing counts as unwashed, whatever the rest of the length is now. */
const hadOf = ({ clothId, washed, shrinkage, reservedFor, usedBy }: ClothLength): Had[] => [
  ...reservedFor.map(({ garmentId, mm }) => ({ clothId, washed, shrinkage, garmentId, left: mm })),
  ...usedBy.flatMap(({ garmentId, mm, unwashed }) => [
    { clothId, washed: false, shrinkage, garmentId, left: unwashed },
    { clothId, washed: true, shrinkage, garmentId, left: mm - unwashed },
  ]),
]
