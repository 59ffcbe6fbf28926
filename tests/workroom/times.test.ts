import { describe, expect, test } from 'vitest'
import type { Work } from '../../core/sew/work.ts'
import { readMinutes } from '../../core/words/time.ts'
import { WOMAN } from '../support/bodies.ts'
import { refused } from '../support/refused.ts'
import { workroom } from '../support/store.ts'

type Id = { id: string }
type Step = Id & { key: string; stage: string; minutes: { mean: number }; work: Work }
type Garment = Id & { steps: Step[]; left: { mean: number } }
type Commission = Id & { revision: number; number: string; state: string; garments: Garment[] }
type Time = Id & { revision: number; minutes: number; day: string; asideAt: string | null; stepIds: string[] }
type Rate = {
  id: string
  standard: number
  hers: number
  least: number
  most: number
  hours: number
  points: { minutes: number; right: number }[]
}
type Rates = {
  rates: Rate[]
  hours: number
  doubtful: { times: Time[]; minutes: number; expected: number }[]
}

async function begun() {
  const room = workroom()
  const { client } = await room.done<{ client: Id }>('client.add', { name: 'Þórunn Vale' })
  const { measurementSet } = await room.done<{ measurementSet: Id }>('measurementSet.add', {
    clientId: client.id,
    measures: WOMAN,
  })
  const { cloth } = await room.done<{ cloth: Id }>('cloth.add', {
    ...{ name: 'White linen', fibre: 'linen', width: '150 cm' },
    pricePerMetre: { minor: 1650, currency: 'GBP' },
  })
  const line = {
    ...{ wearerId: client.id, measurementSetId: measurementSet.id, clothId: cloth.id },
    construction: 'goredUndertunic',
  }
  const accepted = async () => {
    const { quote } = await room.done<{ quote: Id }>('quote.save', { customerId: client.id, lines: [line] })
    return (await room.done<{ commission: Commission }>('quote.accept', { id: quote.id })).commission
  }
  /** Logs every step at a factor of its standard minutes and ticks it. */
  const made = async (factor: number) => {
    const commission = await accepted()
    for (const { id, work } of commission.garments[0]!.steps) {
      const standard = Object.values(work).reduce((sum, minutes) => sum + minutes, 0)
      await room.done('time.log', { stepIds: [id], minutes: standard * factor })
      await room.done('step.tick', { id, anyway: ['unmeasured'] })
    }
    return commission
  }
  const rates = () => room.done<Rates>('rates.list')
  const rate = async (id: string) => (await rates()).rates.find((one) => one.id === id)!
  return { ...room, client, line, accepted, made, rates, rate }
}

describe('a time', () => {
  test.each([
    ['90', 90],
    ['90 min', 90],
    ['1:30', 90],
    ['1 h 30', 90],
    ['1h30', 90],
    ['1.5 h', 90],
    ['1,5 h', 90],
    ['2 h', 120],
    ['45m', 45],
    ['1 hour', 60],
    ['2 hours 15 minutes', 135],
    ['1½ h', 90],
    ['½ hour', 30],
  ])('written %s is %d minutes', (text, minutes) => {
    expect(readMinutes(text)).toBeCloseTo(minutes, 9)
  })

  test.each(['', 'soon', '0', '-5', '1 h h', '1:2:3'])('written %j is refused in a sentence', (text) => {
    expect(refused(() => readMinutes(text)).code).toBe('refusal.time.unreadable')
  })

  test('is logged for a step, several or a stage, put right, taken back and put back', async () => {
    const room = await begun()
    const { id, garments } = await room.accepted()
    const [garment] = garments
    const [first, second] = garment!.steps
    const log = async (payload: object) => (await room.done<{ time: Time }>('time.log', payload)).time
    const one = await log({ stepIds: [first!.id], minutes: '1 h 20' })
    expect(one).toMatchObject({ minutes: 80, day: '2026-03-02', stepIds: [first!.id] })
    const both = await log({ stepIds: [first!.id, second!.id], minutes: 30, day: '2026-03-01' })
    const stage = await log({ garmentId: garment!.id, stage: 'sew', minutes: '3:00' })
    expect(stage.stepIds).toHaveLength(garment!.steps.filter((step) => step.stage === 'sew').length)
    const { time } = await room.done<{ time: Time }>('time.change', {
      ...{ id: one.id, revision: one.revision, minutes: '70' },
    })
    expect(time.minutes).toBe(70)
    expect((await room.refusal('time.change', { id: one.id, revision: 1, minutes: 60 })).field).toBe(
      'revision',
    )
    const removed = (await room.done<{ time: Time }>('time.remove', { id: both.id, revision: 1 })).time
    const listed = async () =>
      (
        await room.done<{ times: (Time & { removedAt: string | null })[] }>('times.list', {
          commissionId: id,
        })
      ).times
    expect((await listed()).filter(({ removedAt }) => removedAt === null)).toHaveLength(2)
    await room.done('time.putBack', { id: both.id, revision: removed.revision })
    expect((await listed()).map(({ day }) => day)).toEqual(['2026-03-01', '2026-03-02', '2026-03-02'])
  })

  test('is refused where there is nothing to log it for', async () => {
    const room = await begun()
    const [one, other] = [await room.accepted(), await room.accepted()]
    const steps = [one, other].map(({ garments }) => garments[0]!.steps[0]!.id)
    expect((await room.refusal('time.log', { minutes: 5 })).field).toBe('stepIds')
    expect((await room.refusal('time.log', { stepIds: steps, minutes: 5 })).code).toBe('refusal.time.several')
    expect((await room.refusal('time.log', { stepIds: steps.slice(0, 1), minutes: 'soon' })).field).toBe(
      'minutes',
    )
    expect((await room.refusal('time.log', { stepIds: ['no'], minutes: 5 })).field).toBe('stepIds')
  })
})

