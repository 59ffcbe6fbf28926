import { useState } from 'react'
import type { TapedMeasure } from '../../core/draw/tape.ts'
import { printLengthBare } from '../../core/words/length.ts'
import { WORKROOM_UNITS, type WorkroomUnit } from '../../core/words/units.ts'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { MeasureTaking } from '../help/help.tsx'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { useForgetAll, useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { todayHere } from '../parts/today.ts'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'
import { FormReader } from './form-reader.tsx'
import { useDoubts } from './use-doubts.ts'

type Adding = InputOf<'measurementSet.add'>
type Of = NonNullable<Adding['proportionsOf']>
type Estimates = OutputOf<'measures.estimate'>['estimates']
type Known = OutputOf<'measures.list'>['measures'][number]

type Props = {
  client: OutputOf<'client.get'>['client']
  /** The latest set, from which a new one starts. */
  from: OutputOf<'client.get'>['measurementSets'][number] | undefined
  onTaken: () => void
}

const GROUPS = ['standing', 'headAndNeck', 'shoulders', 'trunk', 'arm', 'leg'] as const
const REMARKS = ['posture', 'shoulders', 'hair', 'movement', 'allergies'] as const
const PEOPLE = ['all', 'women', 'men'] as const

/** A taking of measures: in the order one takes them, in whichever unit the tape has, looked over as it grows. */
export function MeasureForm({ client, from, onTaken }: Props) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { value } = useQuery('measures.list', {})
  const { value: construction } = useQuery('construction.describe', { id: 'goredUndertunic' })
  const [unit, setUnit] = useHalfFilled<WorkroomUnit>('unit', from?.unit ?? reader.unit)
  const [typed, setTyped] = useHalfFilled<Record<string, string>>('typed', () =>
    written(from, unit, reader.locale),
  )
  const [estimates, setEstimates] = useHalfFilled<Estimates>('estimates', [])
  const [of, setOf] = useHalfFilled<Of | 'all'>('of', from?.proportionsOf ?? 'all')
  const [notes, setNotes] = useHalfFilled<Record<string, string>>('notes', from?.notes ?? {})
  const [remarks, setRemarks] = useHalfFilled<Record<string, string>>('remarks', from?.remarks ?? {})
  const [taking, setTaking] = useHalfFilled('taking', {
    day: todayHere(),
    takenBy: '',
    over: from?.over ?? '',
    note: '',
  })
  const [sought, setSought] = useState('')
  const [onlyNeeded, setOnlyNeeded] = useState(false)
  const [focused, setFocused] = useState<string>()
  const doing = useDoing()
  const forget = useForgetAll()

  const known = value?.measures ?? []
  const entered = Object.fromEntries(Object.entries(typed).filter(([, text]) => text.trim() !== ''))
  const checked = useDoubts({
    ...{ measures: entered, unit, birthDay: client.birthDay },
    ...(of === 'all' ? {} : { of }),
  })
  const doubts = checked?.flags ?? []
  const guessed = new Map(
    estimates
      .filter(({ measure }) => entered[measure] === undefined)
      .map((one) => [one.measure as string, one]),
  )
  const wanted = new Set<string>((construction?.required ?? []).flat())
  const shown = known.filter(
    ({ id, name, also }) => matches(sought, `${name}, ${also}`) && (!onlyNeeded || wanted.has(id)),
  )
  const lacking = (construction?.required ?? []).filter((ids) =>
    (ids as string[]).every((id) => entered[id] === undefined && !guessed.has(id)),
  )

  const change = (to: string) => {
    const next = to as WorkroomUnit
    // What was carried over is written anew; what was typed since stays as it was typed.
    const [was, now] = [written(from, unit, reader.locale), written(from, next, reader.locale)]
    setTyped(
      Object.fromEntries(Object.entries(typed).map(([id, text]) => [id, text === was[id] ? now[id]! : text])),
    )
    setUnit(next)
  }
  const estimate = () =>
    doing.run(async () => {
      const asked = { measures: entered, unit, birthDay: client.birthDay, ...(of === 'all' ? {} : { of }) }
      setEstimates((await workroom.ask('measures.estimate', asked)).estimates)
    })
  const take = () =>
    doing
      .run(() =>
        workroom.ask('measurementSet.add', {
          ...{ clientId: client.id, unit, notes: filled(notes), remarks: filled(remarks) },
          measures: { ...entered, ...Object.fromEntries([...guessed].map(asEstimated)) },
          proportionsOf: of === 'all' ? null : of,
          ...{ takenBy: taking.takenBy, over: taking.over, note: taking.note },
          ...(taking.day === '' ? {} : { day: taking.day }),
          ...(from === undefined ? {} : { supersedes: from.id }),
        }),
      )
      .then((done) => {
        if (!done) return
        forget()
        onTaken()
      })
  const wrongAt = doing.refused?.field?.replace('measures.', '')
  /** Which measures would do in the place of a needed one, this one first; nothing where it is not needed. */
  const neededOf = (id: string) =>
    (lacking.find((ids) => (ids as string[]).includes(id)) as string[] | undefined)?.toSorted(
      (a, b) => Number(b === id) - Number(a === id),
    )
  const line = (measure: Known) => (
    <MeasureLine
      key={measure.id}
      measure={measure}
      value={typed[measure.id] ?? ''}
      estimated={guessed.get(measure.id)?.text}
      doubt={doubts.find((one) => one.measure === measure.id)?.sentence}
      note={notes[measure.id] ?? ''}
      wrong={wrongAt === measure.id ? doing.refused?.message : undefined}
      needed={neededOf(measure.id)}
      onFocus={() => setFocused(measure.id)}
      onChange={(text) => setTyped((before) => ({ ...before, [measure.id]: text }))}
      onNote={(text) => setNotes((before) => ({ ...before, [measure.id]: text }))}
    />
  )
  return (
    <form
      className="sheet stack"
      onSubmit={(event) => {
        event.preventDefault()
        void take()
      }}
    >
      <h2>{tell(from === undefined ? 'screen.measure.first' : 'screen.measure.again')}</h2>
      <p className="quiet">
        {tell('screen.measure.about')} {tell('screen.measure.sides')}
      </p>
      <div className="columns">
        <SelectField
          label={tell('screen.first.unit')}
          value={unit}
          onChange={change}
          options={WORKROOM_UNITS.map((id) => ({ id, name: tell(`screen.unit.${id}`) }))}
        />
        <SelectField
          label={tell('screen.measure.of.label')}
          value={of}
          onChange={(id) => setOf(id as Of)}
          options={PEOPLE.map((id) => ({ id, name: tell(`screen.measure.of.${id}`) }))}
          help={tell('screen.measure.of.help')}
        />
        <TextField label={tell('screen.measure.find')} value={sought} onChange={setSought} />
        <Tick wanted name={tell('client.onlyNeeded')} done={onlyNeeded} onChange={setOnlyNeeded} />
      </div>
      <FormReader onRead={(measures) => setTyped((before) => ({ ...before, ...measures }))} />
      <div className="taking">
        <div className="stack">
          {GROUPS.map((group) => {
            const here = shown.filter((measure) => measure.group === group)
            return here.length === 0 ? null : (
              <fieldset key={group} className="measure-group">
                <legend>{tell(`screen.measure.group.${group}`)}</legend>
                {here.map(line)}
              </fieldset>
            )
          })}
        </div>
        <Helper measure={known.find(({ id }) => id === focused) ?? shown[0]} />
      </div>
      <p className={lacking.length === 0 ? 'quiet' : undefined}>
        {lacking.length === 0
          ? tell('screen.measure.lacksNone')
          : tell('screen.measure.lacks', {
              measures: lacking
                .map((ids) => ids.map((id) => tell(`measure.name.${id}`)).join(' / '))
                .join(', '),
            })}
      </p>
      <div className="lay-tools">
        <Button onPress={() => void estimate()} busy={doing.busy}>
          {tell('screen.measure.estimate')}
        </Button>
        {estimates.length === 0 ? null : (
          <Button onPress={() => setEstimates([])}>{tell('screen.measure.forget')}</Button>
        )}
      </div>
      <section aria-live="polite">
        {checked === undefined || Object.keys(entered).length === 0 ? null : doubts.length === 0 ? (
          <p className="quiet">{tell('screen.measure.noDoubts')}</p>
        ) : (
          <>
            <h3>{tell('screen.measure.doubts')}</h3>
            <ul>
              {doubts.map(({ measure, sentence }) => (
                <li key={`${measure}${sentence}`} className={notes[measure] ? 'quiet' : 'doubt'}>
                  {sentence} {notes[measure] ?? ''}
                </li>
              ))}
            </ul>
          </>
        )}
        <p className="quiet">{tell(checked?.grown === false ? 'screen.measure.child' : 'measure.survey')}</p>
      </section>
      <div className="columns">
        <TextField
          label={tell('screen.measure.takenBy')}
          value={taking.takenBy}
          onChange={(takenBy) => setTaking({ ...taking, takenBy })}
        />
        <TextField
          label={tell('screen.measure.day')}
          type="date"
          value={taking.day}
          onChange={(day) => setTaking({ ...taking, day })}
        />
        <TextField
          label={tell('screen.measure.over')}
          value={taking.over}
          onChange={(over) => setTaking({ ...taking, over })}
          help={tell('screen.measure.over.help')}
        />
        <TextField
          label={tell('screen.measure.note')}
          value={taking.note}
          onChange={(note) => setTaking({ ...taking, note })}
        />
      </div>
      <details>
        <summary>{tell('screen.measure.remarks')}</summary>
        <div className="columns">
          {REMARKS.map((id) => (
            <TextField
              key={id}
              label={tell(`screen.measure.remark.${id}`)}
              value={remarks[id] ?? ''}
              onChange={(text) => setRemarks((before) => ({ ...before, [id]: text }))}
            />
          ))}
        </div>
      </details>
      <Refusal sentence={doing.refused?.message} />
      <div>
        <Button main type="submit" busy={doing.busy}>
          {tell('screen.measure.keep')}
        </Button>
      </div>
    </form>
  )
}

