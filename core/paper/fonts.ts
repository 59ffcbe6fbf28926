import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { basename, join } from 'node:path'
import { create, type Font } from 'fontkit'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import type { FaceId } from './page.ts'
import { POINT } from './style.ts'

/**
 * EB Garamond, Source Sans 3, Noto Serif Hebrew and Noto Naskh Arabic, all under the SIL Open Font Licence 1.1, as whole
 * TrueType files.
 */
const FILES: Record<FaceId, string> = {
  serif: '@expo-google-fonts/eb-garamond/400Regular/EBGaramond_400Regular.ttf',
  serifItalic: '@expo-google-fonts/eb-garamond/400Regular_Italic/EBGaramond_400Regular_Italic.ttf',
  serifBold: '@expo-google-fonts/eb-garamond/600SemiBold/EBGaramond_600SemiBold.ttf',
  sans: '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  sansItalic: '@expo-google-fonts/source-sans-3/400Regular_Italic/SourceSans3_400Regular_Italic.ttf',
  sansBold: '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
  hebrew: '@expo-google-fonts/noto-serif-hebrew/400Regular/NotoSerifHebrew_400Regular.ttf',
  hebrewBold: '@expo-google-fonts/noto-serif-hebrew/600SemiBold/NotoSerifHebrew_600SemiBold.ttf',
  arabic: '@expo-google-fonts/noto-naskh-arabic/400Regular/NotoNaskhArabic_400Regular.ttf',
  arabicBold: '@expo-google-fonts/noto-naskh-arabic/600SemiBold/NotoNaskhArabic_600SemiBold.ttf',
}

const LIGHT = ['hebrew', 'arabic'] as const
const BOLD = ['hebrewBold', 'arabicBold'] as const

/** The faces that lend a character to one that has none, the first of them that has it. */
const LENDERS: Record<FaceId, readonly FaceId[]> = {
  serif: ['sans', ...LIGHT],
  serifItalic: ['sansItalic', ...LIGHT],
  serifBold: ['sansBold', ...BOLD],
  sans: ['serif', ...LIGHT],
  sansItalic: ['serifItalic', ...LIGHT],
  sansBold: ['serifBold', ...BOLD],
  hebrew: ['serif', 'sans', 'arabic'],
  hebrewBold: ['serifBold', 'sansBold', 'arabicBold'],
  arabic: ['serif', 'sans', 'hebrew'],
  arabicBold: ['serifBold', 'sansBold', 'hebrewBold'],
}

let folder: string | undefined
const bytes = new Map<FaceId, Uint8Array>()
const fonts = new Map<FaceId, Font>()

/** Takes the font files from a folder instead of from their packages: a packaged planner brings them along. */
export function takeFontsFrom(path: string): void {
  folder = path
  bytes.clear()
  fonts.clear()
  widths.clear()
}

/** The names of the font files a packaged planner must bring along, as resolvable in development. */
export const fontFiles = (): string[] => Object.values(FILES)

/** The file of a face, read once. */
export function fontBytes(face: FaceId): Uint8Array {
  const known = bytes.get(face)
  if (known !== undefined) return known
  const file = FILES[face]
  const read = readFileSync(
    folder === undefined ? createRequire(import.meta.url).resolve(file) : join(folder, basename(file)),
  )
  bytes.set(face, read)
  return read
}

function fontOf(face: FaceId): Font {
  const known = fonts.get(face)
  if (known !== undefined) return known
  const font = create(Buffer.from(fontBytes(face)))
  if (!('layout' in font)) throw new Error(`${FILES[face]} holds more than one font`)
  fonts.set(face, font)
  return font
}

/** Widths once shaped, in parts of the type size; emptied when it holds this many. */
const widths = new Map<string, number>()
const MOST_WIDTHS = 20_000

/** Advance width in mm of words in one face, kerned and joined as they are printed. `size` in points. */
export function textWidth(text: string, face: FaceId, size: number): number {
  const key = `${face} ${text}`
  let width = widths.get(key)
  if (width === undefined) {
    const font = fontOf(face)
    width = font.layout(text).advanceWidth / font.unitsPerEm
    if (widths.size >= MOST_WIDTHS) widths.clear()
    widths.set(key, width)
  }
  return width * size * POINT
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

/** The characters of a text as a reader counts them: a letter with its accents is one. */
export const characters = (text: string): string[] =>
  Array.from(graphemes.segment(text), (part) => part.segment)

/**
 * A text as it can be set: accents joined to their letters (NFC), invisible characters gone, every run of
 * white space one space. Fixed spaces of any width become the no-break space.
 * @param but invisible characters that stay
 */
export function plainText(text: string, but?: RegExp): string {
  return text
    .normalize('NFC')
    .replace(/[\u202f\u2007]/g, '\u00a0')
    .replace(/(?!\u00a0)[\s\p{Cc}]+/gu, ' ')
    .replace(/\p{Default_Ignorable_Code_Point}/gu, (c) => (but !== undefined && c.search(but) === 0 ? c : ''))
}

const has = (face: FaceId, character: string): boolean =>
  [...character].every((c) => fontOf(face).hasGlyphForCodePoint(c.codePointAt(0)!))

/**
 * A text cut into runs that each one face can print: in `face` where it has the character, else in the first that
 * lends it.
 *
 * @throws Refusal naming a character that none has, and the text it stands in
 */
export function runsOf(text: string, face: FaceId): { text: string; face: FaceId }[] {
  const runs: { text: string; face: FaceId }[] = []
  for (const character of characters(text)) {
    const able = [face, ...LENDERS[face]].find((one) => has(one, character))
    if (able === undefined) throw missing(character, text)
    const last = runs.at(-1)
    if (last?.face === able) last.text += character
    else runs.push({ text: character, face: able })
  }
  return runs
}

function missing(character: string, text: string): Refusal {
  const code = [...character].map((c) => `U+${c.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`)
  return new Refusal(
    phrase('refusal.paper.character', { character, code: code.join(' '), text: text.slice(0, 80) }),
  )
}
