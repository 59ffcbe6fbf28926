import { useState } from 'react'
import { say } from '../../core/words/say.ts'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'
import { Ticked } from './ticked.tsx'

type Piece = OutputOf<'pieces.list'>['pieces'][number]
type Guard = NonNullable<InputOf<'piece.cut'>['anyway']>[number]

/** The pieces of a garment, ticked one by one as they are cut. */
export function Pieces({ garmentId, name, open }: { garmentId: string; name: string; open: boolean }) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const { value, refused, reload } = useQuery('pieces.list', { garmentId })
  const [asked, setAsked] = useState<Piece>()
  /** The piece that was ticked last, as it is now. */
  const [did, setDid] = useState<Piece>()
  /** What she was warned of and cuts all the same: it holds for the rest of this garment's pieces too. */
  const [anyway, setAnyway] = useState<Guard[]>([])
  const guard = doing.refused?.field?.startsWith('anyway.')
    ? (doing.refused.field.slice('anyway.'.length) as Guard)
    : undefined
  const mark = async (one: Piece, cut: boolean, answered: Guard[]) => {
    const { piece, copy } = one
    setAsked(one)
    setAnyway(answered)
    const which = { garmentId, piece, copy, cut, anyway: answered }
    if (!(await doing.run(() => workroom.ask('piece.cut', which)))) return
    setDid({ ...one, cut })
    reload()
  }
  if (value === undefined) return <Refusal sentence={refused} />
  const { pieces } = value
  if (pieces.length === 0) return null
  return (
    <details className="pieces">
      <summary>
        {tell('life.pieces.title', { cut: pieces.filter(({ cut }) => cut).length, of: pieces.length })}
      </summary>
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
      <Ticked
        refused={doing.refused?.message}
        busy={doing.busy}
        anyway={
          guard === undefined || asked === undefined
            ? undefined
            : () => void mark(asked, true, [...anyway, guard])
        }
        did={
          did && {
            what: say(did.copyName, reader),
            ...(did.cut ? { undo: () => void mark(did, false, anyway) } : {}),
          }
        }
      />
    </details>
  )
}
