import type { OutputOf } from '../../core/workroom.ts'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useQuery, useTell } from '../workroom.tsx'

type Change = OutputOf<'plan.whatIf'>['changed'][number]

/** What accepting a quote would do: the day that can be promised, and the work it would put off. */
export function WhatIf({ quoteId, promised }: { quoteId: string; promised?: string | undefined }) {
  const { value, refused } = useQuery('plan.whatIf', { quoteId })
  return value === undefined ? <Refusal sentence={refused} /> : <WouldDo {...value} promised={promised} />
}

/** Says when work would be done, and what it would put off. */
type Would = Pick<OutputOf<'plan.whatIf'>, 'promise' | 'changed'> & {
  /** The day that a quote promises already. */
  promised?: string | undefined
}

/** The day that could be promised, and the work that would be put off, in words. */
export function WouldDo({ promise, changed, promised }: Would) {
  const tell = useTell()
  return (
    <p className="what-if">
      {promise === null
        ? tell('weeks.promise.never')
        : promised === undefined
          ? tell('weeks.promise', { day: { date: promise } })
          : tell(promise <= promised ? 'weeks.promise.kept' : 'weeks.promise.missed', {
              ...{ day: { date: promise }, promised: { date: promised } },
            })}{' '}
      {changed.length === 0 ? (
        promise === null ? null : (
          tell('weeks.promise.calm')
        )
      ) : (
        <>
          {tell('weeks.promise.off')}{' '}
          {changed.map((one, i) => (
            <span key={one.commission}>
              <a href={addressOf('commissions', one.commission)}>{one.number}</a> <PutOff change={one} />
              {i === changed.length - 1 ? '.' : ', '}
            </span>
          ))}
        </>
      )}
    </p>
  )
}

function PutOff({ change: { later, late } }: { change: Change }) {
  const tell = useTell()
  const by =
    later === null
      ? tell('weeks.off.never')
      : tell(later === 1 ? 'weeks.off.one' : 'weeks.off.days', { days: later })
  if (late === null || late <= 0) return by
  return (
    <>
      {by}{' '}
      <span className="under">
        ({tell(late === 1 ? 'weeks.off.late.one' : 'weeks.off.late.days', { days: late })})
      </span>
    </>
  )
}
