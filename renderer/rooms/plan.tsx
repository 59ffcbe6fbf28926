import { Empty } from '../parts/empty.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Head } from '../plan/head.tsx'
import { Picture, PictureKey } from '../plan/picture.tsx'
import { dueOf, type Planned } from '../plan/reasons.ts'
import { Room } from '../plan/room.tsx'
import { PlanTable } from '../plan/table.tsx'
import { Waiting } from '../plan/waiting.tsx'
import { addressOf } from '../router.ts'
import { useQuery, useTell } from '../workroom.tsx'

/** The weeks to come: how full they are, and when each open commission will be done. */
export function Plan() {
  const tell = useTell()
  const { value, refused } = useQuery('plan.show', {})
  const planned = value === undefined ? [] : [...value.commissions].sort(inOrder)
  return (
    <div className="stack">
      <h1>{tell('weeks.title')}</h1>
      <Refusal sentence={refused} />
      {value === undefined ? null : <Head plan={value} />}
      {value === undefined ? null : planned.length === 0 ? (
        <Empty
          words={tell('guiding.empty.plan')}
          go={tell('guiding.empty.toQuotes')}
          href={addressOf('quotes')}
        />
      ) : (
        <>
          <section className="sheet stack">
            <h2>{tell('weeks.full')}</h2>
            <Picture day={value.day} weeks={value.weeks} planned={planned} />
            <PictureKey />
          </section>
          <PlanTable planned={planned} />
        </>
      )}
      {value === undefined ? null : <Room weeks={value.weeks} />}
      {value === undefined ? null : <Waiting />}
    </div>
  )
}

/** By their day, then by when they will be done; what nobody waits for stands last. */
const inOrder = (a: Planned, b: Planned): number => {
  const key = (one: Planned) => `${dueOf(one) ?? '9999'} ${one.finish ?? '9999'} ${one.number}`
  return key(a) < key(b) ? -1 : 1
}
