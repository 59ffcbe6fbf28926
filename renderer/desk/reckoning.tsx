import { createPortal } from 'react-dom'
import type { TapedMeasure } from '../../core/draw/tape.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { WordHelp } from '../help/help.tsx'
import { amountOf } from '../parts/amount.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { useForgetAll, useHalfFilled } from '../parts/kept.tsx'
import { PickField } from '../parts/pick-field.tsx'
import { Tick } from '../parts/tick.tsx'
import { addressOf, goTo } from '../router.ts'
import { NotHers } from '../settings/not-hers.tsx'
import { NotUndone } from '../undo/not-undone.tsx'
import { useDoing, useHouse, useKept, useQuery, useTell } from '../workroom.tsx'
import { NOTHING_AGREED, orderOf } from './agreed.ts'
import { AgreedAlready } from './agreed-already.tsx'
import { AgreedForm } from './agreed-form.tsx'
import { Alternatives, type Variation } from './alternatives.tsx'
import { ChoicesForm, type Chosen } from './choices-form.tsx'
import { ClothField, firstCloth } from './cloth-field.tsx'
import { Earnings } from './earnings.tsx'
import { type Extras, ExtrasForm } from './extras-form.tsx'
import { LayRoom } from './lay-room.tsx'
import { type BasketProps, type Line, OnTheQuote } from './on-the-quote.tsx'
import { OtherClothFields, type OtherCloths } from './other-cloths.tsx'
import { Results } from './results.tsx'
import { useEstimate } from './use-estimate.ts'
import { useLay } from './use-lay.ts'
import { usePromise } from './use-promise.ts'

/** What stays when another wearer is chosen: the garments on the quote, and who pays for them. */
export type Shared = BasketProps & {
  customer: string | undefined
  setCustomer: (id: string | undefined) => void
  garment: string | undefined
  cloth: string | undefined
}

type ReckoningProps = Shared & {
  wearerId: string
  /** Where the choices stand, below that of the wearer. */
  choices: HTMLElement
  clients: OutputOf<'clients.list'>['clients']
  cloths: OutputOf<'cloths.list'>['cloths']
  sets: OutputOf<'client.get'>['measurementSets']
}

type PlanId = 'machineWhereHidden' | 'allByHand' | 'allByMachine'

/** What every choice comes to before anything is reckoned. */
const NOTHING = {}
/** What is drafted until another garment is chosen. */
const FIRST = 'goredUndertunic'

