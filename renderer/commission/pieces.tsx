import { useState } from 'react'
import { say } from '../../core/words/say.ts'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

type Piece = OutputOf<'pieces.list'>['pieces'][number]
type Guard = NonNullable<InputOf<'piece.cut'>['anyway']>[number]

/** The pieces of a garment, ticked one by one as they are cut. */
export function Pieces({ garmentId, name, open }: { garmentId: string; name: string; open: boolean }) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const { value, refused, reload } = useQuery('pieces.list', { garmentId })
  const [asked, setAsked] = useState<Piece>()
  /** What she was warned of and cuts all the same: it holds for the rest of this garment's pieces too. */
  const [anyway, setAnyway] = useState<Guard[]>([])
  const guard = doing.refused?.field?.startsWith('anyway.')
    ? (doing.refused.field.slice('anyway.'.length) as Guard)
    : undefined
  const mark = async ({ piece, copy, ...one }: Piece, cut: boolean, answered: Guard[]) => {
    setAsked({ piece, copy, ...one })
    setAnyway(answered)
    const which = { garmentId, piece, copy, cut, anyway: answered }
    if (await doing.run(() => workroom.ask('piece.cut', which))) reload()
  }
  if (value === undefined) return <Refusal sentence={refused} />
  const { pieces } = value
  if (pieces.length === 0) return null
  return (
    <details className="pieces">
      <summary className="touch">
        {tell('life.pieces.title', { cut: pieces.filter(({ cut }) => cut).length, of: pieces.length })}
      </summary>
      <Refusal sentence={doing.refused?.message} />
      {guard === undefined || asked === undefined ? null : (
        <Button onPress={() => void mark(asked, true, [...anyway, guard])}>
          {tell('screen.commission.cutAnyway')}
        </Button>
      )}
      <fieldset className="picks">
        <legend>{tell('life.pieces.of', { garment: name })}</legend>
        {pieces.map((piece) => (
          <Tick
            key={`${piece.piece}/${piece.copy}`}
            name={say(piece.copyName, reader)}
            done={piece.cut}
            disabled={!open || doing.busy}
            onChange={(cut) => void mark(piece, cut, anyway)}
          />
        ))}
      </fieldset>
    </details>
  )
}
