import { leftOf, perHour } from '../price/earning.ts'
import type { Estimate } from '../price/estimate.types.ts'
import { addMoney, type Money, priceOfLength } from '../words/money.ts'
import type { Phrase } from '../words/phrase.ts'

/** What a garment really took; null where nobody wrote it down. Lengths mm, thread m, minutes of its steps. */
export type Took = {
  cloth: number | null
  handThread: number | null
  machineThread: number | null
  minutes: number | null
}

/** A step that took longer than was quoted, minutes. */
export type Overrun = { step: Phrase; quoted: number; actual: number }

/** The one of some steps that took most over its quoted time; null where none did. `actual`: null if nobody logged it. */
export function overrunOf(
  steps: readonly { name: Phrase; quoted: number; actual: number | null }[],
): Overrun | null {
  const over = steps.flatMap(({ name, quoted, actual }) =>
    actual === null || actual <= quoted ? [] : [{ step: name, quoted, actual }],
  )
  return over.sort((a, b) => b.actual - b.quoted - (a.actual - a.quoted))[0] ?? null
}

/** A figure as it was quoted, and as it came out. */
export type Figure<T> = { quoted: T; actual: T | null }

/** Quoted against actual. Hours are all hours: what goes on around the making is taken as it was quoted. */
export type Account = {
  cloth: Figure<number>
  handThread: Figure<number>
  machineThread: Figure<number>
  minutes: Figure<number>
  materials: Figure<Money>
  /** Whether some of its steps have no time logged and count as they were quoted. Accounts of old do not say. */
  inPart?: boolean
  /** The step that took most over its quoted time; none if none did. Accounts of old do not say. */
  overrun?: Overrun | null
  /** What is left for her when materials and workroom costs are paid, and that for one hour. */
  left: Figure<Money>
  perHour: Figure<Money>
  net: Money
}

/** The account of one garment that was sold at its net price. */
export function accountOf(
  { price, purchase, sewing, attendance, brought, charged = purchase.toBuy }: Estimate,
  pricePerMetre: Money,
  took: Took,
): Account {
  const around = attendance?.total.mean ?? 0
  const making = sewing.total.mean
  const metres = (work: 'hand' | 'machine') => sewing.threads.find((use) => use.work === work)?.metres ?? 0
  const more =
    took.cloth === null || brought !== undefined
      ? undefined
      : priceOfLength(pricePerMetre, took.cloth - charged)
  const materials = more === undefined ? price.materials : addMoney(price.materials, more)
  const minutes = took.minutes === null ? null : took.minutes + around
  const costs = overheadOf(price, making + around)
  const left = minutes === null ? null : leftOf(price.net, materials, minutes, costs)
  const quotedLeft = leftOf(price.net, price.materials, making + around, costs)
  return {
    cloth: { quoted: charged, actual: took.cloth },
    handThread: { quoted: metres('hand'), actual: took.handThread },
    machineThread: { quoted: metres('machine'), actual: took.machineThread },
    minutes: { quoted: making + around, actual: minutes },
    materials: { quoted: price.materials, actual: more === undefined ? null : materials },
    left: { quoted: quotedLeft, actual: left },
    perHour: {
      quoted: price.earnedPerHour,
      actual: left === null || minutes === null ? null : perHour(left, minutes),
    },
    net: price.net,
  }
}

/** What an hour cost the workroom when this was quoted; worked out from the whole where a quote of old does not say. */
const overheadOf = ({ earning, overhead }: Estimate['price'], minutes: number): Money =>
  earning?.overheadPerHour ?? perHour(overhead, minutes)

/** Sums over accounts: of all garments, of those whose hours are known, and of those whose cloth was measured. */
export type Totals = {
  garments: number
  net: number
  known: number
  /** Of those known, the ones of which only a part is logged. */
  inPart: number
  knownNet: number
  quotedMinutes: number
  actualMinutes: number
  quotedLeft: number
  actualLeft: number
  clothKnown: number
  quotedCloth: number
  actualCloth: number
}

/** Accounts added up; money in whole minor units. */
export function totalsOf(accounts: readonly Account[]): Totals {
  const sum = (of: readonly Account[], pick: (account: Account) => number) =>
    of.reduce((total, account) => total + pick(account), 0)
  const known = accounts.filter(({ minutes }) => minutes.actual !== null)
  const measured = accounts.filter(({ cloth }) => cloth.actual !== null && cloth.quoted > 0)
  return {
    garments: accounts.length,
    net: sum(accounts, ({ net }) => net.minor),
    known: known.length,
    inPart: known.filter(({ inPart }) => inPart === true).length,
    knownNet: sum(known, ({ net }) => net.minor),
    quotedMinutes: sum(known, ({ minutes }) => minutes.quoted),
    actualMinutes: sum(known, ({ minutes }) => minutes.actual!),
    quotedLeft: sum(known, ({ left }) => left.quoted.minor),
    actualLeft: sum(known, ({ left }) => left.actual!.minor),
    clothKnown: measured.length,
    quotedCloth: sum(measured, ({ cloth }) => cloth.quoted),
    actualCloth: sum(measured, ({ cloth }) => cloth.actual!),
  }
}

/** Totals as they are shown: hours and what an hour earned are of the garments whose hours are known. */
export const together = (totals: Totals, currency: string) => ({
  garments: totals.garments,
  ...{ known: totals.known, inPart: totals.inPart },
  net: { minor: totals.net, currency },
  /** Of those whose hours are known: their price, what of it went into materials and the workroom, and what was left for her. */
  knownNet: { minor: totals.knownNet, currency },
  costs: { minor: totals.knownNet - totals.actualLeft, currency },
  left: { minor: totals.actualLeft, currency },
  minutes: { quoted: totals.quotedMinutes, actual: totals.actualMinutes },
  perHour: {
    quoted: perHour({ minor: totals.quotedLeft, currency }, totals.quotedMinutes),
    actual: perHour({ minor: totals.actualLeft, currency }, totals.actualMinutes),
  },
})
