import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { Doubts } from '../times/doubts.tsx'
import { isLogged } from '../times/figures.ts'
import { Paces, Standards } from '../times/paces.tsx'
import { useQuery, useTell } from '../workroom.tsx'

/** How long each kind of work takes her, what that rests on, and the times that look wrong. */
export function Times() {
  const tell = useTell()
  const { value, refused, reload } = useQuery('rates.list', {})
  if (value === undefined) return <Refusal sentence={refused} />
  const logged = value.rates.filter(isLogged)
  const others = value.rates.filter((rate) => !isLogged(rate))
  return (
    <div className="stack">
      <h1>{tell('times.title')}</h1>
      <Doubts doubtful={value.doubtful} onChanged={reload} />
      {logged.length === 0 ? (
        <>
          <p>{tell('times.none')}</p>
          <div>
            <a className="button main" href={addressOf('commissions')}>
              {tell('times.to.commissions')}
            </a>
          </div>
          <section className="sheet stack">
            <h2>{tell('times.column.standards')}</h2>
            <p>{tell('times.none.standards')}</p>
            <Standards rates={others} onKept={reload} />
          </section>
        </>
      ) : (
        <>
          <section className="sheet stack">
            <p className="quiet">{tell('times.about', { hours: { minutes: 60 * value.hours } })}</p>
            <Paces rates={logged} onKept={reload} />
          </section>
          <details className="sheet">
            <summary>{tell('times.notLogged', { count: others.length })}</summary>
            <Standards rates={others} onKept={reload} />
          </details>
        </>
      )}
    </div>
  )
}
