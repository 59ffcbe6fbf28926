import { printDate } from '../../core/words/dates.ts'
import { type Reader, say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import type { useTell } from '../workroom.tsx'
import { buySaid, type Item } from './amounts.ts'

type Tell = ReturnType<typeof useTell>
type For = Pick<Item['garments'][number], 'title' | 'wearer' | 'number'>

/** A garment as the maker knows it: what it is, for whom, and in which commission. */
export const garmentSaid = ({ title, wearer, number }: For, tell: Tell, reader: Reader): string =>
  tell('life.stock.ofCommission', {
    garment: tell('paper.garment.forWhom', { title: say(title, reader), wearer }),
    number,
  })

/** The list for a letter or a message to the shop: who it is for is nobody's business there. */
export function listAsText(
  { day, suppliers }: OutputOf<'shopping.list'>,
  tell: Tell,
  reader: Reader,
): string {
  const parts = suppliers.map(({ supplier, items }) =>
    [
      supplier ?? tell('shopping.nobody'),
      ...items.map(
        (item) => `– ${tell('shopping.item', { name: say(item.name, reader), amount: buySaid(tell, item) })}`,
      ),
    ].join('\n'),
  )
  return [`${tell('shopping.title')}, ${printDate(day, reader.locale)}`, ...parts].join('\n\n')
}
