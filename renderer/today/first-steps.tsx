import { Button } from '../parts/button.tsx'
import { useShown } from '../parts/printing.ts'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { settingAt } from '../settings/place.ts'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

type Step = { id: 'name' | 'client' | 'measures' | 'cloth' | 'rates' | 'quote'; done: boolean; href: string }

/** What is still to be done before a first quote, each a step away; nothing once there is one. */
export function FirstSteps() {
  const { workroom } = useHouse()
  const tell = useTell()
  const show = useShown()
  const doing = useDoing()
  const clients = useQuery('clients.list', {}).value?.clients
  const cloths = useQuery('cloths.list', {}).value?.cloths
  const quotes = useQuery('quotes.list', {}).value?.quotes
  const starting = useQuery('settings.get', {}).value?.starting
  const first = clients?.[0]
  if (clients === undefined || cloths === undefined || quotes === undefined || starting === undefined)
    return null
  // Whoever has quoted knows the way, but for a place that is empty again.
  if (quotes.length > 0 && clients.length > 0 && cloths.length > 0) return null
  return (
    <section className="sheet stack">
      <h2>{tell('start.todo')}</h2>
      <p className="quiet">{tell('start.todo.about')}</p>
      {first === undefined ? (
        <Steps client={undefined} measured={false} cloth={cloths.length > 0} rates={!starting} />
      ) : (
        <Measured client={first.id} cloth={cloths.length > 0} rates={!starting} />
      )}
      <Refusal sentence={doing.refused?.message} />
      <div className="row">
        <Button
          busy={doing.busy}
          onPress={() => void doing.run(() => show(workroom.ask('startGuide.print', {})))}
        >
          {tell('start.print')}
        </Button>
      </div>
    </section>
  )
}

function Measured({ client, ...known }: { client: string; cloth: boolean; rates: boolean }) {
  const { value } = useQuery('client.get', { id: client })
  return value === undefined ? null : (
    <Steps client={client} measured={value.measurementSets.length > 0} {...known} />
  )
}

type Known = { client: string | undefined; measured: boolean; cloth: boolean; rates: boolean }

function Steps({ client, measured, cloth, rates }: Known) {
  const tell = useTell()
  const steps: Step[] = [
    { id: 'name', done: true, href: addressOf('workroom') },
    { id: 'client', done: client !== undefined, href: addressOf('clients') },
    { id: 'measures', done: measured, href: addressOf('clients', client) },
    { id: 'cloth', done: cloth, href: addressOf('cloths') },
    { id: 'rates', done: rates, href: settingAt('money') },
    { id: 'quote', done: false, href: addressOf('desk') },
  ]
  const next = steps.find(({ done }) => !done)
  return (
    <ol className="first-steps">
      {steps.map((step) => (
        <li key={step.id}>
          <p>
            <strong>{tell(`start.step.${step.id}`)}</strong>
            <br />
            <span className="quiet">{tell(`start.step.${step.id}.how`)}</span>
          </p>
          {step.done ? (
            <span className="done">✓ {tell('start.todo.done')}</span>
          ) : step.id === 'quote' && !(client !== undefined && measured && cloth) ? (
            <span className="quiet">{tell('start.todo.later')}</span>
          ) : (
            <a className={step === next ? 'button main' : 'button'} href={step.href}>
              {tell(`start.todo.go.${step.id}`)}
            </a>
          )}
        </li>
      ))}
    </ol>
  )
}
