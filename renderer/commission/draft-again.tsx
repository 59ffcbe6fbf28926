import { useEffect, useState } from 'react'
import { printLength } from '../../core/words/length.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { ChoicesForm, type Chosen } from '../desk/choices-form.tsx'
import { ActForm } from '../parts/acts.tsx'
import { SelectField } from '../parts/field.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { sentenceOf, useHouse, useQuery, useTell } from '../workroom.tsx'
import type { Followed, Garment } from './logged.ts'
import { type Made, PickGarment } from './pick-garment.tsx'

type Change = OutputOf<'garment.tryDraft'>['change']
type Props = {
  commission: Followed
  /** Garments that may be drafted again: all of them, or those of a fitting. */
  garments: readonly Garment[]
  fitting?: { id: string; measurementSetId: string | null }
  close: () => void
  onDone: () => void
}

/** A garment in work drafted again: which one, from which measures, with which choices, and what comes of it. */
export const DraftAgain = ({ commission, garments, ...props }: Props) => (
  <PickGarment {...{ commission, garments }}>
    {(picked) => <Again key={picked.garmentId} {...picked} {...props} />}
  </PickGarment>
)

type AgainProps = Omit<Props, 'commission' | 'garments'> & { garmentId: string; made: Made }

function Again({ garmentId, made, fitting, close, onDone }: AgainProps) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { value: construction } = useQuery('construction.describe', { id: made.construction })
  const { value: book } = useQuery('client.get', { id: made.wearer.id })
  const sets = book?.measurementSets ?? []
  const [picked, setSet] = useHalfFilled(`set ${garmentId}`, fitting?.measurementSetId)
  const set = sets.find(({ id }) => id === picked)?.id ?? made.measurementSet.id
  const [chosen, setChosen] = useHalfFilled<Chosen>(`choices ${garmentId}`, made.choices)
  const asked = { garmentId, measurementSetId: set, choices: chosen }
  const { change, refused } = useTry(asked)
  const [left, setLeft] = useHalfFilled<readonly string[]>(`left ${garmentId}`, [])
  return (
    <ActForm
      label={tell('redraft.title')}
      final="garment.draftAgain"
      keep={tell('redraft.keep')}
      close={close}
      work={async () => {
        await workroom.ask('garment.draftAgain', {
          ...asked,
          recut: change?.propose.filter((id) => !left.includes(id)),
          ...(fitting === undefined ? {} : { fittingId: fitting.id }),
        })
        onDone()
      }}
    >
      <p className="quiet">{tell('redraft.about')}</p>
      <SelectField
        label={tell('screen.desk.measures')}
        value={set}
        onChange={setSet}
        options={[...sets].reverse().map(({ id, day }) => ({
          id,
          name: tell(id === made.measurementSet.id ? 'redraft.set.now' : 'redraft.set', {
            day: { date: day },
          }),
        }))}
      />
      {construction === undefined ? null : (
        <ChoicesForm
          construction={construction}
          used={made.used}
          chosen={chosen}
          onChange={setChosen}
          wrong={undefined}
        />
      )}
      <Refusal sentence={refused} />
      {change === undefined ? null : <WhatChanges change={change} />}
      {change === undefined ? null : <ToCut {...{ change, left, setLeft }} />}
    </ActForm>
  )
}

/** From the last key to the trial, ms. */
const PAUSE = 250

/** What a draft would change, tried when the maker pauses; the last good answer stays until there is a better one. */
function useTry(asked: InputOf<'garment.tryDraft'>) {
  const { workroom } = useHouse()
  const [tried, setTried] = useState<{ change?: Change; refused?: string }>({})
  const key = JSON.stringify(asked)
  useEffect(() => {
    let late = false
    const wait = setTimeout(() => {
      workroom.ask('garment.tryDraft', JSON.parse(key) as typeof asked).then(
        ({ change }) => late || setTried({ change }),
        (error: unknown) => late || setTried((before) => ({ ...before, refused: sentenceOf(error) })),
      )
    }, PAUSE)
    return () => {
      late = true
      clearTimeout(wait)
    }
  }, [workroom, key])
  return tried
}

/** Pieces, cloth and hours, as they were and as they would be. */
function WhatChanges({ change: { changed, added, gone, cloth, minutes } }: { change: Change }) {
  const { reader } = useHouse()
  const tell = useTell()
  const size = ({ width, height }: { width: number; height: number }) =>
    [width, height].map((mm) => printLength(mm, reader.unit, reader.locale)).join(' × ')
  const none = changed.length + added.length + gone.length === 0
  return (
    <section className="stack" aria-live="polite" aria-label={tell('redraft.changes')}>
      <h3>{tell('redraft.changes')}</h3>
      {none ? <p>{tell('redraft.none')}</p> : null}
      {changed.length === 0 ? null : (
        <table className="ledger">
          <thead>
            <tr>
              <th scope="col">{tell('redraft.piece')}</th>
              <th scope="col">{tell('redraft.before')}</th>
              <th scope="col">{tell('redraft.after')}</th>
              <td />
            </tr>
          </thead>
          <tbody>
            {changed.map((one) => (
              <tr key={one.id}>
                <th scope="row">
                  {say(one.name, reader)} × {one.copies}
                </th>
                <td>{size(one.before)}</td>
                <td>{size(one.after)}</td>
                <td className={one.cut && !one.fitsWithin ? 'under' : 'quiet'}>
                  {one.cut ? tell(one.fitsWithin ? 'redraft.smaller' : 'redraft.anew') : ''}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {added.length === 0 ? null : (
        <p>{tell('redraft.added', { pieces: added.map(({ name }) => say(name, reader)).join(', ') })}</p>
      )}
      {gone.length === 0 ? null : (
        <p>{tell('redraft.gone', { pieces: gone.map(({ name }) => say(name, reader)).join(', ') })}</p>
      )}
      <p>
        {tell('redraft.figures', {
          ...{ before: { mm: cloth.before }, after: { mm: cloth.after } },
          ...{ hoursBefore: printMinutes(minutes.before), hoursAfter: printMinutes(minutes.after) },
        })}
      </p>
    </section>
  )
}

type ToCutProps = { change: Change; left: readonly string[]; setLeft: (left: readonly string[]) => void }

/** Of a garment that is cut, the pieces to cut for the new draft: all that are proposed, but for those she leaves. */
function ToCut({ change: { propose, pieces }, left, setLeft }: ToCutProps) {
  const { reader } = useHouse()
  const tell = useTell()
  if (propose.length === 0) return null
  return (
    <fieldset className="picks recut">
      <legend>{tell('redraft.recut')}</legend>
      {pieces
        .filter(({ id }) => propose.includes(id))
        .map(({ id, name, copies }) => (
          <Tick
            key={id}
            wanted
            name={`${say(name, reader)} × ${copies}`}
            done={!left.includes(id)}
            onChange={(cut) => setLeft(cut ? left.filter((one) => one !== id) : [...left, id])}
          />
        ))}
    </fieldset>
  )
}
