import { PURCHASE_LINES } from '../lay/purchase.ts'
import type { Purchase } from '../lay/types.ts'
import type { Estimate } from '../price/estimate.types.ts'
import { sharedBy } from '../quote/shared.ts'
import type { QuotedCloth, QuoteLine } from '../quote/types.ts'
import { stitchesUsed } from '../sew/worked.ts'
import { numberFormat } from '../words/formats.ts'
import { printLength, roundedUp } from '../words/length.ts'
import { type PhraseCode, phrase } from '../words/phrase.ts'
import type { Reader } from '../words/say.ts'
import type { Block } from './block.ts'
import { nameOf } from './names.ts'
import { type GarmentSheet, listed, tellerOf } from './sheet.ts'

/**
 * For each cloth what to buy and how it is reckoned, then how to wash it and what width that leaves. A length that
 * several garments are cut from together is told once for all of them, and never added up.
 */
export function clothBlocks({ snapshot, line, clothNow }: GarmentSheet, reader: Reader): Block[] {
  const tell = tellerOf(reader)
  const { cloth, others, estimate } = line
  const shared = sharedBy(snapshot, line)
  return [
    { kind: 'heading', level: 2, words: tell('paper.cloth.title') },
    ...(shared === undefined
      ? []
      : [
          {
            kind: 'paragraph' as const,
            words: tell('paper.cloth.shared', {
              length: { mm: roundedUp(shared.purchase.toBuy, reader.unit) },
              garments: shared.lines.length,
            }),
          },
        ]),
    oneCloth(cloth, shared ?? estimate, reader, clothNow),
    ...(estimate.others ?? []).flatMap((other): Block[] => [
      { kind: 'heading', level: 3, words: tell(`paper.cloth.${other.role}`) },
      oneCloth(others![other.role]!, other, reader),
    ]),
  ]
}

function oneCloth(
  cloth: QuotedCloth,
  { purchase, lay }: Pick<Estimate, 'lay' | 'purchase'>,
  reader: Reader,
  now?: GarmentSheet['clothNow'],
): Block {
  const tell = tellerOf(reader)
  const name: Block = {
    ...{ kind: 'paragraph', before: 0 },
    words: tell('paper.cloth.name', { name: cloth.name, fibre: cloth.fibre }),
  }
  const total = (words: string): Block => ({ kind: 'paragraph', words, look: 'total' })
  // Once it is measured, what was to be bought and what washing might take of it are past.
  if (now?.at === 'measured')
    return {
      ...{ kind: 'beside', share: 0.62, before: 2 },
      left: [
        name,
        total(
          tell('paper.cloth.measured', {
            ...now,
            width: { mm: now.width },
            length: { mm: now.length },
            day: { date: now.day },
          }),
        ),
        listed([
          tell(cloth.selvedge > 0 ? 'paper.cloth.toLay' : 'paper.cloth.toLay.whole', {
            width: { mm: lay.usableWidth },
            lay: { mm: lay.length },
          }),
        ]),
      ],
      right: [],
    }
  const percent = numberFormat(reader.locale, { style: 'percent', maximumFractionDigits: 1 })
  const wash = [
    tell('paper.cloth.wash', {
      warp: percent.format(cloth.warpShrinkage),
      weft: percent.format(cloth.weftShrinkage),
    }),
    tell(cloth.selvedge > 0 ? 'paper.cloth.usable' : 'paper.cloth.usable.whole', {
      width: { mm: lay.usableWidth },
    }),
    ...(purchase.testStrip > 0 ? [tell('paper.cloth.testStrip', { strip: { mm: purchase.testStrip } })] : []),
  ]
  const buy =
    now === undefined
      ? tell('paper.cloth.buy', {
          length: { mm: roundedUp(purchase.toBuy, reader.unit) },
          width: { mm: cloth.width },
        })
      : now.coming === undefined
        ? tell('paper.cloth.aside', { length: { mm: now.mm } })
        : now.coming === null
          ? tell('paper.cloth.asideComing', { length: { mm: now.mm } })
          : tell('paper.cloth.asideUntil', { length: { mm: now.mm }, day: { date: now.coming } })
  return {
    ...{ kind: 'beside', share: 0.52, before: 2 },
    left: [name, total(buy), listed(wash)],
    right: [reckoning(purchase, reader, now === undefined)],
  }
}

