import type { Draft, Seam, Span, Stage, Step } from '../draft/types.ts'
import type { Row as StitchRow } from '../sew/types.ts'
import { dayAt } from '../words/dates.ts'
import { numberFormat } from '../words/formats.ts'
import { printLengthBare } from '../words/length.ts'
import { type Reader, say } from '../words/say.ts'
import { printMinutes } from '../words/time.ts'
import type { Block } from './block.ts'
import type { Cell, Column, Row } from './cells.ts'
import { nameOf } from './names.ts'
import { type GarmentSheet, readerOf, type Teller, tellerOf } from './sheet.ts'

/**
 * The making in sewing order, under the stage each step belongs to: every step with a box to tick, its time and room
 * for the time it really took, which is logged by the step; under it each seam and hem with its stitch and figures.
 */
export function stepBlocks(sheet: GarmentSheet): Block[] {
  const reader = readerOf(sheet.snapshot)
  const { steps } = sheet.line.estimate.draft
  return [
    ...inRuns(steps).flatMap((run) => stageBlocks(run[0]!.stage, run, sheet, reader)),
    ...cameUpBlocks(sheet, reader),
  ]
}

function cameUpBlocks(sheet: GarmentSheet, reader: Reader): Block[] {
  const { cameUp = [] } = sheet
  const tell = tellerOf(reader)
  if (cameUp.length === 0) return []
  return [
    { kind: 'heading', level: 3, words: tell('paper.step.cameUp') },
    {
      ...TABLE,
      columns: plainColumns(tell),
      rows: cameUp.map(({ name, minutes, doneAt }) => ({
        strong: true,
        cells: [
          tickOf(doneAt !== null, tell),
          {
            paragraphs: [
              { words: say(name, reader) },
              ...(doneAt === null ? [] : [{ words: doneOn(doneAt, sheet, reader), look: 'note' as const }]),
            ],
          },
          printMinutes(minutes),
          { write: true },
        ],
      })),
    },
  ]
}

/** Steps one after the other that belong to the same stage. A stage may come round again. */
function inRuns(steps: readonly Step[]): Step[][] {
  const runs: Step[][] = []
  for (const step of steps) {
    const last = runs.at(-1)
    if (last?.[0]?.stage === step.stage) last.push(step)
    else runs.push([step])
  }
  return runs
}

const TABLE = { kind: 'table', before: 1, pad: { above: 0.75, below: 0.75, gap: 2.6 } } as const

/** The columns of steps in which nothing is sewn. */
const plainColumns = (tell: Teller): Column[] => [
  { heading: '', share: 5.5 },
  { heading: tell('paper.step.column.work'), share: 129.5 },
  { heading: tell('paper.step.column.time'), share: 13.5, align: 'right' },
  { heading: tell('paper.step.column.actual'), share: 14 },
]

function stageBlocks(stage: Stage, steps: readonly Step[], sheet: GarmentSheet, reader: Reader): Block[] {
  const tell = tellerOf(reader)
  const sewn = steps.some((step) => step.seams.length + step.hems.length > 0)
  const column = (code: Parameters<typeof tell>[0]) => tell(code, { unit: reader.unit })
  return [
    { kind: 'heading', level: 3, words: nameOf('stage', stage, reader) },
    {
      ...TABLE,
      columns: sewn
        ? [
            { heading: '', share: 5.5 },
            { heading: tell('paper.step.column.work'), share: 55 },
            { heading: column('paper.step.column.length'), share: 12.5, align: 'right' },
            { heading: tell('paper.step.column.stitch'), share: 24.5 },
            { heading: tell('paper.step.column.density'), share: 9.5, align: 'right' },
            { heading: column('paper.step.column.allowance'), share: 17, align: 'right' },
            { heading: tell('paper.step.column.thread'), share: 11, align: 'right' },
            { heading: tell('paper.step.column.time'), share: 13.5, align: 'right' },
            { heading: tell('paper.step.column.actual'), share: 14 },
          ]
        : plainColumns(tell),
      rows: steps.flatMap((step) => stepRows(step, sewn, sheet, reader)),
    },
  ]
}

