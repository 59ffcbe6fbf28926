import { leftOf, perHour } from '../price/earning.ts'
import type { Estimate } from '../price/estimate.types.ts'
import { addMoney, type Money, priceOfLength, sumMoney } from '../words/money.ts'

/** What a garment really took; null where nobody wrote it down. Lengths mm, thread m, minutes of its steps. */
export type Took = {
  cloth: number | null
  handThread: number | null
  machineThread: number | null
  minutes: number | null
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

/** Several accounts as one: sums, and what they earned an hour together. Only those whose hours are known count. */
export function accountsTogether(accounts: readonly Account[], currency: string) {
  const known = accounts.filter(({ minutes }) => minutes.actual !== null)
  const sum = (pick: (account: Account) => number) =>
    known.reduce((total, account) => total + pick(account), 0)
  const money = (of: readonly Account[], pick: (account: Account) => Money) =>
    sumMoney(of.map(pick), currency)
  const quoted = sum(({ minutes }) => minutes.quoted)
  const actual = sum(({ minutes }) => minutes.actual!)
  return {
    garments: accounts.length,
    known: known.length,
    net: money(accounts, ({ net }) => net),
    minutes: { quoted, actual },
    perHour: {
      quoted: perHour(
        money(known, ({ left }) => left.quoted),
        quoted,
      ),
      actual: perHour(
        money(known, ({ left }) => left.actual!),
        actual,
      ),
    },
  }
}
