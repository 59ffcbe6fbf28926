import { comeIn, reserve } from '../../core/plan/stock/acts.ts'
import { clothLength } from '../../core/plan/stock/balance.ts'
import type { ClothNeed } from '../../core/plan/stock/need.ts'
import { type Article, type Shopping, shoppingList } from '../../core/plan/stock/shopping.ts'
import type { ClothLength, Move } from '../../core/plan/stock/types.ts'

export const day = '2026-11-02'
export const ARTICLES: Article[] = [
  { id: 'linen', kind: 'cloth', step: 100, supplierId: 'draper' },
  { id: 'wool', kind: 'cloth', step: 914.4, supplierId: 'weaver' },
  { id: 'silk', kind: 'thread', step: 100, supplierId: 'draper' },
  { id: 'buttons', kind: 'notion', step: 1, supplierId: null },
]
export const SUPPLIERS = [
  { id: 'draper', name: 'The draper', leadDays: 5 },
  { id: 'weaver', name: 'The weaver', leadDays: 42 },
]
export const need = (garmentId: string, clothId: string, least: number, strip = 0): ClothNeed => ({
  ...{ garmentId, clothId, least, length: least * 1.02, width: 1455, strip },
  shrinkage: { warp: 0.06, weft: 0.03 },
})
export const lying = (id: string, clothId: string, moves: readonly Move[]): ClothLength =>
  clothLength({ id, clothId }, moves)
export const came = (mm: number, washed = false) => [
  comeIn([], { day, mm, width: washed ? 1455 : 1500, washed }),
]
export const promised = (moves: readonly Move[], garmentId: string, mm: number) => [
  ...moves,
  reserve(moves, { day, garmentId, mm }),
]
export const shop = (more: Partial<Shopping>) =>
  shoppingList({
    ...{ articles: ARTICLES, suppliers: SUPPLIERS, cloths: [], lengths: [], smalls: [], left: new Map() },
    ...more,
  })
