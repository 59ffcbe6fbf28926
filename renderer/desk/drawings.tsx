import { memo, useMemo } from 'react'
import { drawPiece } from '../../core/draw/piece.ts'
import { SheetDrawing } from '../parts/sheet-drawing.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import type { Estimate } from './use-estimate.ts'

/** Pieces of a garment share one scale: the largest lies about this high on the screen, mm. */
const PIECE_HEIGHT = 56

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
