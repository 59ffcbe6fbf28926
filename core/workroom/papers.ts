import { z } from 'zod'
import { cuttingSheet } from '../paper/cutting-sheet.ts'
import { measuringSheet } from '../paper/measuring-sheet.ts'
import { quoteSheet } from '../paper/quote-sheet.ts'
import { startGuide } from '../paper/start-guide.ts'
import { workOrder } from '../paper/work-order.ts'
import { readAttachment } from '../store/attachments.ts'
import { getClient } from '../store/clients.ts'
import { insertSheet, latestDocument } from '../store/documents.ts'
import { getMeasurementSet } from '../store/measurement-sets.ts'
import { getQuote } from '../store/quotes.ts'
import { garmentPaper } from './garment-papers.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { measuresFor, sizesOf } from './measures.ts'
import { inShort, kept, printed } from './printing.ts'
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
      const paper = {
        kind: 'measuringSheet',
        clientId: clientId ?? null,
        name,
        pages: sheet.pages.length,
      } as const
      return { document: keptSheet(paper, file, context) }
    },
  }),
  request({
    name: 'startGuide.print',
    kind: 'job',
    about:
      'One page for the first hour, as PDF: the way to a first quote, the places, and what keeps the book safe.',
    input: z.strictObject({}),
    run: async (_, context) => {
      const guide = startGuide(settingsOf(context).letterhead)
      const name = 'the-first-hour'
      const file = await printed(name, guide, context.now(), context)
      const paper = { kind: 'startGuide', clientId: null, name, pages: guide.pages.length } as const
      return { document: keptSheet(paper, file, context) }
    },
  }),
]

type SheetPaper = {
  kind: 'measuringSheet' | 'startGuide'
  clientId: string | null
  name: string
  pages: number
}

/** Keeps a paper that no quote is behind, whose file is safely on disk. */
const keptSheet = (paper: SheetPaper, file: { hash: string; bytes: number }, context: Context) =>
  context.store.transaction(() => {
    const row = insertSheet(context.store.db, {
      ...{ ...paper, ...file, id: context.newId(), createdAt: context.now() },
    })
    const { kind, name, hash } = row
    recorded(context, `${kind}.print`, 'sheet', row.id, null, { name, hash })
    return inShort(row)
  })
