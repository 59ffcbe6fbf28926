import { expect } from 'vitest'
import type { Part, Payment } from '../../core/plan/money/types.ts'
import type { Money } from '../../core/words/money.ts'

export const gbp = (minor: number): Money => ({ minor, currency: 'GBP' })

/** A thousand pounds: 40 % on acceptance, 30 % before the cloth is cut, the rest on delivery. */
export const PARTS: Part[] = [
  { when: 'acceptance', amount: gbp(40_000) },
  { when: 'cutting', amount: gbp(30_000) },
  { when: 'delivery', amount: gbp(30_000) },
]

export const entry = (id: string, minor: number, kind: Payment['kind'] = 'payment'): Payment => ({
  ...{ id, day: '2026-11-02', kind, amount: gbp(minor), method: 'transfer', for: null },
})

/** No amount is a part of a penny, and none is a zero with a sign. */
export function whole(amounts: readonly Money[]): void {
  for (const { minor } of amounts)
    expect(Number.isSafeInteger(minor) && !Object.is(minor, -0), String(minor)).toBe(true)
}
