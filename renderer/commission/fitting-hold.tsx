import { useEffect, useState } from 'react'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import { ActForm } from '../parts/acts.tsx'
import { SelectField, TextArea, TextField } from '../parts/field.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { useTyped } from '../parts/typed.ts'
import { sentenceOf, useHouse, useTell } from '../workroom.tsx'
import type { Fitting } from './fittings.tsx'
import { type Followed, useGarmentNames } from './logged.ts'

type Props = {
  commission: Followed
  fitting: Fitting
  when: string
  close: () => void
  /** What comes after it; it closes, if nothing does. */
  then?: () => void
  onDone: (fitting: Fitting) => void
}

/** What a fitting found: in words, in work, in pieces to cut again and in measures. */
export function Hold({ commission, fitting, when, close, then = close, onDone }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { id, revision, found, minutesAdded } = fitting
  const { typed, field } = useTyped({
    found,
    added: minutesAdded === 0 ? '' : printMinutes(minutesAdded),
    set: fitting.measurementSetId ?? '',
  })
  const [recut, setRecut] = useHalfFilled<readonly string[]>('recut', fitting.recut)
  const { sets, pieces, refused } = useChoices(commission, fitting)
  return (
    <ActForm
      label={tell('life.doing', { doing: tell('life.fitting.hold'), what: when })}
      final="fitting.hold"
      keep={tell('life.fitting.holdKeep')}
      close={close}
      then={then}
      work={async () => {
        const { fitting: held } = await workroom.ask('fitting.hold', {
          ...{ id, revision, found: typed.found, recut: [...recut] },
          measurementSetId: typed.set || null,
          ...(typed.added.trim() === '' ? {} : { added: typed.added }),
        })
        onDone(held)
      }}
    >
      <TextArea label={tell('life.fitting.found')} {...field('found')} />
      <div className="columns">
        <TextField
          label={tell('life.fitting.added')}
          help={tell('life.fitting.added.help')}
          {...field('added')}
        />
        <SelectField
          label={tell('life.fitting.set')}
          options={[{ id: '', name: tell('life.fitting.set.none') }, ...sets]}
          {...field('set')}
        />
      </div>
      <Refusal sentence={refused} />
      {pieces.length === 0 ? null : (
        <fieldset className="picks recut">
          <legend>{tell('life.fitting.recut')}</legend>
          {pieces.map((piece) => (
            <Tick
              key={piece}
              wanted
              name={piece}
              done={recut.includes(piece)}
              onChange={(again) => setRecut(again ? [...recut, piece] : recut.filter((one) => one !== piece))}
            />
          ))}
        </fieldset>
      )}
    </ActForm>
  )
}

type Choices = { sets: { id: string; name: string }[]; pieces: string[] }

/** The sets of measures of all who wear something of this commission, the newest first, and the pieces fitted. */
function useChoices(commission: Followed, { garmentId }: Fitting): Choices & { refused: string | undefined } {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const nameOf = useGarmentNames(commission)
  const [choices, setChoices] = useState<Choices>({ sets: [], pieces: [] })
  const [refused, setRefused] = useState<string>()
  const ask = async () => {
    const { quote } = await workroom.ask('quote.get', { id: commission.quoteId })
    const wearers = new Set([...quote.snapshot.lines.map(({ wearer }) => wearer.id), commission.customerId])
    const books = await Promise.all([...wearers].map((id) => workroom.ask('client.get', { id })))
    const sets = books.flatMap(({ client, measurementSets }) =>
      [...measurementSets].reverse().map(({ id, day }) => ({
        ...{ id, name: tell('life.fitting.set.of', { name: client.name, day: { date: day } }) },
      })),
    )
    const fitted = commission.garments.filter(({ id }) => garmentId === null || id === garmentId)
    const lists = await Promise.all(
      fitted.map(async (garment) => {
        const { pieces } = await workroom.ask('pieces.list', { garmentId: garment.id })
        const names = pieces.map(({ copyName }) => say(copyName, reader))
        return fitted.length === 1
          ? names
          : names.map((what) => tell('life.doing', { doing: nameOf(garment), what }))
      }),
    )
    return { sets, pieces: [...new Set(lists.flat())] }
  }
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked once, when the form opens
  useEffect(() => {
    ask().then(setChoices, (error: unknown) => setRefused(sentenceOf(error)))
  }, [])
  return { ...choices, refused }
}
