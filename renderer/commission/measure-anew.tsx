import { printLength } from '../../core/words/length.ts'
import { ActForm } from '../parts/acts.tsx'
import { TextField } from '../parts/field.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { useHouse, useQuery, useTell } from '../workroom.tsx'
import type { Fitting } from './fittings.tsx'
import type { Followed, Garment } from './logged.ts'
import { type Made, PickGarment } from './pick-garment.tsx'

type Props = {
  commission: Followed
  garments: readonly Garment[]
  fittingId: string
  close: () => void
  /** What comes after it, be it that nothing changed; without it that has to be left. */
  then?: () => void
  onDone: (fitting: Fitting) => void
}

/** Measures taken again at a fitting: those of the garment that was tried on, each with what it was. */
export const MeasureAnew = ({ commission, garments, ...props }: Props) => (
  <PickGarment {...{ commission, garments }}>
    {(picked) => <Fields key={picked.garmentId} {...picked} {...props} />}
  </PickGarment>
)

type FieldsProps = Omit<Props, 'commission' | 'garments'> & { garmentId: string; made: Made }

function Fields({ garmentId, made, fittingId, close, then, onDone }: FieldsProps) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { value: construction } = useQuery('construction.describe', { id: made.construction })
  const { value: kept } = useQuery('measurementSet.get', { id: made.measurementSet.id })
  const [typed, setTyped] = useHalfFilled<Readonly<Record<string, string>>>(`anew ${garmentId}`, {})
  if (construction === undefined || kept === undefined) return null
  const { measures } = kept.measurementSet
  const ids = [...new Set([...construction.required.flat(), ...construction.useful])]
  const changed = Object.fromEntries(Object.entries(typed).filter(([, text]) => text.trim() !== ''))
  const passed = then !== undefined && Object.keys(changed).length === 0
  return (
    <ActForm
      label={tell('redraft.measure')}
      keep={tell(passed ? 'redraft.measure.pass' : 'redraft.measure.keep')}
      close={close}
      then={then ?? close}
      work={async () => {
        if (passed) return
        const asked = { id: fittingId, garmentId, measures: changed }
        const { fitting } = await workroom.ask('fitting.measure', asked)
        onDone(fitting)
      }}
    >
      <p className="quiet">{tell('redraft.measure.about')}</p>
      <div className="columns">
        {ids.map((id) => {
          const was = measures[id]?.mm
          return (
            <TextField
              key={id}
              label={tell(`measure.name.${id}`)}
              value={typed[id] ?? ''}
              placeholder={was === undefined ? undefined : printLength(was, reader.unit, reader.locale)}
              onChange={(text) => setTyped({ ...typed, [id]: text })}
            />
          )
        })}
      </div>
    </ActForm>
  )
}