type LineProps = {
  measure: Known
  value: string
  estimated: string | undefined
  doubt: string | undefined
  note: string
  wrong: string | undefined
  needed: readonly string[] | undefined
  onFocus: () => void
  onChange: (text: string) => void
  onNote: (text: string) => void
}

function MeasureLine(line: LineProps) {
  const tell = useTell()
  const { name } = line.measure
  return (
    <div className={line.doubt === undefined ? 'measure-line' : 'measure-line in-doubt'}>
      <TextField
        label={
          line.needed === undefined
            ? name
            : line.needed.length === 1
              ? tell('screen.measure.needed', { name })
              : tell('screen.measure.neededOr', {
                  name,
                  other: tell(`measure.name.${line.needed[1] as TapedMeasure}`),
                })
        }
        value={line.value}
        onChange={line.onChange}
        onFocus={line.onFocus}
        placeholder={
          line.estimated === undefined
            ? undefined
            : tell('screen.measure.estimated', { text: line.estimated })
        }
        wrong={line.wrong}
        help={line.doubt}
      />
      {line.doubt === undefined && line.note === '' ? null : (
        <TextField
          label={`${tell('screen.measure.why')}: ${name}`}
          value={line.note}
          onChange={line.onNote}
        />
      )}
    </div>
  )
}

