import { setImmediate, setTimeout } from 'node:timers/promises'
import { z } from 'zod'
import { cuttingSheet } from '../paper/cutting-sheet.ts'
import { measuringSheet } from '../paper/measuring-sheet.ts'
import type { PaperDocument } from '../paper/page.ts'
import { printPdf } from '../paper/pdf.ts'
import { quoteSheet } from '../paper/quote-sheet.ts'
import type { GarmentSheet } from '../paper/sheet.ts'
import { workOrder } from '../paper/work-order.ts'
import { isPlanned } from '../plan/steps.ts'
import { attachmentPath, putAttachment, readAttachment } from '../store/attachments.ts'
import { getClient } from '../store/clients.ts'
import { getCommission, getGarment, stepsOfGarments } from '../store/commissions.ts'
import {
  type DocumentRow,
  getPaper,
  insertDocument,
  insertSheet,
  latestDocument,
} from '../store/documents.ts'
import { getMeasurementSet } from '../store/measurement-sets.ts'
import { getQuote } from '../store/quotes.ts'
import type { DocumentKind } from '../store/schema.ts'
import { isAlone, lineAsCut, lineAsMade } from './as-made.ts'
import { constructionFor } from './constructions.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { measuresFor, sizesOf } from './measures.ts'
import { type Context, request } from './request.ts'
import { readerOf, settingsOf, today } from './settings.ts'

const byId = z.strictObject({ id: inputs.id })

/** Papers. Each answers with a document; a shell hands its file to the maker. */
export const paperRequests = [
  request({
    name: 'quote.print',
    kind: 'job',
    about: 'The quote as PDF for the client. Printed once; asked again, it is the same file.',
    input: byId,
    run: async ({ id }, context) => {
      const { snapshot, number, createdAt } = getQuote(context.store.db, id)
      const earlier = latestDocument(context.store.db, 'quote', id, null)
      if (earlier !== undefined) {
        readAttachment(context.store.attachments, earlier.hash, 'pdf')
        return { document: inShort(earlier) }
      }
      const sheet = quoteSheet(snapshot)
      return {
        document: await kept(
          { kind: 'quote', quoteId: id, garmentId: null, name: number },
          sheet,
          createdAt,
          context,
        ),
      }
    },
  }),
  request({
    name: 'workOrder.print',
    kind: 'job',
    about: 'The work order of one garment as PDF, with what is ticked by now.',
    input: z.strictObject({ garmentId: inputs.id }),
    run: async ({ garmentId }, context) => ({
      document: await garmentPaper('workOrder', garmentId, workOrder, context),
    }),
  }),
  request({
    name: 'cuttingSheet.print',
    kind: 'job',
    about: 'The cutting sheet of one garment as PDF: the lay to scale and the figures to chalk.',
    input: z.strictObject({ garmentId: inputs.id }),
    run: async ({ garmentId }, context) => ({
      document: await garmentPaper('cuttingSheet', garmentId, cuttingSheet, context),
    }),
  }),
  request({
    name: 'measuringSheet.print',
    kind: 'job',
    about:
      'A measuring sheet as PDF: blank, with every measure or those a construction needs; or of a set, filled in.',
    input: z.strictObject({
      clientId: inputs.id.optional(),
      construction: z.string().optional(),
      measurementSetId: inputs.id.optional(),
    }),
    run: async ({ measurementSetId, construction, ...given }, context) => {
      const { store } = context
      const set =
        measurementSetId === undefined
          ? undefined
          : getMeasurementSet(store.db, measurementSetId, 'measurementSetId')
      const clientId = set?.clientId ?? given.clientId
      const client = clientId === undefined ? undefined : getClient(store.db, clientId, 'clientId')
      const sheet = measuringSheet({
        letterhead: settingsOf(context).letterhead,
        name: client?.name ?? '',
        day: set?.day ?? today(context),
        measures: measuresFor(construction, context),
        ...(set === undefined ? {} : { sizes: sizesOf(set, readerOf(context)) }),
      })
      const name = 'measuring-sheet'
      const file = await printed(name, sheet, context.now(), context)
      return {
        document: store.transaction(() => {
          const row = insertSheet(store.db, {
            ...{ id: context.newId(), kind: 'measuringSheet', clientId: clientId ?? null, name },
            ...{ ...file, pages: sheet.pages.length, createdAt: context.now() },
          })
          recorded(context, 'measuringSheet.print', 'sheet', row.id, null, { name, hash: row.hash })
          return inShort(row)
        }),
      }
    },
  }),
]