function reckoning(purchase: Purchase, reader: Reader, toBuy: boolean): Block {
  const tell = tellerOf(reader)
  const code = (id: (typeof PURCHASE_LINES)[number]): PhraseCode => `paper.cloth.line.${id}`
  const size = (mm: number) => printLength(mm, reader.unit, reader.locale)
  const atLeast = (mm: number) => size(roundedUp(mm, reader.unit))
  return {
    kind: 'table',
    headings: false,
    before: 0,
    pad: { above: 0.6, below: 0.6, gap: 3 },
    columns: [
      { heading: '', share: 64 },
      { heading: '', share: 36, align: 'right' },
    ],
    rows: [
      ...PURCHASE_LINES.filter((id) => id === 'layLength' || purchase[id] > 0).map((id) => ({
        cells: [tell(code(id)), id === 'needed' ? atLeast(purchase[id]) : size(purchase[id])],
      })),
      ...(toBuy ? [{ cells: [tell('paper.cloth.toBuy'), atLeast(purchase.toBuy)], strong: true }] : []),
    ],
  }
}

const toTenth = (metres: number): number => Math.round(metres * 10) / 10

/** Thread of each sort to a tenth of a metre, as it is shopped for, and which stitch sews what of this garment. */
export function threadBlocks({ estimate }: QuoteLine, reader: Reader): Block[] {
  const tell = tellerOf(reader)
  const { threads } = estimate.sewing
  const metres = numberFormat(reader.locale, { minimumFractionDigits: 1, maximumFractionDigits: 1 })
  const { seams, hems } = estimate.draft
  const used = stitchesUsed(estimate.sewing.rows, hems).map(({ worked, stitch }) => [
    tell(`paper.plan.${worked}`),
    nameOf('stitch', stitch, reader),
  ])
  const leftRaw = estimate.finishPlan.edges === null && seams.some(({ finish }) => finish === 'open')
  if (threads.length + used.length === 0) return []
  return [
    { kind: 'heading', level: 2, words: tell('paper.thread.title') },
    {
      kind: 'beside',
      share: 0.5,
      before: 2.4,
      left: [
        {
          kind: 'table',
          before: 0,
          columns: [
            { heading: tell('paper.thread.column.sort'), share: 34 },
            { heading: tell('paper.thread.column.sewn'), share: 18, align: 'right' },
            { heading: tell('paper.thread.column.wasted'), share: 18, align: 'right' },
            { heading: tell('paper.thread.column.metres'), share: 20, align: 'right', look: 'cellStrong' },
          ],
          rows: threads.map(({ work, sewn, metres: all }) => ({
            cells: [
              tell(`paper.thread.${work}`),
              metres.format(toTenth(sewn)),
              // What is left, so that the line adds up as it is printed.
              metres.format(toTenth(all) - toTenth(sewn)),
              metres.format(toTenth(all)),
            ],
          })),
        },
      ],
      right: [
        {
          kind: 'table',
          before: 0,
          columns: [
            { heading: tell('paper.plan.column.work'), share: 50 },
            { heading: tell('paper.plan.column.stitch'), share: 50 },
          ],
          rows: [...used, ...(leftRaw ? [[tell('paper.plan.edges'), tell('paper.plan.none')]] : [])].map(
            (cells) => ({ cells }),
          ),
        },
      ],
    },
  ]
}

/** Buttons, hooks, tape, lace: how many or how long, nothing when the garment has none. */
export function notionBlocks({ estimate }: QuoteLine, reader: Reader): Block[] {
  const tell = tellerOf(reader)
  const notions = estimate.draft.notions ?? []
  if (notions.length === 0) return []
  return [
    { kind: 'heading', level: 2, words: tell('paper.notions.title') },
    listed(
      notions.map((notion) => {
        const name = phrase(`draft.notion.${notion.notion}`)
        return 'count' in notion
          ? tell('paper.notions.count', { notion: name, count: notion.count })
          : tell('paper.notions.length', { notion: name, length: { mm: roundedUp(notion.mm, reader.unit) } })
      }),
    ),
  ]
}