describe('logged time', () => {
  test('teaches: three garments at one and a half the standard, and the next is expected so', async () => {
    const room = await begun()
    const estimate = async () =>
      (
        await room.done<{ sewing: { total: { mean: number; sd: number } } }>('garment.estimate', {
          ...{ construction: 'goredUndertunic', measurementSetId: room.line.measurementSetId },
          clothId: room.line.clothId,
        })
      ).sewing.total
    const before = await estimate()
    for (let i = 0; i < 3; i++) await room.made(1.5)
    const after = await estimate()
    expect(after.mean / before.mean).toBeGreaterThan(1.35)
    expect(after.mean / before.mean).toBeLessThan(1.6)
    expect(after.sd / after.mean).toBeLessThan(before.sd / before.mean)
    const felling = await room.rate('felling')
    expect(felling.hers / felling.standard).toBeGreaterThan(1.3)
    expect(felling.least).toBeLessThan(felling.hers)
    expect(felling.most).toBeGreaterThan(felling.hers)
    expect(felling.hours).toBeGreaterThan(1)
    // Never sewn, and yet expected slower: it is sewing by hand like the rest.
    const slip = await room.rate('slipstitch')
    expect(slip.hours).toBe(0)
    expect(slip.hers / slip.standard).toBeGreaterThan(1.2)
    expect((await room.rates()).hours).toBeCloseTo(
      3 *
        (await room.accepted()).garments[0]!.steps.reduce(
          (sum, { work }) => sum + (1.5 * Object.values(work).reduce((all, one) => all + one, 0)) / 60,
          0,
        ),
      3,
    )
  })

  test('counts for the same when the maker sets another standard afterwards', async () => {
    const room = await begun()
    for (let i = 0; i < 4; i++) await room.made(1.3)
    const before = await room.rate('felling')
    // 48 stitches to 12 a minute by the catalogue; the maker says eight.
    await room.done('settings.set', { revision: 0, changes: { ways: { perMinute: { felling: 8 } } } })
    const after = await room.rate('felling')
    expect(after.standard).toBeCloseTo(1.5 * before.standard, 6)
    const minutesOf = ({ points }: Rate) => points.map(({ minutes }) => minutes)
    expect(minutesOf(after)).toEqual(minutesOf(before))
    expect(Math.abs(after.hers / before.hers - 1)).toBeLessThan(0.15)
    const unlogged = await room.rate('blanket')
    const perMinute = { felling: 8, blanket: 5 }
    await room.done('settings.set', { revision: 1, changes: { ways: { perMinute } } })
    expect((await room.rate('blanket')).hers).toBeCloseTo(2 * unlogged.hers, 0)
  })

  test('of steps that are not done yet teaches nothing', async () => {
    const room = await begun()
    const { garments } = await room.accepted()
    await room.done('time.log', { stepIds: [garments[0]!.steps[0]!.id], minutes: 500 })
    expect((await room.rates()).hours).toBe(0)
    const { hers, standard } = await room.rate('prewash')
    expect(hers).toBeCloseTo(standard, 6)
  })

  test('of a forgotten timer is shown as doubtful, and once set aside teaches no more', async () => {
    const room = await begun()
    for (let i = 0; i < 2; i++) await room.made(1)
    const { garments } = await room.accepted()
    const step = garments[0]!.steps.find(({ key }) => key === 'wash')!
    const { time } = await room.done<{ time: Time }>('time.log', { stepIds: [step.id], minutes: 900 })
    await room.done('step.tick', { id: step.id })
    const { doubtful } = await room.rates()
    expect(doubtful).toHaveLength(1)
    expect(doubtful[0]!.minutes).toBe(900)
    expect(doubtful[0]!.expected).toBeLessThan(100)
    expect(doubtful[0]!.times.map(({ id }) => id)).toEqual([time.id])
    await room.done('time.setAside', { id: time.id, revision: time.revision })
    expect((await room.rates()).doubtful).toEqual([])
    await room.done('time.takeUp', { id: time.id, revision: time.revision + 1 })
    expect((await room.rates()).doubtful).toHaveLength(1)
  })

  test('leaves quotes as they were made, and changes what is left of open work', async () => {
    const room = await begun()
    const open = await room.accepted()
    for (let i = 0; i < 3; i++) await room.made(2)
    const { commission } = await room.done<{ commission: Commission }>('commission.get', { id: open.id })
    expect(commission.garments[0]!.left.mean).toBeGreaterThan(1.5 * open.garments[0]!.left.mean)
    expect(commission.garments[0]!.steps[0]!.minutes).toEqual(open.garments[0]!.steps[0]!.minutes)
  })
})

