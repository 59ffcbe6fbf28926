import type { NotionStock } from './notions.ts'
import type { ThreadStock } from './thread-stock.ts'
import type { Rates } from './types.ts'

/**
 * Rates to begin with, in pounds: common practice, and the first thing a maker sets to her own. Overhead is
 * yearly fixed costs ÷ billable hours (6000 ÷ 1000).
 */
export const DEFAULT_RATES: Rates = {
  currency: 'GBP',
  perHour: {
    handSewing: gbp(1600),
    machineSewing: gbp(1600),
    cutting: gbp(1800),
    pressing: gbp(1400),
    fitting: gbp(2000),
    attending: gbp(1400),
  },
  overheadPerHour: gbp(600),
  targetPerHour: gbp(1400),
  profit: { kind: 'margin', basisPoints: 1500 },
  tax: { name: 'VAT', basisPoints: 0 },
  rounding: { step: 500, direction: 'up' },
  depositBasisPoints: 4000,
  instalments: [],
}

/** Linen thread for the hand, cotton for the machine (common practice). */
export const DEFAULT_THREAD_STOCK: ThreadStock = {
  hand: { name: 'linen thread', metresPerReel: 100, pricePerReel: gbp(480) },
  machine: { name: 'cotton thread', metresPerReel: 500, pricePerReel: gbp(520) },
}

/** Plain buttons, hooks and eyes, and linen tape and cord (common practice). */
export const DEFAULT_NOTION_STOCK: NotionStock = {
  ...{ button: gbp(60), hook: gbp(25), clasp: gbp(650), point: gbp(180) },
  ...{ lace: gbp(220), cord: gbp(150), tape: gbp(90), trim: gbp(450) },
}

function gbp(minor: number) {
  return { minor, currency: 'GBP' }
}
