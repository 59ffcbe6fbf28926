import { type ReactNode, useState } from 'react'
import type { TapedMeasure } from '../../core/draw/tape.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { ChoicesForm, type Chosen } from '../desk/choices-form.tsx'
import { type Extras, ExtrasForm } from '../desk/extras-form.tsx'
import { LayRoom } from '../desk/lay-room.tsx'
import { type Basket, type BasketProps, type Line, OnTheQuote } from '../desk/on-the-quote.tsx'
import { OtherClothFields, type OtherCloths } from '../desk/other-cloths.tsx'
import { Results } from '../desk/results.tsx'
import { useEstimate } from '../desk/use-estimate.ts'
import { useLay } from '../desk/use-lay.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf, goTo } from '../router.ts'
import { type Loaded, useDoing, useHouse, useKept, useQuery, useTell } from '../workroom.tsx'

type Client = OutputOf<'clients.list'>['clients'][number]
type Cloth = OutputOf<'cloths.list'>['cloths'][number]

/** The quote desk, once there is somebody to sew for and something to sew with. */
/** Whom and what an address asks for: the client, and the garment. */
type Asked = { wearer: string | undefined; garment: string | undefined }

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

/** What stays when another wearer is chosen: the garments on the quote, and who pays for them. */
type Shared = BasketProps & {
  customer: string | undefined
  setCustomer: (id: string | undefined) => void
  garment: string | undefined
}

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

type ReckoningProps = Omit<WearerProps, 'of'> & { sets: OutputOf<'client.get'>['measurementSets'] }

type PlanId = 'machineWhereHidden' | 'allByHand' | 'allByMachine'

/** What is drafted until another garment is chosen. */
const FIRST = 'goredUndertunic'

