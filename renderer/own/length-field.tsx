import { useState } from 'react'
import { edgeWord } from '../../core/words/own-edges.ts'
import { say } from '../../core/words/say.ts'
import { writeNumber } from '../../core/words/typed-number.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { SelectField, TextField } from '../parts/field.tsx'
import { Millimetres } from '../parts/millimetres.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import type { Length, Piece, Shapes } from './definition.ts'

type Measures = OutputOf<'measures.list'>['measures']
type Props = {
  label: string
  value: Length
  onChange: (value: Length) => void
  measures: Measures
  /** The other pieces, whose edges a size may be taken from. */
  others: readonly Piece[]
  shapes: Shapes
}

/** A size: fixed, from a measure of the body, or as long as an edge of another piece. */
export function LengthField({ label, value, onChange, measures, others, shapes }: Props) {
  const tell = useTell()
  const { reader } = useHouse()
  const kind = 'fixed' in value ? 'fixed' : 'measure' in value ? 'measure' : 'edge'
  const edges = others.flatMap((piece) =>
    (shapes.find(({ id }) => id === piece.shape)?.edges ?? []).map((edge) => ({
      id: `${piece.id}/${edge}`,
      name: `${piece.name}: ${say(edgeWord(edge), reader)}`,
    })),
  )
  const change = (to: string) => {
    if (to === 'fixed') onChange({ fixed: 300 })
    if (to === 'measure') onChange({ measure: 'bustGirth', factor: 0.5, ease: 0 })
    if (to === 'edge' && edges[0] !== undefined) onChange({ ...edgeOf(edges[0].id), factor: 1 })
  }
  return (
    <fieldset className="own-length">
      <legend>{label}</legend>
      <SelectField
        label={tell('own.screen.from')}
        value={kind}
        onChange={change}
        options={(['fixed', 'measure', 'edge'] as const)
          .filter((id) => id !== 'edge' || edges.length > 0)
          .map((id) => ({ id, name: tell(`own.screen.from.${id}`) }))}
      />
      {'fixed' in value ? (
        <Millimetres
          label={tell('own.screen.mm')}
          value={value.fixed}
          onChange={(fixed) => onChange({ fixed })}
        />
      ) : null}
      {'measure' in value ? (
        <>
          <SelectField
            label={tell('own.screen.measure')}
            value={value.measure}
            onChange={(id) => onChange({ ...value, measure: id as typeof value.measure })}
            options={measures}
          />
          <Factor value={value.factor} onChange={(factor) => onChange({ ...value, factor })} />
          <Millimetres
            label={tell('own.screen.ease')}
            value={value.ease}
            onChange={(ease) => onChange({ ...value, ease })}
          />
        </>
      ) : null}
      {'edge' in value ? (
        <>
          <SelectField
            label={tell('own.screen.edge')}
            value={`${value.of}/${value.edge}`}
            onChange={(id) => onChange({ ...value, ...edgeOf(id) })}
            options={edges}
          />
          <Factor value={value.factor} onChange={(factor) => onChange({ ...value, factor })} />
        </>
      ) : null}
    </fieldset>
  )
}

const edgeOf = (id: string): { of: string; edge: string } => {
  const [of = '', edge = ''] = id.split('/')
  return { of, edge }
}

/** A number, or a part such as 1/4. */
function Factor({ value, onChange }: { value: number; onChange: (factor: number) => void }) {
  const { reader } = useHouse()
  const tell = useTell()
  const [text, setText] = useState(() => writeNumber(value, reader.locale))
  const [wrong, setWrong] = useState<string>()
  return (
    <TextField
      label={tell('own.screen.times')}
      value={text}
      wrong={wrong}
      onChange={(next) => {
        setText(next)
        const [over, under] = next.replace(',', '.').split('/').map(Number)
        const factor = over === undefined ? Number.NaN : under === undefined ? over : over / under
        if (next.trim() === '' || !Number.isFinite(factor)) return setWrong(tell('own.screen.noNumber'))
        setWrong(undefined)
        onChange(factor)
      }}
    />
  )
}
