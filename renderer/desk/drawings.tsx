import { memo, useMemo } from 'react'
import { drawGarment, garmentScale } from '../../core/draw/garment.ts'
import { drawLay } from '../../core/draw/lay.ts'
import { drawPiece } from '../../core/draw/piece.ts'
import { printLength } from '../../core/words/length.ts'
import { type PhraseCode, phrase } from '../../core/words/phrase.ts'
import { SheetDrawing } from '../parts/sheet-drawing.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import { FinishedSizes, PieceSizes } from './sizes.tsx'
import type { Estimate } from './use-estimate.ts'

/** Pieces of a garment share one scale: the largest lies about this high on the screen, mm. */
const PIECE_HEIGHT = 56

/** The pieces, all to one scale, with a table of what they show. */
export const PieceDrawings = memo(({ draft }: { draft: Estimate['draft'] }) => {
  const { reader } = useHouse()
  const tell = useTell()
  const drawings = useMemo(() => {
    const tallest = Math.max(...draft.pieces.flatMap(({ outline }) => outline.map(({ from }) => from.y)))
    const lowest = Math.min(...draft.pieces.flatMap(({ outline }) => outline.map(({ from }) => from.y)))
    const scale = PIECE_HEIGHT / Math.max(1, tallest - Math.min(0, lowest))
    return draft.pieces.map((piece) => ({ id: piece.id, drawing: drawPiece(piece, reader, scale) }))
  }, [draft, reader])
  return (
    <section className="stack">
      <h2>{tell('screen.desk.pieces')}</h2>
      <div className="drawn drawn-pieces">
        {drawings.map(({ id, drawing }) => (
          <SheetDrawing key={id} drawing={drawing} />
        ))}
      </div>
      <PieceSizes pieces={draft.pieces} />
    </section>
  )
})

/** The finished garment is drawn about this large, mm. */
const FINISHED = { width: 116, height: 98 }

/** The finished garment as it lies flat, with its key sizes. */
export const FinishedDrawing = memo(({ draft }: { draft: Estimate['draft'] }) => {
  const { reader } = useHouse()
  const tell = useTell()
  const drawing = useMemo(() => {
    const { flat, construction, title } = draft
    if (flat === undefined) return undefined
    const name = title ?? phrase(`draft.construction.${construction}` as PhraseCode)
    return drawGarment(flat, name, reader, garmentScale(flat, FINISHED))
  }, [draft, reader])
  return drawing === undefined ? null : (
    <section className="stack">
      <h2>{tell('screen.desk.flat')}</h2>
      <div className="finished">
        <div className="drawn">
          <SheetDrawing drawing={drawing} />
        </div>
        {draft.flat === undefined ? null : <FinishedSizes sizes={draft.flat.sizes} />}
      </div>
    </section>
  )
})

/** The lays of lining, interlining and facing that are cut from cloth of their own. */
export const OtherLays = memo(({ estimate }: { estimate: Estimate }) => {
  const { reader } = useHouse()
  const tell = useTell()
  const { others = [], draft } = estimate
  return others.map(({ role, lay, cloth, purchase }) => (
    <section className="stack" key={role}>
      <h2>{tell('screen.desk.otherLay', { role: tell(`paper.cutting.role.${role}`) })}</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a lay longer than the window is scrolled by keyboard too */}
      <section className="drawn long" aria-label={cloth} tabIndex={0}>
        <SheetDrawing
          drawing={drawLay({ lay, pieces: draft.pieces }, reader, LAY_LENGTH / Math.max(1, lay.length))}
        />
      </section>
      <p className="quiet">
        {cloth}: {tell('paper.cloth.toBuy')} {printLength(purchase.toBuy, reader.unit, reader.locale)}
      </p>
    </section>
  ))
})

const LAY_LENGTH = 205
