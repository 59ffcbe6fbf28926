import type { InputOf } from '../../core/workroom.ts'
import { amountOf, basisPointsOf } from '../parts/amount.ts'

/** What is agreed for a garment, as it stands in its fields: empty where nothing is. */
export type Agreed = {
  set: string
  rush: string
  discount: string
  tax: string
  brought: string
  hand: string
  machine: string
}
export const NOTHING_AGREED: Agreed = {
  ...{ set: '', rush: '', discount: '', tax: '', brought: '', hand: '', machine: '' },
}

type Order = Pick<InputOf<'garment.estimate'>, 'price' | 'brought' | 'threadIds'>

/** What the fields say, for the workroom to check. */
export function orderOf(agreed: Agreed, currency: string): Order {
  const { set, rush, discount, tax, brought, hand, machine } = agreed
  const said = <T>(text: string, read: (text: string) => T) => (text.trim() === '' ? undefined : read(text))
  return {
    price: {
      set: said(set, (text) => amountOf(text, currency)),
      rush: said(rush, basisPointsOf),
      discount: said(discount, basisPointsOf),
      tax: said(tax, basisPointsOf),
    },
    brought: said(brought, (text) => text),
    threadIds: { hand: said(hand, (id) => id), machine: said(machine, (id) => id) },
  }
}
