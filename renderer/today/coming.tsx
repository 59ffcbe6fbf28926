import type { ReactNode } from 'react'
import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { addressOf } from '../router.ts'
import { useHouse, useTell } from '../workroom.tsx'

type Shown = OutputOf<'today.show'>

/** Customers of whom money is due, and quotes that will soon stand no longer. */
export function Ring({ ring }: { ring: Shown['ring'] }) {
  const { reader } = useHouse()
  const tell = useTell()
  return (
    <Lines title={tell('today.ring')} none={tell('today.ring.none')}>
      {ring.map(
        ({
          why,
          customerId,
          customer,
          phone,
          email,
          amount,
          day,
          number,
          commissionId,
          quoteId,
          garments,
        }) => (
          <li key={`${why} ${number}`}>
            <p>
              <a href={addressOf('clients', customerId)}>{customer}</a>{' '}
              {phone === '' && email === '' ? (
                <span className="quiet">{tell('today.ring.noPhone')}</span>
              ) : (
                <strong className="number">{phone === '' ? email : phone}</strong>
              )}
            </p>
            <p>{tell(`today.ring.${why}`, { amount, day: { date: day } })}</p>
            <p className="quiet">
              <a
                href={
                  commissionId === null
                    ? addressOf('quotes', quoteId!)
                    : addressOf('commissions', commissionId)
                }
              >
                {number}
              </a>
              {' · '}
              {garments
                .map(({ title, wearer }) =>
                  tell('paper.garment.forWhom', { title: say(title, reader), wearer }),
                )
                .join('; ')}
            </p>
          </li>
        ),
      )}
    </Lines>
  )
}

/** Who comes to try on. */
export function Fittings({ fittings }: { fittings: Shown['fittings'] }) {
  const tell = useTell()
  return (
    <Lines title={tell('today.fittings')} none={tell('today.fittings.none')}>
      {fittings.map(({ id, day, time, customer, commissionId, number }) => (
        <li key={id}>
          <p>
            {time === null || time === ''
              ? tell('today.fitting', { day: { date: day }, customer })
              : tell('today.fitting.time', { day: { date: day }, time, customer })}{' '}
            <a href={addressOf('commissions', commissionId)}>{number}</a>
          </p>
        </li>
      ))}
    </Lines>
  )
}

/** Cloth that is on its way, and what should have come already. */
export function Arriving({ arriving, today }: { arriving: Shown['arriving']; today: string }) {
  const tell = useTell()
  return (
    <Lines title={tell('today.arriving')} none={tell('today.arriving.none')}>
      {arriving.map(({ id, cloth, supplier, expectedDay }) => {
        const what = supplier === '' ? cloth : tell('today.arriving.from', { cloth, supplier })
        return (
          <li key={id}>
            <p className={expectedDay !== null && expectedDay < today ? 'under' : ''}>
              {expectedDay === null
                ? tell('today.arriving.noDay', { what })
                : tell(expectedDay < today ? 'today.arriving.overdue' : 'today.arriving.day', {
                    what,
                    day: { date: expectedDay },
                  })}
            </p>
          </li>
        )
      })}
    </Lines>
  )
}

function Lines({ title, none, children }: { title: string; none: string; children: readonly ReactNode[] }) {
  return (
    <section className="stack">
      <h2>{title}</h2>
      {children.length === 0 ? (
        <p className="quiet">{none}</p>
      ) : (
        <ul className="entries today-lines">{children}</ul>
      )}
    </section>
  )
}
