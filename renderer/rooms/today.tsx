import { printDate } from '../../core/words/dates.ts'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { Arriving, Fittings, Ring } from '../today/coming.tsx'
import { FirstSteps } from '../today/first-steps.tsx'
import { Late } from '../today/late.tsx'
import { NextSteps } from '../today/next-steps.tsx'
import { useHouse, useQuery, useTell } from '../workroom.tsx'

/** The day at the bench: what to do next, what is late, who comes, what arrives, and whom to ring. */
export function Today() {
  const { reader } = useHouse()
  const tell = useTell()
  const { value, refused } = useQuery('today.show', {})
  const open = useQuery('commissions.list', { state: 'open', most: 1 })
  if (value === undefined || open.value === undefined) return <Refusal sentence={refused ?? open.refused} />
  const idle = open.value.commissions.length === 0
  return (
    <div className="stack">
      <div className="between">
        <div>
          <h1>{tell('screen.room.today')}</h1>
          <p className="quiet">{printDate(value.day, reader.locale)}</p>
        </div>
        {idle ? null : (
          <a className="button" href={addressOf('commissions', 'plan')}>
            {tell('today.to.plan')}
          </a>
        )}
      </div>
      <Refusal sentence={refused} />
      {idle ? (
        <>
          <FirstSteps />
          <Teaching />
        </>
      ) : (
        <>
          <NextSteps steps={value.next} day={value.day} />
          <Late late={value.late} />
        </>
      )}
      {idle && value.fittings.length + value.arriving.length + value.ring.length === 0 ? null : (
        <div className="today-coming">
          <Ring ring={value.ring} />
          <Fittings fittings={value.fittings} />
          <Arriving arriving={value.arriving} today={value.day} />
        </div>
      )}
    </div>
  )
}

/** What this page will be, for whoever has accepted nothing yet. */
function Teaching() {
  const tell = useTell()
  return (
    <div className="stack narrow">
      <p>
        <strong>{tell('today.empty')}</strong>
      </p>
      <p>{tell('today.empty.how')}</p>
      <p>{tell('today.empty.then')}</p>
      <div>
        <a className="button main" href={addressOf('desk')}>
          {tell('today.empty.to')}
        </a>
      </div>
    </div>
  )
}
