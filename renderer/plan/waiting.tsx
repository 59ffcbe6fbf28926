import { useState } from 'react'
import type { OutputOf } from '../../core/workroom.ts'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useQuery, useTell } from '../workroom.tsx'
import { WhatIf } from './what-if.tsx'

type Quoted = OutputOf<'quotes.list'>['quotes'][number]

/** Quotes that wait for an answer, each with what it would do to the weeks if it were accepted. */
export function Waiting({ day }: { day: string }) {
  const tell = useTell()
  const { value, refused } = useQuery('quotes.list', {})
  const waiting = (value?.quotes ?? []).filter(
    ({ state, validUntil }) => state === 'sent' && validUntil >= day,
  )
  if (waiting.length === 0) return <Refusal sentence={refused} />
  return (
    <section className="sheet stack">
      <h2>{tell('weeks.waiting')}</h2>
      {waiting.map((quote) => (
        <One key={quote.id} quote={quote} />
      ))}
    </section>
  )
}

function One({ quote: { id, number, customer, total, validUntil } }: { quote: Quoted }) {
  const tell = useTell()
  const [open, setOpen] = useState(false)
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{tell('weeks.waiting.one', { number, customer, total, day: { date: validUntil } })}</summary>
      {open ? (
        <>
          <WhatIf quoteId={id} />
          <p>
            <a href={addressOf('quotes', id)}>{tell('weeks.waiting.open', { number })}</a>
          </p>
        </>
      ) : null}
    </details>
  )
}
