import type { Letterhead } from '../../quote/types.ts'
import { type Money, printMoney } from '../../words/money.ts'
import { readerIn } from '../../words/readers.ts'
import { refusingAt } from '../../words/refusal.ts'
import type { Reader } from '../../words/say.ts'
import type { Block } from '../block.ts'
import type { Row } from '../cells.ts'
import { layPages } from '../flow.ts'
import { plainText, runsOf } from '../fonts.ts'
import type { PaperDocument } from '../page.ts'
import { footOf, houseHead, type Teller, tellerOf } from '../sheet.ts'

/** Who speaks on a paper about money, and to whom amounts and days are said. */
export type Voice = {
  reader: Reader
  tell: Teller
  amount: (money: Money) => string
  date: (day: string) => string
}

/** The workroom's own language, and its way of writing amounts and days. */
export function voiceOf(house: Letterhead): Voice {
  const reader = readerIn(house)
  const tell = tellerOf(reader)
  return {
    ...{ reader, tell },
    amount: (money) => printMoney(money, reader.locale),
    date: (day) => tell('paper.date', { day: { date: day } }),
  }
}

/** A letter under the workroom's head, with what it is at the foot of each page. */
export function letter(
  house: Letterhead,
  blocks: readonly Block[],
  { title, number, day }: { title: string; number: string; day: string },
): PaperDocument {
  const { tell } = voiceOf(house)
  const foot = tell('paper.money.foot', { title, number, day: { date: day }, house: house.name })
  return layPages(
    [...houseHead(house), { kind: 'space', height: 8 }, ...blocks],
    house.paper,
    footOf(tell, foot),
  )
}

/** Sums under each other at the right, the last over a rule. */
export const sumRows = (
  rows: readonly (readonly [name: string, amount: string, strong?: true])[],
): Block => ({
  kind: 'together',
  blocks: [
    {
      ...{ kind: 'table', headings: false, before: 2.4, look: 'amount' },
      columns: [
        { heading: '', share: 50 },
        { heading: '', share: 80, align: 'right' },
        { heading: '', share: 39, align: 'right' },
      ],
      rows: rows.map(
        ([name, amount, strong]): Row =>
          strong === undefined
            ? { cells: ['', name, amount] }
            : {
                over: 'sum',
                cells: ['', { words: name, look: 'amountTotal' }, { words: amount, look: 'amountTotal' }],
              },
      ),
    },
  ],
})

/**
 * Looks through what people typed in.
 * @throws Refusal at the field that holds a character no font has
 */
export function refuseUnprintableIn(typed: Readonly<Record<string, readonly string[]>>): void {
  for (const [field, texts] of Object.entries(typed))
    for (const text of texts) refusingAt(field, () => runsOf(plainText(text), 'serif'))
}
