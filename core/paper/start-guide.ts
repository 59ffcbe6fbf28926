import type { Letterhead } from '../quote/types.ts'
import { PLACES } from '../words/places.ts'
import { readerIn } from '../words/readers.ts'
import type { Block } from './block.ts'
import { layPages } from './flow.ts'
import type { PaperDocument } from './page.ts'
import { footOf, listed, tellerOf } from './sheet.ts'

const STEPS = ['name', 'client', 'measures', 'cloth', 'rates', 'quote', 'accept'] as const
const KEYS = ['find', 'print', 'undo', 'help'] as const
const SAFE = ['copies', 'away', 'hands'] as const

/** One page to lie beside the keyboard in the first hour: the way to a first quote, the places, and what keeps it safe. */
export function startGuide(letterhead: Letterhead): PaperDocument {
  const tell = tellerOf(readerIn(letterhead))
  const heading = (words: string): Block => ({ kind: 'heading', level: 2, words })
  const blocks: Block[] = [
    { kind: 'heading', level: 1, words: tell('start.title') },
    { kind: 'paragraph', words: tell('start.about'), before: 1 },
    heading(tell('start.steps')),
    {
      kind: 'table',
      columns: [
        { heading: tell('start.column.number'), share: 9, align: 'right' },
        { heading: tell('start.column.what'), share: 44, look: 'cellStrong', head: true },
        { heading: tell('start.column.how'), share: 119 },
      ],
      rows: STEPS.map((id, i) => ({
        cells: [String(i + 1), tell(`start.step.${id}`), tell(`start.step.${id}.how`)],
      })),
    },
    heading(tell('start.places')),
    {
      kind: 'table',
      columns: [
        { heading: tell('start.column.place'), share: 34, look: 'cellStrong', head: true },
        { heading: tell('start.column.for'), share: 138 },
      ],
      rows: PLACES.map((place) => ({
        cells: [tell(`screen.room.${place}`), tell(`start.place.${place}`)],
      })),
    },
    {
      ...{ kind: 'beside', share: 0.5, before: 4 },
      left: [heading(tell('start.keys')), listed(KEYS.map((id) => tell(`start.key.${id}`)))],
      right: [heading(tell('start.safe')), listed(SAFE.map((id) => tell(`start.safe.${id}`)))],
    },
  ]
  return layPages(blocks, letterhead.paper, footOf(tell, tell('start.foot', { workroom: letterhead.name })))
}
