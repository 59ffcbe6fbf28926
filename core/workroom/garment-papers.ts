import { z } from 'zod'
import { careSheet } from '../paper/care-sheet.ts'
import { labelSheets } from '../paper/labels.ts'
import type { PaperDocument } from '../paper/page.ts'
import { PATTERN_PAPERS, patternDrawing, patternSheets } from '../paper/pattern.ts'
import type { GarmentSheet } from '../paper/sheet.ts'
import { isPlanned } from '../plan/steps.ts'
import type { QuoteLine } from '../quote/types.ts'
import { getClient } from '../store/clients.ts'
import { garmentsOf, getCommission, getGarment, stepsOfGarments } from '../store/commissions.ts'
import { latestDocument } from '../store/documents.ts'
import { latestDraftOf } from '../store/garment-drafts.ts'
import { getQuote } from '../store/quotes.ts'
import type { DocumentKind } from '../store/schema.ts'
import { dayAt } from '../words/dates.ts'
import { isAlone, laidAgainOf, lineAsCut, lineAsMade } from './as-made.ts'
import { constructionFor } from './constructions.ts'
import * as inputs from './inputs.ts'
import { kept, keptDrawing } from './printing.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'
import { lengthsIn } from './stock.ts'

/** Papers of one garment besides the work order and the cutting sheet, and those of a whole commission. */
export const garmentPaperRequests = [
  request({
    name: 'garment.printed',
    kind: 'query',
    about:
      'The day on which the work order and the cutting sheet of a garment were last printed, or null; and whether its cloth was laid anew since.',
    input: z.strictObject({ garmentId: inputs.id }),
    run: ({ garmentId }, context) => {
      const { db } = context.store
      const { quoteId } = getCommission(db, getGarment(db, garmentId, 'garmentId').commissionId)
      const laid = laidAgainOf(garmentId, context)?.createdAt ?? ''
      const prints = (['workOrder', 'cuttingSheet'] as const).map((kind) =>
        latestDocument(db, kind, quoteId, garmentId),
      )
      const [workOrder, cuttingSheet] = prints.map((print) =>
        print === undefined ? null : dayAt(print.createdAt, settingsOf(context).timeZone),
      )
      return {
        ...{ workOrder: workOrder ?? null, cuttingSheet: cuttingSheet ?? null },
        stale: prints.some((print) => print !== undefined && print.createdAt < laid),
      }
    },
  }),
  request({
    name: 'pattern.print',
    kind: 'job',
    about:
      'What of a garment cannot be chalked from measures, full size: as PDF on sheets to put together, or on one sheet.',
    input: z.strictObject({ garmentId: inputs.id, paper: z.enum(PATTERN_PAPERS).optional() }),
    run: async ({ garmentId, paper }, context) => ({
      document: await garmentPaper(
        'pattern',
        garmentId,
        (sheet) => patternSheets(sheet, paper ?? settingsOf(context).letterhead.paper),
        context,
      ),
    }),
  }),
  request({
    name: 'pattern.draw',
    kind: 'job',
    about: 'The same on one sheet as SVG at its true size, curves as arcs.',
    input: z.strictObject({ garmentId: inputs.id }),
    run: async ({ garmentId }, context) => {
      const { sheet, paper } = sheetFor('patternDrawing', garmentId, context)
      return { document: keptDrawing(paper, patternDrawing(sheet), context) }
    },
  }),
  request({
    name: 'careSheet.print',
    kind: 'job',
    about: 'How a garment is washed, kept and worn safely, as PDF to go home with it.',
    input: z.strictObject({ garmentId: inputs.id }),
    run: async ({ garmentId }, context) => ({
      document: await garmentPaper('careSheet', garmentId, careSheet, context),
    }),
  }),
  request({
    name: 'labels.print',
    kind: 'job',
    about: 'Labels for everything that is cut for a commission, as PDF.',
    input: z.strictObject({ commissionId: inputs.id }),
    run: async ({ commissionId }, context) => {
      const { db } = context.store
      const { id, number, quoteId } = getCommission(db, commissionId, 'commissionId')
      const sheets = garmentsOf(db, [id]).map((garment) => sheetFor('labels', garment.id, context).sheet)
      const document = labelSheets({
        ...{ letterhead: settingsOf(context).letterhead, commissionNumber: number, day: today(context) },
        garments: sheets,
      })
      const paper = { kind: 'labels' as const, quoteId, garmentId: null, name: `${number}-labels` }
      return { document: await kept(paper, document, context.now(), context) }
    },
  }),
]

