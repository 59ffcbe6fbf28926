import type { Letterhead, QuoteLine, QuoteSnapshot } from '../quote/types.ts'
import type { Day } from '../words/dates.ts'
import { type Phrase, type PhraseCode, type PhraseValue, phrase } from '../words/phrase.ts'
import { readerIn } from '../words/readers.ts'
import { refusingAt } from '../words/refusal.ts'
import { type Reader, say } from '../words/say.ts'
import type { Block } from './block.ts'
import type { Foot } from './flow.ts'
import { plainText, runsOf } from './fonts.ts'
import { capital } from './names.ts'

/** What the sheets of one garment are made from. */
export type GarmentSheet = {
  snapshot: QuoteSnapshot
  line: QuoteLine
  commissionNumber: string
  /** Which of the line's copies, from 1. */
  copy: number
  /** Which draft of the garment, where it was drafted again; the first, if not said. */
  draft?: number
  /** The day the sheet is made. */
  day: Day
  /** How its own cloth is off by now: measured after the wash, mm, or set aside; nothing where it is still to be got. */
  clothNow?:
    | { at: 'measured'; day: Day; width: number; length: number }
    | { at: 'aside'; mm: number; coming?: Day | null }
  /** When each step was done: step id → instant. */
  stepsDone: Readonly<Record<string, string>>
  /** Work that came up in the making, at a fitting or with a new draft; minutes, and the instant it was done. */
  cameUp?: readonly { name: Phrase; minutes: number; doneAt: string | null }[]
  /** Ids of the choices whose numbers are lengths in mm; other numbers are printed as they are. */
  lengthChoices?: readonly string[]
  /** The days on which it is due and worn, where they are known. */
  due?: Day | undefined
  worn?: Day | undefined
  /** What is noted of the wearer and of the order: for the bench alone, never for a paper that goes to the client. */
  noted?: { wearer: string; order: string }
  /** IANA time zone that tells on which day a step was done; UTC when not given. */
  timeZone?: string
}

/** Says a sentence of the catalogue to one reader. */
export type Teller = (code: PhraseCode, params?: Record<string, PhraseValue>) => string

/** The language and units in which a quote was made, and in which all its papers speak. */
export const readerOf = ({ letterhead }: QuoteSnapshot): Reader => readerIn(letterhead)

/** Binds sentences of the catalogue to one reader. */
export const tellerOf =
  (reader: Reader): Teller =>
  (code, params) =>
    say(phrase(code, params), reader)

/**
 * Looks through everything that people typed in and that a sheet may print.
 *
 * @throws Refusal at the field that holds a character no font has
 */
export function refuseUnprintable(snapshot: QuoteSnapshot): void {
  const { letterhead: house, customer, lines, terms } = snapshot
  const typed: (readonly [field: string, text: string])[] = [
    ['number', snapshot.number],
    ['letterhead.name', house.name],
    ...house.address.map((text, i) => [`letterhead.address.${i}`, text] as const),
    ['letterhead.email', house.email],
    ['letterhead.phone', house.phone],
    ['customer.name', customer.name],
    ...customer.address.map((text, i) => [`customer.address.${i}`, text] as const),
    ...lines.flatMap(({ wearer, cloth, others = {}, measurementSet }, i) => [
      ...[measurementSet.over ?? '', ...(measurementSet.told ?? [])].map(
        (text) => [`lines.${i}.measurementSetId`, text] as const,
      ),
      [`lines.${i}.wearer.name`, wearer.name] as const,
      [`lines.${i}.cloth.name`, cloth.name] as const,
      ...Object.entries(others).map(
        ([role, other]) => [`lines.${i}.others.${role}.name`, other.name] as const,
      ),
    ]),
    ['tax.name', snapshot.tax.name],
    ...terms.map((text, i) => [`terms.${i}`, text] as const),
  ]
  for (const [field, text] of typed) refusingAt(field, () => runsOf(plainText(text), 'serif'))
}

/** What stands under every page of a sheet for the bench, with its draft where that is not the first. */
export const garmentFoot = (tell: Teller, words: string, { draft = 1 }: GarmentSheet): Foot =>
  footOf(tell, draft === 1 ? words : `${tell('paper.foot.draft', { number: String(draft) })} · ${words}`)