/** How the measure at hand is taken, in words and as a drawing. */
function Helper({ measure }: { measure: Known | undefined }) {
  if (measure === undefined) return null
  return (
    <aside className="measure-help">
      <p>
        <strong>{measure.name}</strong>
      </p>
      <MeasureTaking measure={measure.id} />
      {measure.caveat === undefined ? null : <p className="quiet">{measure.caveat}</p>}
    </aside>
  )
}

const asEstimated = ([id, { mm, sd }]: [string, Estimates[number]]) =>
  [id, { length: mm, source: 'estimated' as const, sd }] as const

const filled = (texts: Record<string, string>): Record<string, string> =>
  Object.fromEntries(Object.entries(texts).filter(([, text]) => text.trim() !== ''))

const matches = (sought: string, text: string): boolean =>
  text.toLocaleLowerCase().includes(sought.trim().toLocaleLowerCase())

/** A set as it would be typed; estimates are made anew, not carried over. */
const written = (from: Props['from'], unit: WorkroomUnit, locale: string): Record<string, string> => {
  const bare = (mm: number) => printLengthBare(mm, unit, locale)
  return Object.fromEntries(
    Object.entries(from?.measures ?? {}).flatMap(([id, { mm, source, sides }]) => {
      if (source === 'estimated') return []
      return [[id, sides === undefined ? bare(mm) : `L ${bare(sides.left)} R ${bare(sides.right)}`]]
    }),
  )
}
