import { type ReactNode, useState } from 'react'
import type { OutputOf } from '../../core/workroom.ts'
import type { Basket } from '../desk/on-the-quote.tsx'
import { Reckoning, type Shared } from '../desk/reckoning.tsx'
import { SelectField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { type Loaded, useKept, useQuery, useTell } from '../workroom.tsx'

type Client = OutputOf<'clients.list'>['clients'][number]
type Cloth = OutputOf<'cloths.list'>['cloths'][number]

/** Whom and what an address asks for: the client, and the garment. */
type Asked = { wearer: string | undefined; garment: string | undefined }

/** The quote desk, once there is somebody to sew for and something to sew with. */
export function Desk({ wearer, garment }: Asked) {
  const tell = useTell()
  const clients = useQuery('clients.list', {})
  const cloths = useQuery('cloths.list', {})
  const refused = clients.refused ?? cloths.refused
  if (refused !== undefined) return <Refusal sentence={refused} />
  if (clients.value === undefined || cloths.value === undefined) return null
  const missing =
    clients.value.clients.length === 0 ? 'clients' : cloths.value.cloths.length === 0 ? 'cloths' : undefined
  if (missing === undefined)
    return <DeskFor clients={clients.value.clients} cloths={cloths.value.cloths} {...{ wearer, garment }} />
  return (
    <div className="narrow stack">
      <h1>{tell('screen.room.desk')}</h1>
      <p>{tell(`screen.desk.no.${missing}`)}</p>
      <div>
        <a className="button main" href={addressOf(missing)}>
          {tell(`screen.desk.to.${missing}`)}
        </a>
      </div>
    </div>
  )
}

function DeskFor({ clients, cloths, wearer, garment }: Asked & { clients: Client[]; cloths: Cloth[] }) {
  const tell = useTell()
  const [wearerId, setWearer] = useState(wearer ?? clients[0]!.id)
  const [basket, setBasket] = useKept<Basket>('basket', [])
  const [customer, setCustomer] = useKept<string | undefined>('customer', undefined)
  const of = useQuery('client.get', { id: wearerId })
  const field = (
    <>
      <h1>{tell('screen.room.desk')}</h1>
      <SelectField
        label={tell('screen.desk.wearer')}
        value={wearerId}
        onChange={setWearer}
        options={clients}
      />
    </>
  )
  return (
    <div className="desk">
      <Wearer
        key={wearerId}
        {...{ wearerId, field, of, clients, cloths, basket, setBasket, customer, setCustomer, garment }}
      />
    </div>
  )
}

type WearerProps = {
  wearerId: string
  /** Heading and choice of the wearer, which stand over everything else. */
  field: ReactNode
  of: Loaded<OutputOf<'client.get'>>
  clients: Client[]
  cloths: Cloth[]
} & Shared

function Wearer({ of, ...props }: WearerProps) {
  const { wearerId, field } = props
  const tell = useTell()
  if (of.value === undefined || of.value.client.id !== wearerId) return <Refusal sentence={of.refused} />
  const sets = of.value.measurementSets.filter(({ retired }) => !retired)
  if (sets.length > 0) return <Reckoning {...props} sets={sets} />
  return (
    <section className="desk-choices stack">
      {field}
      <p>{tell('screen.desk.unmeasured')}</p>
      <a className="button main" href={addressOf('clients', wearerId)}>
        {tell('screen.desk.measure')}
      </a>
    </section>
  )
}
