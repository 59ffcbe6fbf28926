import { ActForm } from '../parts/acts.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { useTyped } from '../parts/typed.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { Fitting } from './fittings.tsx'
import { type Followed, useGarmentNames } from './logged.ts'

type Form = { close: () => void; onDone: () => void }
type OfOne = Form & { fitting: Fitting; when: string }

/** A fitting to be booked. */
export function Book({ commission, close, onDone }: Form & { commission: Followed }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const nameOf = useGarmentNames(commission)
  const { garments } = commission
  const { typed, field } = useTyped({
    ...{ day: '', time: '', note: '' },
    garmentId: garments.length === 1 ? garments[0]!.id : '',
  })
  const { garmentId, ...rest } = typed
  return (
    <ActForm
      label={tell('life.fitting.book')}
      keep={tell('life.fitting.keep')}
      close={close}
      work={async () => {
        const asked = { commissionId: commission.id, garmentId: garmentId || null, ...rest }
        await workroom.ask('fitting.add', asked)
        onDone()
      }}
    >
      <div className="columns">
        <TextField label={tell('life.fitting.day')} type="date" required {...field('day')} />
        <TextField label={tell('life.fitting.time')} type="time" {...field('time')} />
        {garments.length === 1 ? null : (
          <SelectField
            label={tell('life.fitting.garment')}
            options={[
              { id: '', name: tell('life.fitting.everything') },
              ...garments.map((garment) => ({ id: garment.id, name: nameOf(garment) })),
            ]}
            {...field('garmentId')}
          />
        )}
        <TextField label={tell('life.fitting.about')} {...field('note')} />
      </div>
    </ActForm>
  )
}

/** Another day for a fitting. */
export function Move({ fitting: { id, revision, day, time }, when, close, onDone }: OfOne) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { typed, field } = useTyped({ day, time })
  return (
    <ActForm
      label={tell('life.doing', { doing: tell('life.fitting.move'), what: when })}
      keep={tell('life.fitting.moveKeep')}
      close={close}
      work={async () => {
        await workroom.ask('fitting.move', { id, revision, ...typed })
        onDone()
      }}
    >
      <div className="columns">
        <TextField label={tell('life.fitting.day')} type="date" required {...field('day')} />
        <TextField label={tell('life.fitting.time')} type="time" {...field('time')} />
      </div>
    </ActForm>
  )
}

/** Asks once before a fitting is taken off. */
export function TakeOff({ fitting: { id, revision }, when, close, onDone }: OfOne) {
  const { workroom } = useHouse()
  const tell = useTell()
  return (
    <ActForm
      label={tell('life.doing', { doing: tell('life.fitting.remove'), what: when })}
      keep={tell('life.fitting.remove')}
      close={close}
      work={async () => {
        await workroom.ask('fitting.remove', { id, revision })
        onDone()
      }}
    >
      <p>{tell('life.fitting.remove.sure', { day: when })}</p>
    </ActForm>
  )
}
