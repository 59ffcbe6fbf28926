import type { Due } from '../../plan/money/due.ts'
import type { Letterhead } from '../../quote/types.ts'
import type { Day } from '../../words/dates.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { Block } from '../block.ts'
import { capital } from '../names.ts'
import type { PaperDocument } from '../page.ts'
import { addressed } from '../sheet.ts'
import { letter, refuseUnprintableIn, voiceOf } from './letter.ts'

/** What a reminder is written from; `day` is that of the letter. */
export type Reminder = {
  letterhead: Letterhead
  customer: { name: string; address: string[] }
  commissionNumber: string
  day: Day
  due: Due
}

/**
 * A friendly letter about what is due: every part agreed, what is left of each, and since when.
 *
 * @throws Refusal when nothing is due, or at the field that holds a character no font has
 */
export function reminderSheet({ letterhead, customer, commissionNumber, day, due }: Reminder): PaperDocument {
  if (due.since === null) throw new Refusal(phrase('refusal.money.nothingDue', { number: commissionNumber }))
  refuseUnprintableIn({ customer: [customer.name, ...customer.address] })
  const { tell, amount, date } = voiceOf(letterhead)
  const title = tell('paper.reminder.title')
  const blocks: Block[] = [
    addressed(title, tell('paper.money.to'), customer, [
      [tell('paper.money.day'), date(day)],
      [tell('paper.money.commission'), commissionNumber],
    ]),
    {
      ...{ kind: 'paragraph', before: 8 },
      words: tell('paper.reminder.words', {
        ...{ number: commissionNumber, due: due.due, since: { date: due.since.day } },
      }),
    },
    {
      ...{ kind: 'table', before: 5 },
      columns: [
        { heading: tell('paper.reminder.part'), share: 60, head: true },
        { heading: tell('paper.reminder.amount'), share: 34, align: 'right', look: 'amount' },
        { heading: tell('paper.reminder.left'), share: 34, align: 'right', look: 'amount' },
        { heading: tell('paper.reminder.since'), share: 44 },
      ],
      rows: [
        ...due.parts.map(({ when, amount: agreed, left, since }) => ({
          cells: [
            capital(tell(`quote.payment.${when}`)),
            amount(agreed),
            amount(left),
            left.minor === 0
              ? tell('paper.reminder.settled')
              : since === null
                ? tell('paper.reminder.notYet')
                : date(since),
          ],
        })),
        {
          over: 'sum' as const,
          cells: [
            { words: tell('paper.reminder.total'), look: 'amountTotal' as const },
            '',
            { words: amount(due.due), look: 'amountTotal' as const },
            '',
          ],
        },
      ],
    },
    { kind: 'paragraph', words: tell('paper.reminder.ask'), before: 6 },
  ]
  return letter(letterhead, blocks, { title, number: commissionNumber, day })
}
