import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
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

/** Remnants in stock, with a tick for those used up. */
export function Remnants() {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const { value, refused, reload } = useQuery('remnants.list', {})
  const mark = (id: string, used: boolean) =>
    doing.run(() => workroom.ask(used ? 'remnant.use' : 'remnant.putBack', { id })).then(reload)
  if (value === undefined || value.remnants.length === 0) return <Refusal sentence={refused} />
  return (
    <section className="sheet stack">
      <h2>{tell('screen.remnant.title')}</h2>
      <p className="quiet">{tell('screen.remnant.tickUsed')}</p>
      <div>
        {value.remnants.map(({ id, clothName, width, length, usedAt }) => (
          <Tick
            key={id}
            name={`${clothName}: ${tell('screen.remnant.size', { width: { mm: width }, length: { mm: length } })}`}
            done={usedAt !== null}
            aside={usedAt === null ? '' : tell('screen.remnant.used')}
            onChange={(used) => void mark(id, used)}
          />
        ))}
      </div>
      <Refusal sentence={doing.refused?.message} />
    </section>
  )
}
