import { edgeWord } from '../../core/words/own-edges.ts'
import type { PhraseCode } from '../../core/words/phrase.ts'
import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { Tick } from '../parts/tick.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import type { Piece, Shapes } from './definition.ts'
import { LengthField } from './length-field.tsx'

type Props = {
  piece: Piece
  others: readonly Piece[]
  shapes: Shapes
  measures: OutputOf<'measures.list'>['measures']
  onChange: (piece: Piece) => void
  onRemove: () => void
}

/** One piece: its name, shape and sizes, how many of it, and marks on its edges. */
export function PieceForm({ piece, others, shapes, measures, onChange, onRemove }: Props) {
  const tell = useTell()
  const { reader } = useHouse()
  const shape = shapes.find(({ id }) => id === piece.shape)!
  const reshape = (id: string) => {
    const next = shapes.find((one) => one.id === id)!
    const dimensions = Object.fromEntries(
      next.dimensions.map((d) => [d, piece.dimensions[d] ?? { fixed: 300 }]),
    )
    onChange({ ...piece, shape: next.id, dimensions, marks: [] })
  }
  const word = (edge: string) => say(edgeWord(edge), reader)
  return (
    <details className="own-piece" open>
      <summary>{piece.name}</summary>
      <div className="stack">
        <TextField
          label={tell('own.screen.pieceName')}
          value={piece.name}
          onChange={(name) => onChange({ ...piece, name })}
        />
        <SelectField
          label={tell('own.screen.shape')}
          value={piece.shape}
          onChange={reshape}
          options={shapes.map(({ id }) => ({ id, name: tell(`own.shape.${id}` as PhraseCode) }))}
        />
        {shape.dimensions.map((id) => (
          <LengthField
            key={`${piece.shape}-${id}`}
            label={tell(`own.dimension.${id}` as PhraseCode)}
            value={piece.dimensions[id] ?? { fixed: 300 }}
            onChange={(length) => onChange({ ...piece, dimensions: { ...piece.dimensions, [id]: length } })}
            {...{ measures, others, shapes }}
          />
        ))}
        <SelectField
          label={tell('own.screen.count')}
          value={String(piece.count)}
          onChange={(count) => onChange({ ...piece, count: Number(count) })}
          options={[1, 2, 3, 4, 6, 8, 10, 12].map((n) => ({ id: String(n), name: String(n) }))}
        />
        {piece.count > 1 ? (
          <Tick
            name={tell('own.screen.pairs')}
            done={piece.pairs}
            onChange={(pairs) => onChange({ ...piece, pairs })}
          />
        ) : null}
        {piece.marks.map(({ edge, at }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: marks have no name but their place in the list
          <div className="stack" key={`mark-${i}`}>
            <SelectField
              label={tell('own.screen.markOn')}
              value={edge}
              onChange={(next) =>
                onChange({
                  ...piece,
                  marks: piece.marks.map((mark, k) => (k === i ? { ...mark, edge: next } : mark)),
                })
              }
              options={shape.edges.map((id) => ({ id, name: word(id) }))}
            />
            <LengthField
              label={tell('own.screen.markAt')}
              value={at}
              onChange={(length) =>
                onChange({
                  ...piece,
                  marks: piece.marks.map((mark, k) => (k === i ? { ...mark, at: length } : mark)),
                })
              }
              {...{ measures, others, shapes }}
            />
            <Button onPress={() => onChange({ ...piece, marks: piece.marks.filter((_, k) => k !== i) })}>
              {tell('own.screen.noMark')}
            </Button>
          </div>
        ))}
        <div className="lay-tools">
          <Button
            onPress={() =>
              onChange({
                ...piece,
                marks: [...piece.marks, { edge: shape.edges[1] ?? 'right', at: { fixed: 200 } }],
              })
            }
          >
            {tell('own.screen.mark')}
          </Button>
          <Button onPress={onRemove}>{tell('own.screen.remove', { piece: piece.name })}</Button>
        </div>
      </div>
    </details>
  )
}
