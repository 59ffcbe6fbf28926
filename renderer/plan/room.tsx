import { useState } from 'react'
import { dayFormat } from '../../core/words/formats.ts'
import { printMinutes } from '../../core/words/time.ts'
import { Button } from '../parts/button.tsx'
import { TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useTyped } from '../parts/typed.ts'
import { useHouse, useQuery, useTell } from '../workroom.tsx'
import type { Week } from './scale.ts'
import { WouldDo } from './what-if.tsx'

/** More hours than that are of years. */
const MOST = 5000

/** What is free in each of the coming weeks, and what so many hours more would do to them. */
export function Room({ weeks }: { weeks: readonly Week[] }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { typed, field } = useTyped({ hours: '', cloth: '' })
  const [asked, setAsked] = useState<{ hours: number; cloth?: string }>()
  const [wrong, setWrong] = useState(false)
  const free = weeks.map(({ hours, planned }) => Math.max(0, hours - planned))
  const short = dayFormat(reader.locale, { day: 'numeric', month: 'short' })
  const hours = Number(typed.hours.trim().replace(/\s*h$/, '').replace(',', '.'))
  return (
    <section className="sheet stack">
      <h2>{tell('weeks.room')}</h2>
      <ol className="free-weeks">
        {weeks.map(({ begins }, i) => (
          <li key={begins}>
            <span className="quiet">
              {i === 0
                ? tell('weeks.room.now')
                : tell('weeks.room.from', { day: short.format(new Date(begins)) })}
            </span>
            <strong>{printMinutes(free[i]!)}</strong>
          </li>
        ))}
      </ol>
      <p>
        {tell('weeks.room.all', {
          free: { minutes: free.reduce((sum, one) => sum + one, 0) },
          weeks: weeks.length,
        })}
      </p>
      <form
        className="stack"
        aria-label={tell('weeks.room.ask')}
        onSubmit={(event) => {
          event.preventDefault()
          setWrong(!(hours > 0 && hours <= MOST))
          if (hours > 0 && hours <= MOST)
            setAsked({ hours, ...(typed.cloth === '' ? {} : { cloth: typed.cloth }) })
        }}
      >
        <div className="columns">
          <TextField
            label={tell('weeks.room.hours')}
            {...field('hours')}
            wrong={wrong ? tell('weeks.room.wrong') : undefined}
          />
          <TextField
            label={tell('weeks.room.cloth')}
            type="date"
            {...field('cloth')}
            help={tell('weeks.room.cloth.help')}
          />
        </div>
        <div>
          <Button main type="submit">
            {tell('weeks.room.ask')}
          </Button>
        </div>
      </form>
      {asked === undefined ? null : <Asked key={JSON.stringify(asked)} {...asked} />}
    </section>
  )
}

function Asked(asked: { hours: number; cloth?: string }) {
  const { value, refused } = useQuery('plan.room', asked)
  return value === undefined ? <Refusal sentence={refused} /> : <WouldDo {...value} />
}
