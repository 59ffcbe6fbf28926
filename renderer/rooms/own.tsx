import { useState } from 'react'
import { drawGarment, garmentScale } from '../../core/draw/garment.ts'
import { phrase } from '../../core/words/phrase.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { blank, type Definition, type Edge, freeId, sameEdge, withoutPiece } from '../own/definition.ts'
import { EdgePicker } from '../own/edge-picker.tsx'
import { PieceForm } from '../own/piece-form.tsx'
import { Sewn, SewPicked } from '../own/sewing.tsx'
import { useTrial } from '../own/use-trial.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { saved } from '../parts/saved.ts'
import { SheetDrawing } from '../parts/sheet-drawing.tsx'
import { goTo } from '../router.ts'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

/** A garment of the maker's own: a new one, or the next version of one that she wrote before. */
export function Own({ family }: { family: string | undefined }) {
  const tell = useTell()
  if (family === undefined) return <Editor first={blank(tell('own.screen.unnamed'))} family={undefined} />
  return <Known family={family} />
}

function Known({ family }: { family: string }) {
  const { value, refused } = useQuery('ownConstruction.get', { family })
  if (value === undefined) return <Refusal sentence={refused} />
  return <Editor first={value.construction.definition} family={family} version={value.construction.version} />
}

type Props = { first: Definition; family: string | undefined; version?: number }

function Editor({ first, family, version }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const [definition, setDefinition, forget] = useHalfFilled('definition', first)
  const [chosen, setChosen] = useState<Edge[]>([])
  const [wearerId, setWearer] = useState<string>()
  const { value: book } = useQuery('clients.list', {})
  const wearer = wearerId ?? book?.clients[0]?.id
  const { value: shapes } = useQuery('ownConstruction.shapes', {})
  const { value: measures } = useQuery('measures.list', {})
  const setId = useSet(wearer)
  const { tried, refused } = useTrial(definition, setId)
  const doing = useDoing()
  if (shapes === undefined || measures === undefined) return null
  const sewn = [
    ...definition.seams.flatMap(({ a, b }) => [...a, ...b]),
    ...definition.hems.flatMap(({ edges }) => edges),
  ]
  const pick = (edge: Edge) =>
    setChosen(
      chosen.some((one) => sameEdge(one, edge))
        ? chosen.filter((one) => !sameEdge(one, edge))
        : [...chosen, edge],
    )
  const change = (next: Definition) => {
    setDefinition(next)
    setChosen([])
  }
  const add = () => {
    const id = freeId('piece', definition.pieces)
    const piece: Definition['pieces'][number] = {
      ...{
        id,
        name: tell('own.screen.newPiece', { number: definition.pieces.length + 1 }),
        shape: 'rectangle',
      },
      dimensions: { width: { measure: 'bustGirth', factor: 0.5, ease: 60 }, length: { fixed: 600 } },
      ...{ count: 1, pairs: false, marks: [], grain: 'straight', cloth: 'main' },
    }
    change({ ...definition, pieces: [...definition.pieces, piece] })
  }
  const keep = () =>
    doing.run(async () => {
      const asked = family === undefined ? { definition } : { definition, family }
      const { construction } = await workroom.ask('ownConstruction.save', asked)
      forget()
      goTo('desk', undefined, { garment: `own:${construction.family}` })
    })
  const write = () =>
    doing.run(async () => {
      const { name, text } = await workroom.ask('ownConstruction.write', { family: family! })
      saved(name, text, 'application/json')
    })
  const read = (file: File | undefined) =>
    doing.run(async () => {
      if (file === undefined) return
      const { construction } = await workroom.ask('ownConstruction.read', { text: await file.text() })
      goTo('own', construction.family)
    })
  const empty = definition.pieces.length === 0
  return (
    <div className="desk own">
      <section className="desk-choices stack" aria-label={tell('own.screen.pieces')}>
        <h1>{tell('own.screen.title')}</h1>
        <p className="quiet">{tell('own.screen.about')}</p>
        <TextField
          label={tell('own.screen.name')}
          value={definition.name}
          onChange={(name) => setDefinition({ ...definition, name })}
        />
        <TextField
          label={tell('own.screen.summary')}
          value={definition.summary}
          onChange={(summary) => setDefinition({ ...definition, summary })}
        />
        <SelectField
          label={tell('draft.choice.seamFinish')}
          value={definition.finish}
          onChange={(finish) => setDefinition({ ...definition, finish: finish as Definition['finish'] })}
          options={(['felled', 'open'] as const).map((id) => ({ id, name: tell(`draft.value.${id}`) }))}
        />
        <SelectField
          label={tell('own.screen.tryOn')}
          value={wearer ?? ''}
          onChange={setWearer}
          options={book?.clients ?? []}
        />
        {definition.pieces.map((piece) => (
          <PieceForm
            key={piece.id}
            piece={piece}
            others={definition.pieces.filter(({ id }) => id !== piece.id)}
            shapes={shapes.shapes}
            measures={measures.measures}
            onChange={(next) =>
              setDefinition({
                ...definition,
                pieces: definition.pieces.map((one) => (one.id === piece.id ? next : one)),
              })
            }
            onRemove={() => change(withoutPiece(definition, piece.id))}
          />
        ))}
        <div>
          <Button onPress={add}>{tell('own.screen.add')}</Button>
        </div>
      </section>
      <section className="desk-results stack" aria-label={tell('own.screen.sewing')}>
        <div className="bill">
          {empty ? null : <Verdict tried={tried} />}
          <Button
            main={!empty}
            onPress={() => void keep()}
            busy={doing.busy || empty || definition.name.trim() === ''}
          >
            {tell(version === undefined ? 'own.screen.keep' : 'own.screen.keepAs', {
              version: (version ?? 0) + 1,
            })}
          </Button>
          {family === undefined ? null : (
            <Button onPress={() => void write()}>{tell('own.screen.write')}</Button>
          )}
        </div>
        <Refusal sentence={doing.refused?.message ?? refused} />
        {empty ? (
          <HowTo onAdd={add} />
        ) : (
          <>
            <Faults faults={tried?.faults ?? []} />
            <h2>{tell('own.screen.edges')}</h2>
            <EdgePicker pieces={tried?.pieces ?? []} sewn={sewn} chosen={chosen} onPick={pick} />
            <SewPicked
              {...{ definition, chosen, measures: measures.measures, pieces: tried?.pieces ?? [] }}
              onChange={change}
              onDone={() => setChosen([])}
            />
            <Sewn definition={definition} onChange={change} />
            <Unfolded draft={tried?.draft} name={definition.name} />
          </>
        )}
        <details>
          <summary>{tell('own.screen.read')}</summary>
          <div className="field">
            <label htmlFor="own-file">{tell('own.screen.file')}</label>
            <input
              id="own-file"
              type="file"
              accept="application/json,.json"
              onChange={(event) => void read(event.target.files?.[0])}
            />
          </div>
        </details>
      </section>
    </div>
  )
}