describe('a delivered commission', () => {
  type Account = {
    garments: { id: string; account: Record<string, { quoted: number; actual: number | null }> }[]
    together: { perHour: { quoted: { minor: number }; actual: { minor: number } } }
  }

  test('shows quoted against actual: cloth, thread, hours, and what an hour earned', async () => {
    const room = await begun()
    const { id, garments } = await room.made(1.5)
    await room.done('garment.took', {
      ...{ garmentId: garments[0]!.id, cloth: '3.2 m', handThread: 40 },
    })
    const { commission } = await room.done<{ commission: Commission }>('commission.deliver', {
      ...{ id, revision: 1, day: '2026-03-09' },
    })
    expect(commission.state).toBe('delivered')
    const account = await room.done<Account>('commission.account', { id })
    const figures = account.garments[0]!.account
    expect(figures.cloth!.actual).toBe(3200)
    expect(figures.handThread!.actual).toBe(40)
    expect(figures.machineThread!.actual).toBeNull()
    expect(figures.minutes!.actual!).toBeGreaterThan(1.3 * figures.minutes!.quoted)
    expect(account.together.perHour.actual.minor).toBeLessThan(account.together.perHour.quoted.minor)
    expect((await room.refusal('commission.deliver', { id, revision: 2 })).code).toBe('refusal.plan.closed')
    await room.done('commission.reopen', { id, revision: 2 })
    expect((await room.refusal('commission.reopen', { id, revision: 3 })).code).toBe(
      'refusal.plan.notDelivered',
    )
  })

  test('counts with the others by construction and by client, and says what to change', async () => {
    const room = await begun()
    for (let i = 0; i < 2; i++) {
      const { id } = await room.made(2)
      await room.done('commission.deliver', { id, revision: 1 })
    }
    await room.accepted()
    type Listed = {
      commissions: object[]
      constructions: { id: string; together: { garments: number } }[]
      clients: { name: string; together: { known: number } }[]
      advice: { code: string; params: { percent: number } }[]
      together: { minutes: { quoted: number; actual: number } }
    }
    const listed = await room.done<Listed>('accounts.list')
    expect(listed.commissions).toHaveLength(2)
    expect(listed.constructions).toMatchObject([{ id: 'goredUndertunic', together: { garments: 2 } }])
    expect(listed.clients).toMatchObject([{ name: 'Þórunn Vale', together: { known: 2 } }])
    expect(listed.advice.map(({ code }) => code)).toContain('plan.advice.moreHours')
    // Every hour took twice as long but for what goes on around the making.
    const { quoted, actual } = listed.together.minutes
    const over = listed.advice.find(({ code }) => code === 'plan.advice.moreHours')!.params.percent
    expect(over).toBe(Math.round(100 * (actual / quoted - 1)))
    expect(listed.advice.map(({ code }) => code)).not.toContain('plan.advice.raise')
    const target = { minor: 3000, currency: 'GBP' }
    await room.done('settings.set', { revision: 0, changes: { rates: { targetPerHour: target } } })
    const { advice } = await room.done<Listed>('accounts.list')
    expect(advice.map(({ code }) => code)).toContain('plan.advice.raise')
  })

  test('holds the cloth it took against its share of a length that it was cut from with others', async () => {
    const room = await begun()
    const lines = [room.line, { ...room.line, construction: 'hood' }]
    const { quote } = await room.done<{
      quote: Id & {
        snapshot: { shared?: object[]; lines: { estimate: { price: { lines: { amount: object }[] } } }[] }
      }
    }>('quote.save', { customerId: room.client.id, lines })
    expect(quote.snapshot.shared).toHaveLength(1)
    const { commission } = await room.done<{ commission: Commission }>('quote.accept', { id: quote.id })
    const [tunic] = commission.garments
    const look = async () =>
      (await room.done<Account>('commission.account', { id: commission.id })).garments[0]!.account
    const share = (await look()).cloth!.quoted
    // As much as it pays for: the materials come out as they were quoted.
    await room.done('garment.took', { garmentId: tunic!.id, cloth: share })
    type Cost = { quoted: object; actual: object }
    const { materials } = (await look()) as unknown as { materials: Cost }
    expect(materials.actual).toEqual(materials.quoted)
  })

  test('is none of them while nothing is delivered', async () => {
    const room = await begun()
    await room.accepted()
    expect(await room.done('accounts.list')).toMatchObject({ commissions: [], advice: [] })
  })
})