const PAPER_NAME: Record<Exclude<DocumentKind, 'quote'>, string> = {
  workOrder: 'work-order',
  cuttingSheet: 'cutting-sheet',
}

async function garmentPaper(
  kind: 'workOrder' | 'cuttingSheet',
  garmentId: string,
  lay: (sheet: GarmentSheet) => PaperDocument,
  context: Context,
) {
  const { db } = context.store
  const garment = getGarment(db, garmentId, 'garmentId')
  const commission = getCommission(db, garment.commissionId)
  const { snapshot } = getQuote(db, commission.quoteId)
  const line = lineAsCut(lineAsMade(snapshot, garment, context), garmentId, context)
  const steps = stepsOfGarments(db, [garmentId])
  const { choices } = constructionFor(line.construction, context)
  // Measured after the wash or drafted again, it lies on its own length, whatever it shared by the quote.
  const { shared: _, ...alone } = snapshot
  const sheet = lay({
    snapshot: isAlone(garmentId, context) ? alone : snapshot,
    line,
    commissionNumber: commission.number,
    copy: garment.copy,
    day: today(context),
    stepsDone: Object.fromEntries(
      steps.flatMap(({ key, doneAt }) => (doneAt === null ? [] : [[key, doneAt]])),
    ),
    cameUp: steps
      .filter((step) => !isPlanned(step))
      .map(({ name, minutes, doneAt }) => ({ name, minutes: minutes.mean, doneAt })),
    lengthChoices: Object.entries(choices).flatMap(([id, { kind }]) => (kind === 'length' ? [id] : [])),
    timeZone: settingsOf(context).timeZone,
  })
  const name = `${commission.number}-${garment.position}-${PAPER_NAME[kind]}`
  return kept({ kind, quoteId: commission.quoteId, garmentId, name }, sheet, context.now(), context)
}

type Paper = { kind: DocumentKind; quoteId: string; garmentId: string | null; name: string }

/** Prints a paper of a quote and keeps it. */
async function kept(paper: Paper, sheet: PaperDocument, createdAt: string, context: Context) {
  const { store } = context
  const { hash, bytes } = await printed(paper.name, sheet, createdAt, context)
  return store.transaction(() => {
    const row = insertDocument(store.db, {
      ...{ ...paper, hash, bytes, pages: sheet.pages.length },
      ...{ id: context.newId(), createdAt: context.now() },
    })
    recorded(context, `${paper.kind}.print`, 'document', row.id, null, {
      kind: row.kind,
      name: row.name,
      hash,
    })
    return inShort(row)
  })
}

/** Prints a sheet and puts the file safely on disk, before any row names it. */
async function printed(name: string, sheet: PaperDocument, createdAt: string, context: Context) {
  context.report({ done: 0.2, doing: 'print' })
  const bytes = await printPdf(sheet, {
    title: name,
    language: settingsOf(context).letterhead.locale,
    createdAt,
  })
  // A timer and then an immediate: between the two the loop takes in what came while printing, a wish to stop
  // among it, and only then is anything kept.
  await setTimeout(0)
  await setImmediate()
  context.signal.throwIfAborted()
  const { hash } = putAttachment(context.store.attachments, bytes, 'pdf')
  return { hash, bytes: bytes.length }
}

type Short = Pick<DocumentRow, 'id' | 'name' | 'hash' | 'pages' | 'bytes'> & { kind: string }

const inShort = ({ id, kind, name, hash, pages, bytes }: Short) => ({
  id,
  kind,
  name,
  hash,
  pages,
  bytes,
})

/**
 * The file of a stored document, for a shell to hand to the maker.
 * @throws Refusal when there is no such document, or its file is gone or altered
 */
export function documentFile({ store }: Pick<Context, 'store'>, id: string): { path: string; name: string } {
  const { hash, name } = getPaper(store.db, id)
  readAttachment(store.attachments, hash, 'pdf')
  return { path: attachmentPath(store.attachments, hash, 'pdf'), name: `${name}.pdf` }
}

/** Where the file of a document lies, for a shell that may say so. */
export const documentPath = ({ store }: Pick<Context, 'store'>, hash: string): string =>
  attachmentPath(store.attachments, hash, 'pdf')
