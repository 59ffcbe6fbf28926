import type { Price, PriceLine } from '../price/types.ts'
import { addMoney, type Money, subtractMoney, sumMoney } from '../words/money.ts'

/**
 * What was asked before tax, what the reckoning alone came to, and the floor that was told with it. Floor and the pay it
 * stands for are null where a quote of old does not say.
 */
export type Asked = { net: Money; reckoned: Money; floor: Money | null; target: Money | null }

/** Lines by which a maker asks for more or less than is reckoned. */
const HERS: readonly PriceLine['kind'][] = ['discount', 'set']

/** How the price that was asked for one garment stands to the reckoning. */
export const askedFor = ({ net, lines, earning }: Pick<Price, 'net' | 'lines' | 'earning'>): Asked => ({
  net,
  reckoned: subtractMoney(
    net,
    sumMoney(
      lines.filter(({ kind }) => HERS.includes(kind)).map(({ amount }) => amount),
      net.currency,
    ),
  ),
  floor: earning?.floor ?? null,
  target: earning?.targetPerHour ?? null,
})

/** The same of several garments. A floor that is not known of one is not known of all of them. */
export function askedTogether(garments: readonly Asked[], currency: string): Asked {
  const sum = (of: readonly Money[]) => sumMoney(of, currency)
  const floors = garments.flatMap(({ floor }) => floor ?? [])
  return {
    net: sum(garments.map(({ net }) => net)),
    reckoned: sum(garments.map(({ reckoned }) => reckoned)),
    floor: floors.length === garments.length && floors.length > 0 ? sum(floors) : null,
    target: garments[0]?.target ?? null,
  }
}

/** What goes off a price before something is left for her: each sort of material, and the workroom. */
export const COSTS = ['cloth', 'thread', 'notion', 'workroom'] as const
/** One line of what a price went into. `actual`: null where it goes by the hours and no time is logged. */
export type Cost = { id: (typeof COSTS)[number]; quoted: Money; actual: Money | null }

type Known = Record<'materials' | 'left', { quoted: Money; actual: Money | null }> & { net: Money }

/**
 * What a price went into, so that price less these is to the penny what is left. More or less cloth than was charged
 * counts where it was written down; thread and notions count as they were quoted. What there is nothing of is left out.
 */
export function costsOf({ lines }: Pick<Price, 'lines'>, { net, materials, left }: Known): Cost[] {
  const material = (kind: PriceLine['kind']) =>
    sumMoney(
      lines.filter((line) => line.kind === kind).map(({ amount }) => amount),
      net.currency,
    )
  const spent = materials.actual ?? materials.quoted
  const [cloth, thread, notion] = [material('cloth'), material('thread'), material('notion')]
  const gone = (on: Money, rest: Money) => subtractMoney(subtractMoney(net, on), rest)
  const all: Cost[] = [
    { id: 'cloth', quoted: cloth, actual: addMoney(cloth, subtractMoney(spent, materials.quoted)) },
    { id: 'thread', quoted: thread, actual: thread },
    { id: 'notion', quoted: notion, actual: notion },
    {
      id: 'workroom',
      quoted: gone(materials.quoted, left.quoted),
      actual: left.actual === null ? null : gone(spent, left.actual),
    },
  ]
  return all.filter(({ quoted, actual }) => quoted.minor !== 0 || (actual !== null && actual.minor !== 0))
}

/** Price, costs and what is left, of several garments whose hours are known. */
export function costsTogether(garments: readonly (Known & { costs: readonly Cost[] })[], currency: string) {
  const sum = (of: readonly Money[]) => sumMoney(of, currency)
  const costs = garments.flatMap((one) => one.costs)
  return {
    net: sum(garments.map(({ net }) => net)),
    costs: COSTS.flatMap((id): Cost[] => {
      const own = costs.filter((cost) => cost.id === id)
      if (own.length === 0) return []
      return [
        {
          id,
          quoted: sum(own.map(({ quoted }) => quoted)),
          actual: sum(own.flatMap(({ actual }) => actual ?? [])),
        },
      ]
    }),
    left: {
      quoted: sum(garments.map(({ left }) => left.quoted)),
      actual: sum(garments.flatMap(({ left }) => left.actual ?? [])),
    },
  }
}
