import { useState } from 'react'
import { createPortal } from 'react-dom'
import type { OutputOf } from '../../core/workroom.ts'
import type { Basket } from '../desk/on-the-quote.tsx'
import { Reckoning, type Shared } from '../desk/reckoning.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { PickField } from '../parts/pick-field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { FirstSteps } from '../today/first-steps.tsx'
import { type Loaded, useKept, useQuery, useTell } from '../workroom.tsx'

type Client = OutputOf<'clients.list'>['clients'][number]
type Cloth = OutputOf<'cloths.list'>['cloths'][number]

/** Whom and what an address asks for: the client, the garment, and the cloth. */
type Asked = { wearer: string | undefined; garment: string | undefined; cloth: string | undefined }

/** The quote desk, once there is somebody to sew for and something to sew with. */
export function Desk({ wearer, garment, cloth }: Asked) {
  const tell = useTell()
  const clients = useQuery('clients.list', {})
  const cloths = useQuery('cloths.list', {})
  const refused = clients.refused ?? cloths.refused
  if (refused !== undefined) return <Refusal sentence={refused} />
  if (clients.value === undefined || cloths.value === undefined) return null
  if (clients.value.clients.length > 0 && cloths.value.cloths.length > 0)
    return (
      <DeskFor clients={clients.value.clients} cloths={cloths.value.cloths} {...{ wearer, garment, cloth }} />
    )
  return (
    <div className="stack">
      <h1>{tell('screen.room.desk')}</h1>
      <FirstSteps />
    </div>
  )
}

function DeskFor({
  clients,
  cloths,
  wearer,
  garment,
  cloth,
}: Asked & { clients: Client[]; cloths: Cloth[] }) {
  const tell = useTell()
  const [wished, setWearer] = useHalfFilled('wearer', clients[0]!.id, wearer)
  // Whoever was chosen before may not be in the book any more.
  const wearerId = clients.some(({ id }) => id === wished) ? wished : clients[0]!.id
  const noted = clients.find(({ id }) => id === wearerId)!.note.trim()
  const [basket, setBasket] = useKept<Basket>('basket', [])
  const [customer, setCustomer] = useKept<string | undefined>('customer', undefined)
  const of = useQuery('client.get', { id: wearerId })
  // What is chosen for one wearer goes when another is chosen; the field in which that is done stays, and keeps the focus.
  const [choices, setChoices] = useState<HTMLElement | null>(null)
  return (
    <div className="desk">
      <section className="desk-choices stack" aria-label={tell('screen.desk.choices')}>
        <h1>{tell('screen.room.desk')}</h1>
        <PickField
          label={tell('screen.desk.wearer')}
          value={wearerId}
          onChange={setWearer}
          options={clients}
        />
        {noted === '' ? null : <p className="noted">{noted}</p>}
        <div className="stack" ref={setChoices} />
      </section>
      {choices === null ? null : (
        <Wearer
          key={wearerId}
          {...{
            wearerId,
            choices,
            of,
            clients,
            cloths,
            basket,
            setBasket,
            customer,
            setCustomer,
            garment,
            cloth,
          }}
        />
      )}
    </div>
  )
}

type WearerProps = {
  wearerId: string
  /** Where the choices stand, below that of the wearer. */
  choices: HTMLElement
  of: Loaded<OutputOf<'client.get'>>
  clients: Client[]
  cloths: Cloth[]
} & Shared

function Wearer({ of, ...props }: WearerProps) {
  const { wearerId, choices } = props
  const tell = useTell()
  if (of.value === undefined || of.value.client.id !== wearerId) return <Refusal sentence={of.refused} />
  const sets = of.value.measurementSets.filter(({ retired }) => !retired)
  if (sets.length > 0) return <Reckoning {...props} sets={sets} />
  return createPortal(
    <>
      <p>{tell('screen.desk.unmeasured')}</p>
      <a className="button main" href={addressOf('clients', wearerId)}>
        {tell('screen.desk.measure')}
      </a>
    </>,
    choices,
  )
}