function stepRows(step: Step, sewn: boolean, sheet: GarmentSheet, reader: Reader): Row[] {
  const tell = tellerOf(reader)
  const { draft, sewing } = sheet.line.estimate
  const number = draft.steps.indexOf(step) + 1
  const done = sheet.stepsDone[step.id]
  const time = sewing.steps.find((one) => one.step === step.id)
  const name = tell('paper.step.name', { number, name: step.name })
  const handled = step.operations.map(({ operation }) => nameOf('operation', operation, reader))
  const stitched = step.seams.length + step.hems.length > 0
  // A step that is one operation and nothing else is named for it already.
  const sewnIn = sewing.rows
    .filter((row) => row.step === step.id)
    .reduce((sum, row) => sum + row.minutes.mean, 0)
  const besides = (time?.total.mean ?? 0) - sewnIn
  // What is handled besides the stitches is named with its time, so that the lines of a step come to its time.
  const operations =
    stitched && handled.length > 0 && besides >= 1
      ? tell('paper.step.handled', { work: handled.join(', '), time: { minutes: besides } })
      : handled.length > 1 || stitched
        ? handled.join(', ')
        : ''
  const head: Row = {
    strong: true,
    keep: stitched,
    ...(sewn ? { spans: [1, 6, 1, 1] } : {}),
    cells: [
      tickOf(done !== undefined, tell),
      {
        paragraphs: [
          { words: name },
          ...(operations === '' ? [] : [{ words: operations, look: 'note' as const }]),
          ...step.cautions.map((caution) => ({ words: say(caution, reader), look: 'estimate' as const })),
          ...(done === undefined ? [] : [{ words: doneOn(done, sheet, reader), look: 'note' as const }]),
        ],
      },
      time === undefined ? '' : printMinutes(time.total.mean),
      { write: true },
    ],
  }
  const work = [...step.seams, ...step.hems].flatMap((id) => sewnRows(id, sheet, reader))
  return [
    head,
    ...work.map((row, i): Row => ({ ...row, over: 'none', keep: i < work.length - 1 && i === 0 })),
  ]
}

const tickOf = (done: boolean, tell: Teller): Cell => ({
  ...{ tick: done, said: tell(done ? 'paper.step.done' : 'paper.step.open') },
})

const doneOn = (instant: string, { timeZone = 'UTC' }: GarmentSheet, reader: Reader): string =>
  tellerOf(reader)('paper.step.doneOn', { day: { date: dayAt(instant, timeZone) } })

/** The rows of stitches that one seam or hem is sewn in. */
function sewnRows(id: string, { line }: GarmentSheet, reader: Reader): Row[] {
  const { draft, sewing } = line.estimate
  const seam = draft.seams.find((one) => one.id === id)
  const hem = draft.hems.find((one) => one.id === id)
  const figure = (mm: number) => (mm === 0 ? '' : printLengthBare(mm, reader.unit, reader.locale))
  const allowance =
    seam === undefined ? (hem === undefined ? '' : figure(hem.allowance)) : seamAllowance(seam, draft, reader)
  const name = seam?.name ?? hem?.name
  const rows = sewing.rows.filter((row) => row.of === id)
  const length = (seam ?? hem)?.length ?? 0
  const plain = name === undefined ? id : say(name, reader)
  const { pleats } = seam ?? {}
  const tell = tellerOf(reader)
  const title =
    pleats !== undefined
      ? tell(`paper.step.${pleats.kind}`, {
          ...{ seam: plain, count: pleats.count, depth: { mm: pleats.depth } },
        })
      : // What is turned in once is as deep as its allowance says.
        hem !== undefined && hem.depth > 0 && hem.depth < hem.allowance
        ? tell('paper.step.hem', { hem: plain, depth: { mm: hem.depth } })
        : plain
  if (rows.length === 0) return [{ cells: ['', title, figure(length), '', '', allowance, '', '', ''] }]
  return rows.map((row, i) => ({
    keep: i < rows.length - 1,
    cells: [
      '',
      i === 0 ? title : purposeOf(row, reader),
      ...figuresOf(row, i === 0 ? allowance : '', reader),
      '',
    ],
  }))
}

function purposeOf({ purpose }: StitchRow, reader: Reader): Cell {
  return { words: tellerOf(reader)(`paper.purpose.${purpose}`), look: 'note' }
}

function figuresOf(row: StitchRow, allowance: string, reader: Reader): Cell[] {
  const metres = numberFormat(reader.locale, { minimumFractionDigits: 1, maximumFractionDigits: 1 })
  return [
    printLengthBare(row.length, reader.unit, reader.locale),
    nameOf('stitch', row.stitch, reader),
    tellerOf(reader)('paper.number', { number: row.density }),
    allowance,
    metres.format(row.thread / 1000),
    printMinutes(row.minutes.mean),
  ]
}

/** What is left beyond the line on either side: one figure when both are the same. */
function seamAllowance({ a, b }: Seam, draft: Draft, reader: Reader): string {
  const of = (spans: readonly Span[]) => {
    const [span] = spans
    const piece = draft.pieces.find(({ id }) => id === span?.piece)
    return piece?.edges.find(({ id }) => id === span?.edge)?.allowance
  }
  const sides = [of(a), of(b)].flatMap((mm) =>
    mm === undefined ? [] : [printLengthBare(mm, reader.unit, reader.locale)],
  )
  return [...new Set(sides)].join(' / ')
}
