import { memo } from 'react'
import { say } from '../../core/words/say.ts'
import type { InputOf } from '../../core/workroom.ts'
import { WordHelp } from '../help/help.tsx'
import { SelectField } from '../parts/field.tsx'
import { Millimetres } from '../parts/millimetres.tsx'
import { Tick } from '../parts/tick.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import type { Estimate } from './use-estimate.ts'

/** What is asked besides the choices; mm. */
export type Extras = NonNullable<InputOf<'garment.estimate'>['extras']>
type Props = { estimate: Estimate | undefined; extras: Extras; onChange: (extras: Extras) => void }

/** A tuck and an inlay as they are usually made, mm. */
const TUCK = 20
const COUNTS = [0, 1, 2, 3, 4, 5, 6]

/** What a client also asks for, of whatever garment: room to grow, nursing slits, a trim on some of its edges. */
export const ExtrasForm = memo(({ estimate, extras, onChange }: Props) => {
  const { reader } = useHouse()
  const tell = useTell()
  const { growthTucks, inlay = 0, nursingSlits = false, trim = [] } = extras
  const tucks = growthTucks ?? { count: 0, depth: TUCK }
  return (
    <details>
      <summary>{tell('screen.desk.extras')}</summary>
      <div className="stack">
        <SelectField
          label={tell('screen.extra.tucks')}
          mark={<WordHelp word="tucks" />}
          value={String(tucks.count)}
          onChange={(count) => onChange({ ...extras, growthTucks: { ...tucks, count: Number(count) } })}
          options={COUNTS.map((count) => ({ id: String(count), name: String(count) }))}
          help={tell('screen.extra.tucks.help')}
        />
        {tucks.count === 0 ? null : (
          <Millimetres
            label={tell('screen.extra.tuckDepth')}
            value={tucks.depth}
            onChange={(depth) => onChange({ ...extras, growthTucks: { ...tucks, depth } })}
          />
        )}
        <Millimetres
          label={tell('screen.extra.inlay')}
          mark={<WordHelp word="inlay" />}
          value={inlay}
          onChange={(mm) => onChange({ ...extras, inlay: mm })}
        />
        <Tick
          wanted
          name={tell('screen.extra.nursing')}
          done={nursingSlits}
          onChange={(wanted) => onChange({ ...extras, nursingSlits: wanted })}
        />
        <fieldset className="own-length">
          <legend>{tell('screen.extra.trim')}</legend>
          {(estimate?.draft.hems ?? [])
            .filter(({ seen }) => seen)
            .map(({ id, name }) => (
              <Tick
                wanted
                key={id}
                name={say(name, reader)}
                done={trim.includes(id)}
                onChange={(wanted) =>
                  onChange({ ...extras, trim: wanted ? [...trim, id] : trim.filter((one) => one !== id) })
                }
              />
            ))}
        </fieldset>
      </div>
    </details>
  )
})
