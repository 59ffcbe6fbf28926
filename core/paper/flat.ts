import { drawGarment, garmentScale } from '../draw/garment.ts'
import type { QuoteLine } from '../quote/types.ts'
import type { Reader } from '../words/say.ts'
import type { Block } from './block.ts'

type Space = { width: number; height: number }
/** What the drawing of one finished garment may take of a sheet of the bench, mm. */
const SPACE: Space = { width: 84, height: 78 }
/** On a quote it is smaller, so that a garment, its price and the line to sign stand on one page. */
export const ON_A_QUOTE: Space = { width: 78, height: 50 }
/** Where that is still too much for one page. */
export const BESIDE_ITS_WORDS: Space = { width: 62, height: 30 }

/** The finished garments, flat, all at one scale; quotes made before there were such drawings have none. */
export function flatBlocks(lines: readonly QuoteLine[], reader: Reader, space = SPACE): Block[] {
  const flats = lines.flatMap(({ title, estimate: { draft } }) =>
    draft.flat === undefined ? [] : [{ title, flat: draft.flat }],
  )
  if (flats.length === 0) return []
  const scale = Math.min(...flats.map(({ flat }) => garmentScale(flat, space)))
  return [
    {
      kind: 'figures',
      drawings: flats.map(({ title, flat }) => drawGarment(flat, title, reader, scale)),
    },
  ]
}
