import PDFDocument from 'pdfkit'
import { DYES } from '../draw/ink.ts'
import { samePoint } from '../geometry/point.ts'
import type { Path, Rectangle } from '../geometry/types.ts'
import { arcToCubics } from './cubic.ts'
import { fontBytes } from './fonts.ts'
import {
  FACES,
  type ImageMark,
  type Mark,
  PAPERS,
  type PaperDocument,
  type PathMark,
  type Tag,
  type TextRun,
} from './page.ts'
import { POINT } from './style.ts'

/** Points of one millimetre: PDF measures in 1/72 in. */
const PT = 1 / POINT

/** What a file says of itself, and what printing needs besides the sheet. */
export type PrintOptions = {
  title: string
  /** BCP 47 language of the sheet. */
  language: string
  /** Instant, UTC ISO 8601, written into the file as its creation date. */
  createdAt: string
  /** The bytes of a picture by the hash of its file; needed where a sheet has pictures. */
  images?: (hash: string) => Uint8Array
  /** Told after each page how many of all there are; it may throw, and then nothing is printed. */
  onPage?: (done: number, all: number) => Promise<void>
}

/**
 * Prints a laid-out sheet as PDF 1.7 with the metadata of PDF/A-2a: fonts embedded as subsets, text searchable, reading order tagged.
 * The same sheet with the same options gives the same bytes.
 */
export async function printPdf(document: PaperDocument, options: PrintOptions): Promise<Uint8Array> {
  const usual = PAPERS[document.paper]
  const doc = new PDFDocument({
    margin: 0,
    autoFirstPage: false,
    // No face of the printer's own: everything is set in fonts that the file brings along.
    font: '',
    pdfVersion: '1.7',
    // Fonts, colours and metadata as archives want them (ISO 19005-2, level A).
    subset: 'PDF/A-2a',
    tagged: true,
    lang: options.language,
    displayTitle: true,
    info: {
      Title: options.title,
      Producer: 'Ellwand',
      Creator: 'Ellwand',
      CreationDate: new Date(options.createdAt),
    },
  })
  const parts: Uint8Array[] = []
  const done = new Promise<void>((resolve, reject) => {
    doc.on('data', (part: Uint8Array) => parts.push(part))
    doc.on('end', resolve)
    doc.on('error', reject)
  })
  for (const face of FACES) doc.registerFont(face, fontBytes(face))
  const elements: Elements = new Map()
  const whole = doc.struct('Document')
  doc.addStructure(whole)
  for (const tag of document.tags) whole.add(elementOf(doc, tag, elements))
  for (const [i, page] of document.pages.entries()) {
    const { width, height } = page.size ?? usual
    doc.addPage({ size: [width * PT, height * PT], margin: 0 })
    for (const group of grouped(page.marks)) printGroup(doc, group, elements, options)
    await options.onPage?.(i + 1, document.pages.length)
  }
  doc.end()
  await done
  return joined(parts)
}

type Elements = Map<number, { role: string; element: PDFKit.PDFStructureElement }>

function elementOf(doc: PDFKit.PDFDocument, tag: Tag, elements: Elements): PDFKit.PDFStructureElement {
  const options = {
    ...(tag.alt === undefined ? {} : { alt: tag.alt }),
    ...(tag.scope === undefined ? {} : { scope: tag.scope }),
  }
  const element = doc.struct(tag.role, options)
  for (const child of tag.children) element.add(elementOf(doc, child, elements))
  elements.set(tag.id, { role: tag.role, element })
  return element
}

/** Neighbouring marks that belong to the same element. */
function grouped(marks: readonly Mark[]): { tag: number | null; marks: Mark[] }[] {
  const groups: { tag: number | null; marks: Mark[] }[] = []
  for (const mark of marks) {
    const last = groups.at(-1)
    if (last !== undefined && last.tag === mark.tag) last.marks.push(mark)
    else groups.push({ tag: mark.tag, marks: [mark] })
  }
  return groups
}

function printGroup(
  doc: PDFKit.PDFDocument,
  { tag, marks }: { tag: number | null; marks: Mark[] },
  elements: Elements,
  { images }: PrintOptions,
): void {
  const owner = tag === null ? undefined : elements.get(tag)
  if (owner === undefined) doc.markContent('Artifact', { type: 'Layout' })
  else owner.element.add(doc.markStructureContent(owner.role))
  for (const mark of marks) {
    if (mark.kind === 'text') printText(doc, mark)
    else if (mark.kind === 'path') printPath(doc, mark)
    else if (images !== undefined) printImage(doc, mark, images(mark.hash))
  }
  doc.endMarkedContent()
}

function printText(doc: PDFKit.PDFDocument, { x, y, text, face, size, dye, angle, clip }: TextRun): void {
  const at: [number, number] = [x * PT, y * PT]
  doc.save()
  clipTo(doc, clip)
  if (angle !== 0) doc.rotate(-angle, { origin: at })
  doc.font(face).fontSize(size).fillColor(DYES[dye])
  // An empty list of features makes pdfkit shape the run as a whole, just as it was measured.
  doc.text(text, ...at, { lineBreak: false, baseline: 'alphabetic', features: [] })
  doc.restore()
}

function printPath(doc: PDFKit.PDFDocument, { paths, stroke, fill, clip }: PathMark): void {
  doc.save()
  clipTo(doc, clip)
  for (const path of paths) trace(doc, path)
  if (stroke !== undefined) {
    doc
      .lineWidth(stroke.weight * PT)
      .lineJoin('miter')
      .strokeColor(DYES[stroke.dye])
    if (stroke.dash.length > 0) doc.addContent(`[${stroke.dash.map((d) => d * PT).join(' ')}] 0 d`)
  }
  if (stroke !== undefined && fill !== undefined) doc.fillAndStroke(DYES[fill], DYES[stroke.dye], 'even-odd')
  else if (fill !== undefined) doc.fill(DYES[fill], 'even-odd')
  else doc.stroke()
  doc.restore()
}

function printImage(doc: PDFKit.PDFDocument, { x, y, width, height }: ImageMark, bytes: Uint8Array): void {
  doc.image(Buffer.from(bytes), x * PT, y * PT, { width: width * PT, height: height * PT })
}

function clipTo(doc: PDFKit.PDFDocument, clip: Rectangle | undefined): void {
  if (clip !== undefined) doc.rect(clip.x * PT, clip.y * PT, clip.width * PT, clip.height * PT).clip()
}

function trace(doc: PDFKit.PDFDocument, path: Path): void {
  const first = path[0]
  if (first === undefined) return
  doc.moveTo(first.from.x * PT, first.from.y * PT)
  for (const s of path) {
    if (s.kind === 'line') {
      doc.lineTo(s.to.x * PT, s.to.y * PT)
      continue
    }
    for (const { one, two, to } of arcToCubics(s)) {
      doc.bezierCurveTo(one.x * PT, one.y * PT, two.x * PT, two.y * PT, to.x * PT, to.y * PT)
    }
  }
  if (samePoint(path.at(-1)!.to, first.from)) doc.closePath()
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}