/** What stands under every page: what it is, of when, and which page of how many. */
export const footOf = (tell: Teller, left: string): Foot => ({
  left,
  page: (page, pages) => tell('paper.foot.page', { page: String(page), pages: String(pages) }),
})

/** The workroom's name and address across the head of the first page. */
export const letterhead = ({ letterhead: house }: QuoteSnapshot): Block[] => houseHead(house)

/** A mark stands no taller than this over the name, mm. */
const TALLEST_MARK = 18

/** What stands over a paper: mark and name of the workroom, and how it is reached. */
export function houseHead(house: Letterhead): Block[] {
  const lines = [...house.address, house.phone, house.email].filter((text) => text.trim() !== '')
  return [
    {
      kind: 'beside',
      share: 0.6,
      left: [
        ...(house.mark === undefined
          ? []
          : [{ kind: 'picture' as const, ...house.mark, most: TALLEST_MARK, alt: house.name }]),
        { kind: 'paragraph', words: house.name, look: 'house', before: 1 },
      ],
      right: lines.map(
        (words): Block => ({ kind: 'paragraph', words, look: 'note', align: 'right', before: 0 }),
      ),
    },
    { kind: 'rule', rule: 'house', before: 4 },
  ]
}

/** Labels with their values, one under the other. */
export const facts = (rows: readonly (readonly [label: string, value: string])[], share = 0.4): Block => ({
  kind: 'table',
  headings: false,
  before: 0,
  pad: { above: 0.7, below: 0.7, gap: 3 },
  columns: [
    { heading: '', share, look: 'label', head: true },
    { heading: '', share: 1 - share, look: 'cellStrong' },
  ],
  rows: rows.map((cells) => ({ cells })),
})

/** The head of a letter: what it is, to whom, and its facts at the right. */
export const addressed = (
  title: string,
  label: string,
  { name, address }: { name: string; address: readonly string[] },
  rows: readonly (readonly [label: string, value: string])[],
): Block => ({
  kind: 'beside',
  share: 0.52,
  left: [
    { kind: 'heading', level: 1, words: title },
    { kind: 'paragraph', words: label, look: 'label', before: 4 },
    { kind: 'paragraph', words: name, look: 'total', before: 0.4 },
    ...address.map((words): Block => ({ kind: 'paragraph', words, before: 0 })),
  ],
  right: [
    { kind: 'space', height: 0 },
    { kind: 'paragraph', words: ' ', look: 'title', before: 0 },
    facts(rows),
  ],
})

/** Sentences as a list. */
export const listed = (items: readonly string[]): Block => ({ kind: 'list', items })

/** The head of a sheet for the bench: what it is, for which garment, and its papers. */
export function garmentHead(tell: Teller, title: string, sheet: GarmentSheet): Block[] {
  const { snapshot, line, commissionNumber, copy, day, due, worn } = sheet
  const on = (label: string, value: Day | undefined) =>
    value === undefined ? [] : [[label, tell('paper.date', { day: { date: value } })] as const]
  return [
    {
      kind: 'beside',
      share: 0.56,
      left: [
        { kind: 'paragraph', words: snapshot.letterhead.name, look: 'label', before: 0 },
        { kind: 'heading', level: 1, words: title },
        {
          kind: 'paragraph',
          words: capital(tell('paper.garment.forWhom', { title: line.title, wearer: line.wearer.name })),
          look: 'total',
          before: 1,
        },
      ],
      right: [
        facts([
          [tell('paper.fact.commission'), commissionNumber],
          ...on(tell('life.days.due'), due),
          ...on(tell('life.days.worn'), worn),
          [tell('paper.fact.copy'), tell('paper.fact.copyOf', { copy, quantity: line.quantity })],
          [tell('paper.fact.quote'), snapshot.number],
          [tell('paper.fact.customer'), snapshot.customer.name],
          [tell('paper.fact.day'), tell('paper.date', { day: { date: day } })],
        ]),
      ],
    },
    { kind: 'rule', rule: 'house', before: 3 },
  ]
}