/** Everything set for one garment, and what comes of it, reckoned anew with every key. */
export function Reckoning(props: ReckoningProps) {
  const {
    wearerId,
    choices: place,
    sets,
    clients,
    cloths,
    basket,
    setBasket,
    customer,
    setCustomer,
    garment,
    cloth: wishedCloth,
  } = props
  const { workroom } = useHouse()
  const tell = useTell()
  const [constructionId, setConstruction] = useHalfFilled(`garment ${wearerId}`, FIRST, garment)
  const { value: catalogue } = useQuery('constructions.list', {})
  const { value: described } = useQuery('construction.describe', { id: constructionId })
  // The last garment's form is not shown while the next one's is on its way.
  const construction = described?.id === constructionId ? described : undefined
  const { value: plans } = useQuery('finishPlans.list', {})
  const [wishedSet, setSet] = useHalfFilled(`set ${wearerId}`, sets.at(-1)!.id)
  const setId = sets.some(({ id }) => id === wishedSet) ? wishedSet : sets.at(-1)!.id
  const [clothWished, setCloth] = useHalfFilled<string | undefined>(
    `cloth ${wearerId}`,
    undefined,
    wishedCloth,
  )
  // Whatever was chosen before may have been taken out of the book.
  const cloth = cloths.find(({ id }) => id === clothWished) ?? firstCloth(cloths, described?.usualFibre)
  const clothId = cloth.id
  const [otherClothIds, setOthers] = useHalfFilled<OtherCloths>(`others ${wearerId}`, {})
  // Each garment is sewn as it usually is until the maker says otherwise.
  const [plan, setPlan] = useHalfFilled<PlanId | undefined>(`plan ${wearerId}`, undefined)
  const finishPlan: PlanId = plan ?? construction?.finishPlan ?? 'machineWhereHidden'
  const customerId = customer ?? basket[0]?.line.wearerId ?? wearerId
  const [quantity, setQuantity] = useHalfFilled(`quantity ${wearerId}`, '1')
  const [choices, setChoices] = useHalfFilled<Chosen>(`choices ${wearerId}`, {})
  const [extras, setExtras] = useHalfFilled<Extras>(`extras ${wearerId}`, {})
  const [agreed, setAgreed] = useHalfFilled(`agreed ${wearerId}`, NOTHING_AGREED)
  const [options, setOptions] = useHalfFilled<Variation[]>(`options ${wearerId}`, [])
  const [postage, setPostage] = useKept('postage', '')
  const [naming, setNaming] = useKept('naming', true)
  const { value: house } = useQuery('settings.get', {})
  const currency = house?.settings.rates.currency ?? 'GBP'
  const garments = basket.reduce((sum, one) => sum + (one.line.quantity ?? 1), Number(quantity) || 1)
  const saving = useDoing()
  const forgetAll = useForgetAll()
  const asked = {
    construction: constructionId,
    measurementSetId: setId,
    clothId,
    otherClothIds,
    choices,
    extras,
  }
  const table = useLay(asked)
  const order = { finishPlan, lay: table.wish, ...orderOf(agreed, currency) }
  const wanted = { ...asked, ...order, garments }
  const { estimate, refused, busy } = useEstimate(wanted)
  const promised = usePromise(wanted, !busy && refused === undefined)
  const line: Line = { ...asked, ...order, wearerId, quantity: Number(quantity), options }
  const whole = () => ({
    ...{ customerId, lines: [...basket.map((one) => one.line), line] },
    shipping: postage.trim() === '' ? undefined : amountOf(postage, currency),
    ...(naming ? { promise: 'reckoned' as const } : {}),
  })
  const clear = () => {
    setBasket([])
    setCustomer(undefined)
    setPostage('')
    forgetAll()
  }
  const save = () =>
    saving.run(async () => {
      const { quote } = await workroom.ask('quote.save', whole())
      clear()
      goTo('quotes', quote.id)
    })
  const put = () => {
    const garment = catalogue?.constructions.find(({ id }) => id === constructionId)?.name ?? ''
    const wearer = clients.find(({ id }) => id === wearerId)!.name
    const total = estimate!.price.total
    setBasket([...basket, { key: Date.now(), line, garment, wearer, total }])
    setChoices({})
    setAgreed(NOTHING_AGREED)
    setOptions([])
  }
  const used = new Set<string>([...(construction?.required.flat() ?? []), ...(construction?.useful ?? [])])
  const estimated = Object.entries(sets.find(({ id }) => id === setId)?.measures ?? {})
    .filter(([id, { source }]) => source === 'estimated' && used.has(id))
    .map(([id]) => tell(`measure.name.${id as TapedMeasure}`))
    .join(', ')
  const wrong = refused?.field === undefined ? undefined : { field: refused.field, sentence: refused.message }
  const wrongChoice =
    refused?.field?.startsWith('choices.') === true ? refused.field.slice('choices.'.length) : undefined
  return (
    <>
      {createPortal(
        <>
          <SelectField
            label={tell('screen.desk.garment')}
            value={constructionId}
            onChange={(id) => {
              setConstruction(id)
              setChoices({})
              setPlan(undefined)
              setExtras({})
              setOptions([])
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
          <ClothField {...{ cloths, chosen: cloth, usual: construction?.usualFibre }} onChange={setCloth} />
          <OtherClothFields estimate={estimate} cloths={cloths} chosen={otherClothIds} onChange={setOthers} />
          <SelectField
            label={tell('screen.desk.plan')}
            mark={<WordHelp word="seams" />}
            value={finishPlan}
            onChange={(id) => setPlan(id as typeof finishPlan)}
            options={(plans?.finishPlans ?? []).map(({ id, short }) => ({ id, name: short }))}
            help={plans?.finishPlans.find(({ id }) => id === finishPlan)?.help}
          />
          {construction === undefined ? null : (
            <ChoicesForm
              construction={construction}
              used={estimate?.draft.choices ?? NOTHING}
              chosen={choices}
              onChange={setChoices}
              wrong={wrongChoice === undefined ? undefined : { id: wrongChoice, sentence: refused!.message }}
            />
          )}
          <ExtrasForm key={constructionId} {...{ estimate, extras }} onChange={setExtras} />
          <AgreedForm {...{ agreed, estimate }} onChange={setAgreed} wrong={wrong} />
          <details>
            <summary>{tell('screen.desk.more')}</summary>
            <div className="stack">
              <PickField
                label={tell('screen.desk.customer')}
                value={customerId}
                onChange={setCustomer}
                options={clients}
              />
              <TextField label={tell('screen.desk.quantity')} value={quantity} onChange={setQuantity} />
              <TextField label={tell('selling.shipping')} value={postage} onChange={setPostage} />
            </div>
          </details>
        </>,
        place,
      )}
      <Results
        estimate={estimate}
        refused={refused?.message ?? saving.refused?.message}
        busy={busy}
        promised={promised}
        beneath={
          <>
            <div className="said-below">
              <Tick wanted name={tell('selling.nameDay')} done={naming} onChange={setNaming} />
              <NotUndone mild act="quote.save" />
              <NotHers />
            </div>
            {estimate === undefined ? null : (
              <Earnings
                estimate={estimate}
                price={agreed.set}
                onPrice={(set) => setAgreed({ ...agreed, set })}
                wrong={wrong?.field.startsWith('price.set') === true ? wrong.sentence : undefined}
              />
            )}
            <Alternatives asked={wanted} cloths={cloths} offered={options} onOffer={setOptions} />
            <OnTheQuote basket={basket} setBasket={setBasket} />
            {estimate === undefined || refused !== undefined ? null : (
              <AgreedAlready order={whole} onEntered={clear} />
            )}
          </>
        }
        lay={(reckoned) => (
          <LayRoom
            {...{ estimate: reckoned, table, asked }}
            cloth={cloths.find(({ id }) => id === asked.clothId)}
          />
        )}
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
