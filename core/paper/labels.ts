import type { Letterhead } from '../quote/types.ts'
import type { Day } from '../words/dates.ts'
import { readerIn } from '../words/readers.ts'
import { say } from '../words/say.ts'
import { layPages } from './flow.ts'
import type { Label } from './label-rows.ts'
import { capital } from './names.ts'
import type { PaperDocument } from './page.ts'
import { footOf, type GarmentSheet, refuseUnprintable, tellerOf } from './sheet.ts'

/** What the labels of one commission are printed from. */
export type Labels = {
  letterhead: Letterhead
  commissionNumber: string
  day: Day
  garments: readonly Pick<GarmentSheet, 'snapshot' | 'line' | 'copy'>[]
}

/**
 * Labels to pin to what is cut: one for every piece of every garment, with whose it is, how many copies lie under it and
 * which way its grain runs.
 *
 * @throws Refusal at the field that holds a character no font has
 */
export function labelSheets({ letterhead, commissionNumber, day, garments }: Labels): PaperDocument {
  const reader = readerIn(letterhead)
  const tell = tellerOf(reader)
  const labels = garments.flatMap(({ snapshot, line, copy }): Label[] => {
    refuseUnprintable(snapshot)
    const which =
      line.quantity === 1 ? '' : ` (${tell('paper.fact.copyOf', { copy, quantity: line.quantity })})`
    return line.estimate.draft.pieces.map(({ name, copies, grain }) => {
      const mirrored = copies.filter((one) => one.mirrored).length
      const mixed = mirrored > 0 && mirrored < copies.length
      return {
        lines: [
          { words: `${commissionNumber} · ${snapshot.customer.name}`, look: 'label' },
          { words: capital(say(line.title, reader)) + which, look: 'cellStrong' },
          { words: line.wearer.name, look: 'cell' },
          { words: capital(say(name, reader)), look: 'subheading' },
          {
            words: tell(mixed ? 'paper.label.mirrored' : 'paper.label.count', {
              count: copies.length,
              mirrored,
            }),
            look: 'cellStrong',
          },
        ],
        ...{ grain, grainWord: tell('paper.label.grain') },
      }
    })
  })
  const foot = tell('paper.label.foot', {
    number: commissionNumber,
    day: { date: day },
    house: letterhead.name,
  })
  return layPages([{ kind: 'labels', labels }], letterhead.paper, footOf(tell, foot))
}