/** What there is to do, before there is anything to look at. */
function HowTo({ onAdd }: { onAdd: () => void }) {
  const tell = useTell()
  return (
    <>
      <ol>
        {(['piece', 'sew', 'keep'] as const).map((step) => (
          <li key={step}>{tell(`own.screen.how.${step}`)}</li>
        ))}
      </ol>
      <div>
        <Button main onPress={onAdd}>
          {tell('own.screen.first')}
        </Button>
      </div>
    </>
  )
}

/** The latest measures of a client. */
function useSet(clientId: string | undefined): string | undefined {
  const { value } = useQuery('client.get', { id: clientId ?? '' })
  const sets =
    value?.client.id === clientId ? value?.measurementSets.filter(({ retired }) => !retired) : undefined
  return sets?.at(-1)?.id
}

type Trial = OutputOf<'ownConstruction.try'>

function Verdict({ tried }: { tried: Trial | undefined }) {
  const tell = useTell()
  if (tried === undefined) return <p>{tell('own.screen.noBody')}</p>
  const fails = tried.draft?.fit.filter(({ status }) => status === 'fails').length ?? 0
  if (tried.faults.length > 0)
    return (
      <p role="status">
        {tell(tried.faults.length === 1 ? 'own.screen.faults.one' : 'own.screen.faults', {
          count: tried.faults.length,
        })}
      </p>
    )
  return (
    <p role="status">{fails > 0 ? tell('own.screen.tight', { count: fails }) : tell('own.screen.sound')}</p>
  )
}

/** What is wrong, the first few of it. */
function Faults({ faults }: { faults: readonly string[] }) {
  const tell = useTell()
  if (faults.length === 0) return null
  return (
    <ul className="refusal misfits">
      {faults.slice(0, SHOWN).map((fault) => (
        <li key={fault}>{fault}</li>
      ))}
      {faults.length > SHOWN ? <li>{tell('own.screen.more', { count: faults.length - SHOWN })}</li> : null}
    </ul>
  )
}

const SHOWN = 6

function Unfolded({ draft, name }: { draft: Trial['draft']; name: string }) {
  const { reader } = useHouse()
  const tell = useTell()
  if (draft?.flat === undefined) return null
  const scale = garmentScale(draft.flat, { width: 110, height: 90 })
  return (
    <>
      <h2>{tell('own.screen.unfolded')}</h2>
      <div className="drawn">
        <SheetDrawing
          drawing={drawGarment(draft.flat, phrase('draft.own.words', { text: name }), reader, scale)}
        />
      </div>
    </>
  )
}
