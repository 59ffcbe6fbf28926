import { useState } from 'react'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { SelectField } from '../parts/field.tsx'
import { Millimetres } from '../parts/millimetres.tsx'
import { Tick } from '../parts/tick.tsx'
import { useTell } from '../workroom.tsx'
import { type Definition, type Edge, freeId, type Tried } from './definition.ts'

type Props = {
  definition: Definition
  onChange: (definition: Definition) => void
  chosen: Edge[]
  onDone: () => void
  pieces: Tried['pieces']
  measures: OutputOf<'measures.list'>['measures']
}

/** What is done with the edges that are picked: sewn together, hemmed, or held against a measure. */
export function SewPicked({ definition, onChange, chosen, onDone, pieces, measures }: Props) {
  const tell = useTell()
  const [gathered, setGathered] = useState(false)
  const [depth, setDepth] = useState(15)
  const [measure, setMeasure] = useState('bustGirth')
  const [ease, setEase] = useState(80)
  const nameOf = ({ piece }: Edge) => definition.pieces.find(({ id }) => id === piece)?.name ?? piece
  const lengthOf = (edges: Edge[]) =>
    edges.reduce(
      (sum, { piece, edge }) =>
        sum + (pieces.find(({ id }) => id === piece)?.edges.find(({ id }) => id === edge)?.length ?? 0),
      0,
    )
  const names = (edges: Edge[]) => [...new Set(edges.map(nameOf))].join(', ')
  const taken = [...definition.seams, ...definition.hems]
  const sew = () => {
    const [first, ...rest] = chosen
    const sides: [Edge[], Edge[]] = [[first!], rest]
    // What is gathered is the longer of the two.
    const [a, b] = gathered && lengthOf(sides[0]) < lengthOf(sides[1]) ? [sides[1], sides[0]] : sides
    const seam = { id: freeId('seam', taken), name: `${names(a)} – ${names(b)}`, a, b, gathered }
    onChange({ ...definition, seams: [...definition.seams, seam] })
    onDone()
  }
  const hem = () => {
    const name = tell('own.screen.hemOf', { pieces: names(chosen) })
    const made = { id: freeId('hem', taken), name, edges: chosen, depth, seen: true }
    onChange({ ...definition, hems: [...definition.hems, made] })
    onDone()
  }
  const level = () => {
    const name = measures.find(({ id }) => id === measure)?.name ?? measure
    const made = { name, measure: measure as Definition['fit'][number]['measure'], ease, edges: chosen }
    onChange({ ...definition, fit: [...definition.fit, made] })
    onDone()
  }
  return (
    <div className="own-picked">
      <p className="quiet">
        {chosen.length === 0 ? tell('own.screen.pick') : tell('own.screen.picked', { count: chosen.length })}
      </p>
      <div className="lay-tools">
        <Button main onPress={sew} busy={chosen.length < 2}>
          {tell(chosen.length > 2 ? 'own.screen.sewRest' : 'own.screen.sew')}
        </Button>
        <Tick name={tell('own.screen.gather')} done={gathered} onChange={setGathered} />
      </div>
      <div className="lay-tools">
        <Millimetres label={tell('own.screen.hemDepth')} value={depth} onChange={setDepth} />
        <Button onPress={hem} busy={chosen.length === 0}>
          {tell('own.screen.hem')}
        </Button>
      </div>
      <div className="lay-tools">
        <SelectField
          label={tell('own.screen.goesRound')}
          value={measure}
          onChange={setMeasure}
          options={measures}
        />
        <Millimetres label={tell('own.screen.ease')} value={ease} onChange={setEase} />
        <Button onPress={level} busy={chosen.length === 0}>
          {tell('own.screen.check')}
        </Button>
      </div>
    </div>
  )
}

/** The seams and hems there are, in sewing order, and the levels held against a measure; each can be undone. */
export function Sewn({ definition, onChange }: Pick<Props, 'definition' | 'onChange'>) {
  const tell = useTell()
  const without = <T,>(all: T[], at: number): T[] => all.filter((_, i) => i !== at)
  const rows = [
    ...definition.seams.map((seam, i) => ({
      ...{
        key: seam.id,
        words: tell(seam.gathered ? 'own.screen.seamGathered' : 'own.screen.seam', { name: seam.name }),
      },
      undo: () => onChange({ ...definition, seams: without(definition.seams, i) }),
    })),
    ...definition.hems.map((hem, i) => ({
      ...{ key: hem.id, words: tell('own.screen.hemLine', { name: hem.name, depth: { mm: hem.depth } }) },
      undo: () => onChange({ ...definition, hems: without(definition.hems, i) }),
    })),
    ...definition.fit.map((fit, i) => ({
      ...{ key: `fit-${i}`, words: tell('own.screen.fitLine', { name: fit.name, ease: { mm: fit.ease } }) },
      undo: () => onChange({ ...definition, fit: without(definition.fit, i) }),
    })),
  ]
  return rows.length === 0 ? null : (
    <ol className="own-sewn">
      {rows.map(({ key, words, undo }) => (
        <li key={key}>
          <span>{words}</span>
          <Button onPress={undo} label={tell('own.screen.undo', { what: words })}>
            {tell('own.screen.undoIt')}
          </Button>
        </li>
      ))}
    </ol>
  )
}
