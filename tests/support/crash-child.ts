import { openStore } from '../../core/store/open.ts'
import { answer, readerOf, requests } from '../../core/workroom.ts'
import { shellContext } from '../../electron/context.ts'
import { WOMAN } from './bodies.ts'

// A planner that is killed: it does one thing after another, and writes down on its way out what was granted.

const store = openStore(process.argv[2]!, { now: new Date().toISOString() })
const context = shellContext(store, () => {})

async function granted<T>(name: string, payload: object = {}): Promise<T> {
  const answered = await answer(requests, name, payload, context, readerOf(context))
  if (!answered.ok) throw new Error(`${name}: ${answered.error.message}`)
  return answered.result as T
}
const told = (what: string, id: string) => process.stdout.write(`${what} ${id}\n`)

type Id = { id: string }
type Commission = Id & { garments: { steps: Id[] }[] }
type Listed = { commissions: Commission[] }

type Wearer = { wearerId: string; measurementSetId: string; clothId: string }
const kerchief = (wearer: Wearer) => ({
  ...{ customerId: wearer.wearerId, lines: [{ ...wearer, construction: 'kerchief' }] },
})

if ((await granted<Listed>('commissions.list')).commissions.length === 0) {
  await granted('settings.set', { revision: 0, changes: { letterhead: { name: 'Ropewalk Sewing' } } })
  const { client } = await granted<{ client: Id }>('client.add', { name: 'Ása Holt' })
  const { measurementSet } = await granted<{ measurementSet: Id }>('measurementSet.add', {
    ...{ clientId: client.id, measures: WOMAN },
  })
  const { cloth } = await granted<{ cloth: Id }>('cloth.add', {
    ...{ name: 'White linen', width: 1500, pricePerMetre: { minor: 1650, currency: 'GBP' } },
  })
  const wearer = { wearerId: client.id, measurementSetId: measurementSet.id, clothId: cloth.id }
  const { quote } = await granted<{ quote: Id }>('quote.save', kerchief(wearer))
  await granted('quote.accept', { id: quote.id })
}
const [first] = (await granted<Listed>('commissions.list')).commissions
const commissionId = first!.id
const { commission } = await granted<{ commission: Commission }>('commission.get', { id: commissionId })
const stepIds = commission.garments[0]!.steps.map(({ id }) => id)
const step = (i: number) => stepIds[i % stepIds.length]!
await granted('timer.drop', {}).catch(() => {})
const wearer = store.db.$client
  .prepare(
    'SELECT wearer_id AS wearerId, measurement_set_id AS measurementSetId, cloth_id AS clothId FROM quote_garment',
  )
  .get() as Wearer

process.stdout.write('ready -\n')
for (let i = 0; ; i++) {
  const { client } = await granted<{ client: Id }>('client.add', { name: `Somebody ${i}` })
  told('client', client.id)
  const { payment } = await granted<{ payment: Id & { number: string } }>('payment.add', {
    ...{ commissionId, amount: { minor: 100 + i, currency: 'GBP' } },
  })
  told('payment', payment.id)
  const { note } = await granted<{ note: Id }>('note.add', { commissionId, text: `said ${i}` })
  told('note', note.id)
  if (i % 4 === 0) {
    const { quote } = await granted<{ quote: Id }>('quote.save', kerchief(wearer))
    told('quote', quote.id)
    if (i % 8 === 0) {
      const { commission: made } = await granted<{ commission: Id }>('quote.accept', { id: quote.id })
      told('commission', made.id)
    }
  }
  const { timer } = await granted<{ timer: { startedAt: string } }>('timer.start', { stepIds: [step(i)] })
  told('timer', timer.startedAt)
  const { time } = await granted<{ time: Id }>('timer.stop', { minutes: 5 })
  told('time', time.id)
  const { time: logged } = await granted<{ time: Id }>('time.log', { stepIds: [step(i)], minutes: 7 })
  told('time', logged.id)
  await granted(i % 2 === 0 ? 'step.tick' : 'step.untick', {
    id: step(0),
    ...(i % 2 === 0 ? { anyway: ['untried', 'unwashed', 'unmeasured', 'estimated'] } : {}),
  })
  told(i % 2 === 0 ? 'ticked' : 'unticked', step(0))
}
