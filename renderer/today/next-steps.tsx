import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { useForWhom } from '../parts/for-whom.ts'
import { addressOf } from '../router.ts'
import { ToTable } from '../table/to-table.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import { StartTimer } from './start-timer.tsx'

type Next = OutputOf<'today.show'>['next'][number]

const toCommission = ({ commissionId }: Next) => addressOf('commissions', commissionId)
/** Where that is done which comes before a step. */
const WHERE: Record<NonNullable<Next['first']>, (step: Next) => string> = {
  'waits.deposit': toCommission,
  'waits.toBuy': () => addressOf('cloths', 'shopping'),
  'waits.unpromised': toCommission,
  'waits.unpromised.coming': toCommission,
  'waits.fittingNotBooked': toCommission,
  'waits.fittingNotWritten': toCommission,
}

/** The steps to take up now, the most pressing first, each with its timer. */
export function NextSteps({ steps, day }: { steps: readonly Next[]; day: string }) {
  const { reader } = useHouse()
  const tell = useTell()
  const forWhom = useForWhom()
  const headOf = ({ stands, first }: Next, name: string) =>
    stands ? tell('today.do.coming') : first === null ? name : tell(`today.do.${first}`)
  return (
    <section className="sheet stack">
      <h2>{tell('today.next')}</h2>
      {steps.length === 0 ? (
        <p>{tell('today.next.none')}</p>
      ) : (
        <ol className="entries today-next">
          {steps.map((step) => {
            const name = say(step.name, reader)
            const title = say(step.title, reader)
            const made = forWhom([step], step.customer)
            return (
              <li key={step.id}>
                <p className="today-step">
                  <strong>{headOf(step, name)}</strong>
                  <span>
                    {made}
                    {' · '}
                    <a href={addressOf('commissions', step.commissionId)}>{step.number}</a>
                  </span>
                  {step.waits.length === 0 ? null : (
                    <span className="quiet">
                      {tell('waits.first', { what: step.waits.map((one) => say(one, reader)).join('; ') })}
                    </span>
                  )}
                  {step.orderBy === null ? null : (
                    <span className={step.orderBy < day ? 'under' : 'quiet'}>
                      {tell(step.orderBy < day ? 'shopping.orderNow' : 'shopping.orderBy', {
                        day: { date: step.orderBy },
                      })}
                    </span>
                  )}
                </p>
                {step.stands ? null : step.first === null ? (
                  <div className="today-acts">
                    <ToTable {...step} name={made} />
                    <StartTimer
                      on={{ stepIds: [step.id] }}
                      name={tell('today.next.step', { step: name, garment: title, number: step.number })}
                    />
                  </div>
                ) : (
                  <a className="button" href={WHERE[step.first](step)}>
                    {tell(`today.go.${step.first}`)}
                  </a>
                )}
              </li>
            )
          })}
        </ol>
      )}
    </section>
  )
}
