import type { OutputOf } from '../../core/workroom.ts'
import { ActForm, Acts } from '../parts/acts.tsx'
import { TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { useTyped } from '../parts/typed.ts'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

/** What the cutting of a garment has left: each rectangle is ticked to be kept. */
export function LeftOver({ garmentId }: { garmentId: string }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const { value, refused, reload } = useQuery('remnants.offered', { garmentId })
  const keep = (offcut: number) =>
    doing.run(() => workroom.ask('remnants.keep', { garmentId, offcuts: [offcut] })).then(reload)
  if (value === undefined || !value.cut || value.offcuts.length === 0) return <Refusal sentence={refused} />
  return (
    <fieldset className="stage">
      <legend>{tell('screen.remnant.left')}</legend>
      <p className="quiet">{tell('screen.remnant.about')}</p>
      {value.offcuts.map(({ offcut, width, length, kept }) => (
        <Tick
          key={offcut}
          name={tell('screen.remnant.size', { width: { mm: width }, length: { mm: length } })}
          done={kept}
          disabled={kept || doing.busy}
          aside={kept ? tell('screen.remnant.kept') : ''}
          onChange={() => void keep(offcut)}
        />
      ))}
      <Refusal sentence={doing.refused?.message} />
    </fieldset>
  )
}

type Remnant = OutputOf<'remnants.list'>['remnants'][number]

/** Remnants in stock, with a tick for those used up. */
export function Remnants() {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const { value, refused, reload } = useQuery('remnants.list', {})
  const mark = (id: string, used: boolean) =>
    doing.run(() => workroom.ask(used ? 'remnant.use' : 'remnant.putBack', { id })).then(reload)
  // What lies with the lengths is a remnant no more.
  const remnants = value?.remnants.filter(({ stockId }) => stockId === null) ?? []
  if (remnants.length === 0) return <Refusal sentence={refused} />
  return (
    <section className="sheet stack">
      <h2>{tell('screen.remnant.title')}</h2>
      <p className="quiet">{tell('screen.remnant.tickUsed')}</p>
      <ul className="entries life">
        {remnants.map((remnant) => (
          <li key={remnant.id}>
            <Kept {...{ remnant }} onMark={(used) => void mark(remnant.id, used)} onChanged={reload} />
          </li>
        ))}
      </ul>
      <Refusal sentence={doing.refused?.message} />
    </section>
  )
}

type KeptProps = {
  remnant: Remnant
  onMark: (used: boolean) => void
  onChanged: () => void
}

/** One remnant: how large it is, where it lies, and what one does with it. */
function Kept({ remnant, onMark, onChanged }: KeptProps) {
  const { workroom, changed } = useHouse()
  const tell = useTell()
  const { id, clothId, clothName, width, length, usedAt, place, washed } = remnant
  const size = tell('screen.remnant.size', { width: { mm: width }, length: { mm: length } })
  const name = `${clothName}: ${size}`
  const facts = [
    ...(place === '' ? [] : [tell('remnant.at', { place })]),
    tell(washed ? 'remnant.washed' : 'remnant.unwashed'),
  ]
  const labelled = (words: string) => tell('life.doing', { doing: words, what: name })
  const acts = [
    {
      ...{ id: 'place', words: tell('remnant.place.act'), label: labelled(tell('remnant.place.act')) },
      form: (close: () => void) => <Place {...{ remnant, close }} name={name} onDone={onChanged} />,
    },
    {
      ...{ id: 'toStock', words: tell('remnant.toStock'), label: labelled(tell('remnant.toStock')) },
      form: (close: () => void) => (
        <ActForm
          label={labelled(tell('remnant.toStock'))}
          final="remnant.toStock"
          keep={tell('remnant.toStock.keep')}
          close={close}
          work={() => workroom.ask('remnant.toStock', { id }).then(changed)}
        >
          <p>{tell('remnant.toStock.what')}</p>
        </ActForm>
      ),
    },
  ]
  return (
    <>
      <Tick
        name={name}
        done={usedAt !== null}
        aside={usedAt === null ? facts.join(' · ') : tell('screen.remnant.used')}
        onChange={onMark}
      />
      {usedAt === null ? <Acts plain acts={clothId === null ? acts.slice(0, 1) : acts} /> : null}
    </>
  )
}

type PlaceProps = { remnant: Remnant; name: string; close: () => void; onDone: () => void }

function Place({ remnant: { id, place }, name, close, onDone }: PlaceProps) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { typed, field } = useTyped({ place })
  const label = tell('life.doing', { doing: tell('remnant.place.act'), what: name })
  return (
    <ActForm
      {...{ label, close }}
      keep={tell('remnant.place.keep')}
      work={() => workroom.ask('remnant.place', { id, ...typed }).then(onDone)}
    >
      <div className="columns">
        <TextField label={tell('remnant.place')} {...field('place')} />
      </div>
    </ActForm>
  )
}
