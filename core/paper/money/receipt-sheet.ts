import type { Receipt } from '../../plan/money/receipt.ts'
import type { Letterhead } from '../../quote/types.ts'
import type { Block } from '../block.ts'
import type { PaperDocument } from '../page.ts'
import { addressed } from '../sheet.ts'
import { letter, refuseUnprintableIn, sumRows, voiceOf } from './letter.ts'

/**
 * The receipt for a payment, or the note of a refund, with what is left to pay after it.
 *
 * @throws Refusal at the field that holds a character no font has
 */
export function receiptSheet(letterhead: Letterhead, receipt: Receipt): PaperDocument {
  const { seller, customer, number, day, kind, amount: paid, method, on } = receipt
  refuseUnprintableIn({
    seller: [seller.name, ...seller.address],
    customer: [customer.name, ...customer.address],
  })
  const house = { ...letterhead, name: seller.name, address: seller.address }
  const { tell, amount, date } = voiceOf(house)
  const title = tell(`paper.${kind}.title`)
  const words = {
    ...{ customer: customer.name, amount: paid },
    method: tell(`money.method.${method}`),
  }
  const blocks: Block[] = [
    addressed(title, tell('paper.money.to'), customer, [
      [tell('paper.money.number'), number],
      [tell('paper.money.day'), date(day)],
      [tell('paper.money.commission'), on],
    ]),
    {
      ...{ kind: 'paragraph', before: 8, look: 'total' },
      words: tell(kind === 'receipt' ? 'paper.receipt.received' : 'paper.receipt.returned', words),
    },
    {
      ...{ kind: 'paragraph', before: 2 },
      words:
        receipt.for === null
          ? tell('paper.receipt.on', { number: on })
          : tell('paper.receipt.for', { number: on, event: tell(`quote.payment.${receipt.for}`) }),
    },
    sumRows([
      [tell('paper.receipt.agreed'), amount(receipt.agreed)],
      [tell('paper.receipt.paid'), amount(receipt.paid)],
      [
        tell(receipt.balance.minor < 0 ? 'paper.money.over' : 'paper.receipt.balance'),
        amount({ ...receipt.balance, minor: Math.abs(receipt.balance.minor) }),
        true,
      ],
    ]),
    { kind: 'write', before: 14, labels: [{ words: tell('paper.receipt.signature'), share: 1 }] },
  ]
  return letter(house, blocks, { title, number, day })
}
