import type { OutputOf } from '../../core/workroom.ts'
import { useForWhom } from '../parts/for-whom.ts'
import { useSaidReasons } from '../plan/reasons.ts'
import { addressOf } from '../router.ts'
import { useTell } from '../workroom.tsx'

type Planned = OutputOf<'today.show'>['late'][number]

/** What will not be done by its day, and what stands in the way. */
export function Late({ late }: { late: readonly Planned[] }) {
  const tell = useTell()
  return (
    <section className="sheet stack">
      <h2>{tell('today.late')}</h2>
      {late.length === 0 ? (
        <p>{tell('today.late.none')}</p>
      ) : (
        <ul className="entries today-lines">
          {late.map((one) => (
            <li key={one.id}>
              <p>
                <a href={addressOf('commissions', one.id)}>{one.number}</a> <Told one={one} />
              </p>
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}

function Told({ one }: { one: Planned }) {
  const tell = useTell()
  const forWhom = useForWhom()
  const { late, never } = one
  const why = useSaidReasons()(one)
  const days = late ?? 0
  const by = never.length > 0 ? 'never' : days === 1 ? 'one' : 'days'
  return (
    <>
      {forWhom(one.garments, one.customer)}:{' '}
      <span className="under">{tell(`today.late.by.${by}`, { days })}</span>
      {why === '' ? '.' : `, ${tell('today.late.why', { why })}`}
    </>
  )
}
