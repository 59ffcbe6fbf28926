import { drawGarment, garmentScale } from '../draw/garment.ts'
import type { QuoteLine } from '../quote/types.ts'
import type { Reader } from '../words/say.ts'
import type { Block } from './block.ts'

/** What the drawing of one finished garment may take of a sheet, mm. */
const SPACE = { width: 84, height: 78 }

/** The finished garments, flat, all at one scale; quotes made before there were such drawings have none. */
export function flatBlocks(lines: readonly QuoteLine[], reader: Reader): Block[] {
  const flats = lines.flatMap(({ title, estimate: { draft } }) =>
    draft.flat === undefined ? [] : [{ title, flat: draft.flat, view: viewOf(draft) }],
  )
  if (flats.length === 0) return []
  const scale = Math.min(...flats.map(({ flat }) => garmentScale(flat, SPACE)))
  return [
    {
      kind: 'figures',
      drawings: flats.map(({ title, flat, view }) => drawGarment(flat, title, reader, scale, view)),
    },
  ]
}

/** A garment of the maker's own is drawn unfolded: nobody has said how it hangs. */
const viewOf = ({ title }: QuoteLine['estimate']['draft']): 'front' | 'unfolded' =>
  title === undefined ? 'front' : 'unfolded'
