import { z } from 'zod'
import { careSheet } from '../paper/care-sheet.ts'
import { cuttingSheet } from '../paper/cutting-sheet.ts'
import type { PaperDocument } from '../paper/page.ts'
import { shownPages } from '../paper/page-svg.ts'
import { PATTERN_PAPERS, patternSheets } from '../paper/pattern.ts'
import { quoteSheet } from '../paper/quote-sheet.ts'
import { workOrder } from '../paper/work-order.ts'
import { readAttachment } from '../store/attachments.ts'
import { getQuote } from '../store/quotes.ts'
import { sheetFor } from './garment-papers.ts'
import * as inputs from './inputs.ts'
import { MARK_FILE } from './printing.ts'
import { type Context, request } from './request.ts'

const garmentId = inputs.id
const asked = z.discriminatedUnion('paper', [
  z.strictObject({ paper: z.literal('quote'), id: inputs.id }),
  z.strictObject({ paper: z.enum(['workOrder', 'cuttingSheet', 'careSheet']), garmentId }),
  z.strictObject({ paper: z.literal('pattern'), garmentId, on: z.enum(PATTERN_PAPERS) }),
])

/** Papers to look at before they are printed: nothing is kept. */
export const previewRequests = [
  request({
    name: 'paper.show',
    kind: 'query',
    about: 'The pages of a paper as they would be printed, each as SVG with its size in mm. Nothing is kept.',
    input: z.strictObject({ asked }),
    run: ({ asked: given }, context) => ({
      pages: shownPages(sheetOf(given, context), (hash) =>
        readAttachment(context.store.attachments, hash, MARK_FILE),
      ),
    }),
  }),
]

const LAID = { workOrder, cuttingSheet, careSheet }

function sheetOf(given: z.output<typeof asked>, context: Context): PaperDocument {
  if (given.paper === 'quote') return quoteSheet(getQuote(context.store.db, given.id).snapshot)
  const { sheet } = sheetFor(given.paper, given.garmentId, context)
  return given.paper === 'pattern' ? patternSheets(sheet, given.on) : LAID[given.paper](sheet)
}
