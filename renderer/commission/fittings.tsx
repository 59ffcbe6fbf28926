import { printDate } from '../../core/words/dates.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Acts } from '../parts/acts.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useHouse, useQuery, useTell } from '../workroom.tsx'
import { DraftAgain } from './draft-again.tsx'
import { Found } from './fitting-flow.tsx'
import { Book, Move, TakeOff } from './fitting-forms.tsx'
import { FITTINGS } from './holds.tsx'
import { type Followed, useGarmentNames } from './logged.ts'
import { MeasureAnew } from './measure-anew.tsx'

/** A fitting, with the minutes it added. */
export type Fitting = OutputOf<'fittings.list'>['fittings'][number]

type Props = { commission: Followed; onChanged: () => void }

/** The fittings of a commission: those booked, and what those held have found. */
export function Fittings({ commission, onChanged }: Props) {
  const tell = useTell()
  const { value, refused, reload } = useQuery('fittings.list', { commissionId: commission.id })
  const again = () => {
    reload()
    onChanged()
  }
  return (
    <section className="sheet stack">
      <h2 id={FITTINGS} tabIndex={-1}>
        {tell('life.fittings')}
      </h2>
      <Refusal sentence={refused} />
      {value?.fittings.length === 0 ? <p className="quiet">{tell('life.fittings.none')}</p> : null}
      <ul className="entries life">
        {value?.fittings.map((fitting) => (
          <Entry key={fitting.id} {...{ commission, fitting }} onChanged={again} />
        ))}
      </ul>
      {commission.state === 'open' ? (
        <Acts
          acts={[
            {
              ...{ id: 'book', words: tell('life.fitting.book') },
              form: (close) => <Book commission={commission} close={close} onDone={again} />,
            },
          ]}
        />
      ) : null}
    </section>
  )
}

function Entry({ commission, fitting, onChanged }: Props & { fitting: Fitting }) {
  const { reader } = useHouse()
  const tell = useTell()
  const nameOf = useGarmentNames(commission)
  const { day, time, note, garmentId, heldAt, found, minutesAdded, recut, measurementSetId } = fitting
  const date = printDate(day, reader.locale)
  const when = time === '' ? date : tell('life.fitting.at', { day: date, time })
  const garment = commission.garments.find(({ id }) => id === garmentId)
  const held = heldAt !== null
  const garments = garment === undefined ? commission.garments : [garment]
  const came = [
    ...(minutesAdded === 0 ? [] : [tell('life.fitting.added.said', { time: printMinutes(minutesAdded) })]),
    ...(recut.length === 0 ? [] : [tell('life.fitting.recut.said', { pieces: recut.join(', ') })]),
    ...(measurementSetId === null ? [] : [tell('life.fitting.set.said')]),
  ]
  const act = (id: 'hold' | 'change' | 'move' | 'remove') => {
    const words = tell(`life.fitting.${id}`)
    return { id, words, label: tell('life.doing', { doing: words, what: when }) }
  }
  const given = { fitting, when, onDone: onChanged }
  return (
    <li>
      <p>
        <strong>{when}</strong>
        {garment === undefined ? '' : ` · ${nameOf(garment)}`}
        {held ? <span className="done"> · ✓ {tell('life.fitting.held')}</span> : null}
      </p>
      {note === '' ? null : <p className="quiet">{note}</p>}
      {found === '' ? null : <p className="written">{found}</p>}
      {came.length === 0 ? null : <p>{came.join(' · ')}</p>}
      <Acts
        plain
        acts={[
          {
            ...act(held ? 'change' : 'hold'),
            // The same act before and after, for what it leads to goes on once it is held.
            id: 'found',
            form: (close) => <Found {...{ ...given, commission, garments, close }} />,
          },
          ...(commission.state === 'open'
            ? [
                {
                  ...{ id: 'measure', words: tell('redraft.measure') },
                  label: tell('life.doing', { doing: tell('redraft.measure'), what: when }),
                  form: (close: () => void) => (
                    <MeasureAnew
                      {...{ commission, garments, fittingId: fitting.id, close }}
                      onDone={onChanged}
                    />
                  ),
                },
                {
                  ...{ id: 'redraft', words: tell('redraft.title') },
                  label: tell('life.doing', { doing: tell('redraft.title'), what: when }),
                  form: (close: () => void) => (
                    <DraftAgain {...{ commission, garments, fitting, close }} onDone={onChanged} />
                  ),
                },
              ]
            : []),
          ...(held
            ? []
            : [{ ...act('move'), form: (close: () => void) => <Move {...given} close={close} /> }]),
          { ...act('remove'), form: (close) => <TakeOff {...given} close={close} /> },
        ]}
      />
    </li>
  )
}