type GarmentKind = Exclude<DocumentKind, 'quote' | 'invoice' | 'receipt' | 'reminder'>

const PAPER_NAME: Record<GarmentKind, string> = {
  workOrder: 'work-order',
  cuttingSheet: 'cutting-sheet',
  pattern: 'pattern',
  patternDrawing: 'pattern',
  careSheet: 'care',
  labels: 'labels',
}

/** Prints a paper of one garment, as it is to be made now, and keeps it. */
export async function garmentPaper(
  kind: GarmentKind,
  garmentId: string,
  lay: (sheet: GarmentSheet) => PaperDocument,
  context: Context,
) {
  const { sheet, paper } = sheetFor(kind, garmentId, context)
  return kept(paper, lay(sheet), context.now(), context)
}

/** How the cloth of a garment is off by now, for its papers. */
function clothNowOf(
  garmentId: string,
  { cloth }: Pick<QuoteLine, 'cloth'>,
  context: Context,
): Pick<GarmentSheet, 'clothNow'> {
  const measured = laidAgainOf(garmentId, context)
  if (measured !== undefined) {
    const { width, length, createdAt } = measured
    const day = dayAt(createdAt, settingsOf(context).timeZone)
    return { clothNow: { at: 'measured', day, width, length } }
  }
  const held = lengthsIn(context).flatMap(({ row, length: { clothId, reservedFor } }) =>
    clothId !== cloth.id
      ? []
      : reservedFor.filter((one) => one.garmentId === garmentId).map(({ mm }) => ({ mm, row })),
  )
  if (held.length === 0) return {}
  const mm = held.reduce((sum, one) => sum + one.mm, 0)
  const coming = held.filter(({ row }) => row.arrivedDay === null).map(({ row }) => row.expectedDay)
  if (coming.length === 0) return { clothNow: { at: 'aside', mm } }
  const last = coming.includes(null) ? null : (coming.toSorted().at(-1) ?? null)
  return { clothNow: { at: 'aside', mm, coming: last } }
}

/** What a paper of a garment is made from, and what it is kept as. */
export function sheetFor(kind: GarmentKind, garmentId: string, context: Context) {
  const { db } = context.store
  const garment = getGarment(db, garmentId, 'garmentId')
  const commission = getCommission(db, garment.commissionId)
  const { snapshot } = getQuote(db, commission.quoteId)
  const line = lineAsCut(lineAsMade(snapshot, garment, context), garmentId, context)
  const steps = stepsOfGarments(db, [garmentId])
  const { choices } = constructionFor(line.construction, context)
  // Measured after the wash or drafted again, it lies on its own length, whatever it shared by the quote.
  const { shared: _, ...alone } = snapshot
  const draft = latestDraftOf(db, garmentId)?.number ?? 1
  const sheet: GarmentSheet = {
    snapshot: isAlone(garmentId, context) ? alone : snapshot,
    ...{ line, commissionNumber: commission.number, copy: garment.copy, day: today(context), draft },
    stepsDone: Object.fromEntries(
      steps.flatMap(({ key, doneAt }) => (doneAt === null ? [] : [[key, doneAt]])),
    ),
    cameUp: steps
      .filter((step) => !isPlanned(step))
      .map(({ name, minutes, doneAt }) => ({ name, minutes: minutes.mean, doneAt })),
    lengthChoices: Object.entries(choices).flatMap(([id, { kind }]) => (kind === 'length' ? [id] : [])),
    timeZone: settingsOf(context).timeZone,
    ...{ due: commission.dueDay ?? undefined, worn: commission.eventDay ?? undefined },
    ...clothNowOf(garmentId, line, context),
    noted: { wearer: getClient(db, line.wearer.id).note.trim(), order: commission.note.trim() },
  }
  const name = [
    ...[commission.number, garment.position, PAPER_NAME[kind]],
    ...(draft === 1 ? [] : [`draft-${draft}`]),
  ].join('-')
  return { sheet, paper: { kind, quoteId: commission.quoteId, garmentId, name } }
}