/** Everything set for one garment, and what comes of it, reckoned anew with every key. */
function Reckoning(props: ReckoningProps) {
  const { wearerId, field, sets, clients, cloths, basket, setBasket, customer, setCustomer, garment } = props
  const { workroom } = useHouse()
  const tell = useTell()
  const [constructionId, setConstruction] = useState(garment ?? FIRST)
  const { value: catalogue } = useQuery('constructions.list', {})
  const { value: described } = useQuery('construction.describe', { id: constructionId })
  // The last garment's form is not shown while the next one's is on its way.
  const construction = described?.id === constructionId ? described : undefined
  const { value: plans } = useQuery('finishPlans.list', {})
  const [setId, setSet] = useState(sets.at(-1)!.id)
  const [clothId, setCloth] = useState(cloths[0]!.id)
  const [otherClothIds, setOthers] = useState<OtherCloths>({})
  // Each garment is sewn as it usually is until the maker says otherwise.
  const [plan, setPlan] = useState<PlanId>()
  const finishPlan: PlanId = plan ?? construction?.finishPlan ?? 'machineWhereHidden'
  const customerId = customer ?? basket[0]?.line.wearerId ?? wearerId
  const [quantity, setQuantity] = useState('1')
  const [choices, setChoices] = useState<Chosen>({})
  const [extras, setExtras] = useState<Extras>({})
  const saving = useDoing()
  const asked = {
    construction: constructionId,
    measurementSetId: setId,
    clothId,
    otherClothIds,
    choices,
    extras,
  }
  const table = useLay(asked)
  const { estimate, refused, busy } = useEstimate({ ...asked, finishPlan, lay: table.wish })
  const line: Line = {
    ...{
      wearerId,
      measurementSetId: setId,
      construction: constructionId,
      choices,
      extras,
      clothId,
      otherClothIds,
    },
    ...{ finishPlan, lay: table.wish, quantity: Number(quantity) },
  }
  const save = () =>
    saving.run(async () => {
      const lines = [...basket.map((one) => one.line), line]
      const { quote } = await workroom.ask('quote.save', { customerId, lines })
      setBasket([])
      setCustomer(undefined)
      goTo('quotes', quote.id)
    })
  const put = () => {
    const garment = catalogue?.constructions.find(({ id }) => id === constructionId)?.name ?? ''
    const wearer = clients.find(({ id }) => id === wearerId)!.name
    const total = estimate!.price.total
    setBasket([...basket, { key: Date.now(), line, garment, wearer, total }])
    setChoices({})
  }
  const used = new Set<string>([...(construction?.required.flat() ?? []), ...(construction?.useful ?? [])])
  const estimated = Object.entries(sets.find(({ id }) => id === setId)?.measures ?? {})
    .filter(([id, { source }]) => source === 'estimated' && used.has(id))
    .map(([id]) => tell(`measure.name.${id as TapedMeasure}`))
    .join(', ')
  const wrongChoice =
    refused?.field?.startsWith('choices.') === true ? refused.field.slice('choices.'.length) : undefined
  return (
    <>
      <section className="desk-choices stack" aria-label={tell('screen.desk.choices')}>
        {field}
        <SelectField
          label={tell('screen.desk.garment')}
          value={constructionId}
          onChange={(id) => {
            setConstruction(id)
            setChoices({})
            setPlan(undefined)
            setExtras({})
          }}
          options={catalogue?.constructions ?? []}
          help={catalogue?.constructions.find(({ id }) => id === constructionId)?.summary}
        />
        <p>
          <a href={addressOf('own', ownFamily(constructionId))}>
            {tell(ownFamily(constructionId) === undefined ? 'own.screen.new' : 'own.screen.change')}
          </a>
        </p>
        <SelectField
          label={tell('screen.desk.measures')}
          value={setId}
          onChange={setSet}
          options={sets.map(({ id, day }) => ({
            id,
            name: tell('screen.measure.of', { day: { date: day } }),
          }))}
          help={estimated.length === 0 ? undefined : tell('screen.desk.estimated', { measures: estimated })}
        />
        <SelectField label={tell('screen.desk.cloth')} value={clothId} onChange={setCloth} options={cloths} />
        <OtherClothFields estimate={estimate} cloths={cloths} chosen={otherClothIds} onChange={setOthers} />
        <SelectField
          label={tell('screen.desk.plan')}
          value={finishPlan}
          onChange={(id) => setPlan(id as typeof finishPlan)}
          options={plans?.finishPlans ?? []}
          help={plans?.finishPlans.find(({ id }) => id === finishPlan)?.help}
        />
        {construction === undefined ? null : (
          <ChoicesForm
            construction={construction}
            used={estimate?.draft.choices ?? {}}
            chosen={choices}
            onChange={setChoices}
            wrong={wrongChoice === undefined ? undefined : { id: wrongChoice, sentence: refused!.message }}
          />
        )}
        <ExtrasForm key={constructionId} {...{ estimate, extras }} onChange={setExtras} />
        <details>
          <summary>{tell('screen.desk.more')}</summary>
          <div className="stack">
            <SelectField
              label={tell('screen.desk.customer')}
              value={customerId}
              onChange={setCustomer}
              options={clients}
            />
            <TextField label={tell('screen.desk.quantity')} value={quantity} onChange={setQuantity} />
          </div>
        </details>
      </section>
      <Results
        estimate={estimate}
        refused={refused?.message ?? saving.refused?.message}
        busy={busy}
        beneath={<OnTheQuote basket={basket} setBasket={setBasket} />}
        lay={(reckoned) => <LayRoom estimate={reckoned} table={table} asked={asked} />}
      >
        <Button
          main
          busy={saving.busy || estimate === undefined || refused !== undefined}
          onPress={() => void save()}
        >
          {basket.length === 0
            ? tell('screen.desk.save')
            : tell('screen.desk.saveAll', { count: basket.length + 1 })}
        </Button>
        <Button busy={estimate === undefined || refused !== undefined} onPress={put}>
          {tell('screen.desk.put')}
        </Button>
      </Results>
    </>
  )
}

/** The family of a garment of her own, or nothing for one of the planner's. */
const ownFamily = (id: string): string | undefined =>
  id.startsWith('own:') ? id.slice('own:'.length).split('@')[0] : undefined
