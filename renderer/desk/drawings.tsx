import { memo, useMemo } from 'react'
import { drawLay } from '../../core/draw/lay.ts'
import { drawPiece } from '../../core/draw/piece.ts'
import { SheetDrawing } from '../parts/sheet-drawing.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import type { Estimate } from './use-estimate.ts'

/** Pieces of a garment share one scale: the largest lies about this high on the screen, mm. */
const PIECE_HEIGHT = 56
/** And the lay about this long. */
const LAY_LENGTH = 205

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
    </section>
  )
})

export const LayDrawing = memo(({ estimate: { lay, draft } }: { estimate: Estimate }) => {
  const { reader } = useHouse()
  const tell = useTell()
  const drawing = useMemo(
    () => drawLay({ lay, pieces: draft.pieces }, reader, LAY_LENGTH / Math.max(1, lay.length)),
    [lay, draft, reader],
  )
  return (
    <section className="stack">
      <h2>{tell('screen.desk.lay')}</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a lay longer than the window is scrolled by keyboard too */}
      <section className="drawn long" aria-label={tell('screen.desk.lay')} tabIndex={0}>
        <SheetDrawing drawing={drawing} />
      </section>
      <p className="quiet">
        {tell('screen.desk.layUsed', {
          length: { mm: lay.length },
          width: { mm: lay.usableWidth },
          percent: Math.round(lay.used * 100),
        })}
      </p>
    </section>
  )
})
