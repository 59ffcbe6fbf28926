import { setImmediate, setTimeout } from 'node:timers/promises'
import type { PaperDocument } from '../paper/page.ts'
import { printPdf } from '../paper/pdf.ts'
import { attachmentPath, putAttachment, readAttachment } from '../store/attachments.ts'
import { type DocumentRow, getPaper, insertDocument } from '../store/documents.ts'
import type { DocumentKind } from '../store/schema.ts'
import { recorded } from './history.ts'
import type { Context } from './request.ts'
import { settingsOf } from './settings.ts'
import { takenOutFile } from './taken-out.ts'

/** What is written down of a paper before it has a file; `name` is that of the file, without its ending. */
export type Paper = { kind: DocumentKind; quoteId: string; garmentId: string | null; name: string }

/** Prints a paper of a quote and keeps it. */
export async function kept(paper: Paper, sheet: PaperDocument, createdAt: string, context: Context) {
  const file = await printed(paper.name, sheet, createdAt, context)
  return noted(paper, { ...file, pages: sheet.pages.length }, context)
}

/** Writes down a paper whose file is safely on disk. */
const noted = (paper: Paper, file: { hash: string; bytes: number; pages: number }, context: Context) =>
  context.store.transaction(() => {
    const row = insertDocument(context.store.db, {
      ...{ ...paper, ...file },
      ...{ id: context.newId(), createdAt: context.now() },
    })
    const { kind, name, hash } = row
    recorded(context, `${kind}.print`, 'document', row.id, null, { kind, name, hash })
    return inShort(row)
  })

/** The ending of the file of a workroom's mark: a picture of a client's work that is the same is another file. */
export const MARK_FILE = 'mark.png'

/** Pages printed before others get their turn. */
const PAGES_AT_ONCE = 8

/** Prints a sheet and puts the file safely on disk, before any row names it. */
export async function printed(name: string, sheet: PaperDocument, createdAt: string, context: Context) {
  const bytes = await printPdf(sheet, {
    title: name,
    language: settingsOf(context).letterhead.locale,
    createdAt,
    images: (hash) => readAttachment(context.store.attachments, hash, MARK_FILE),
    onPage: async (done, all) => {
      context.report({ done: done / all, doing: 'print' })
      // The loop takes in what came meanwhile, a wish to stop among it.
      if (done % PAGES_AT_ONCE === 0) await setImmediate()
      context.signal.throwIfAborted()
    },
  })
  // A timer and then an immediate: between the two the loop takes in what came while printing, a wish to stop
  // among it, and only then is anything kept.
  await setTimeout(0)
  await setImmediate()
  context.signal.throwIfAborted()
  const { hash } = putAttachment(context.store.attachments, bytes, 'pdf')
  return { hash, bytes: bytes.length }
}

/** Keeps a drawing of one sheet as SVG. */
export function keptDrawing(paper: Paper, svg: string, context: Context) {
  const bytes = new TextEncoder().encode(svg)
  const { hash } = putAttachment(context.store.attachments, bytes, 'svg')
  return noted(paper, { hash, bytes: bytes.length, pages: 1 }, context)
}

type Short = Pick<DocumentRow, 'id' | 'name' | 'hash' | 'pages' | 'bytes'> & { kind: string }

/** What a shell is told of a stored paper. */
export const inShort = ({ id, kind, name, hash, pages, bytes }: Short) => ({
  id,
  kind,
  name,
  hash,
  pages,
  bytes,
})

/** The ending of a paper's file. */
const endingOf = ({ kind }: { kind: string }): 'svg' | 'pdf' => (kind === 'patternDrawing' ? 'svg' : 'pdf')

/**
 * The file of a stored document or of what was taken out, for a shell to hand to the maker.
 * @throws Refusal when there is no such document, or its file is gone or altered
 */
export function documentFile({ store }: Pick<Context, 'store'>, id: string): { path: string; name: string } {
  const taken = takenOutFile(store.path, id)
  if (taken !== undefined) return taken
  const paper = getPaper(store.db, id)
  const ending = endingOf(paper)
  readAttachment(store.attachments, paper.hash, ending)
  return { path: attachmentPath(store.attachments, paper.hash, ending), name: `${paper.name}.${ending}` }
}

/** Where the file of a document lies, for a shell that may say so. */
export const documentPath = ({ store }: Pick<Context, 'store'>, hash: string, kind = 'quote'): string =>
  attachmentPath(store.attachments, hash, endingOf({ kind }))
