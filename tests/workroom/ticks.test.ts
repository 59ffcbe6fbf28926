import { describe, expect, test } from 'vitest'
import { agreedWork, type FollowedCommission } from '../support/agreed-work.ts'

type Ticked = { commission: FollowedCommission; marked: string[] }

const marks = ({ garments }: FollowedCommission) =>
  garments.flatMap(({ steps }) => steps.map(({ id, doneAt }) => [id, doneAt]))

describe('what was ticked', () => {
  test('is told by its ids: of a stage only the steps that were open', async () => {
    const room = await agreedWork()
    const { garments } = await room.accepted()
    const { id: garmentId, steps } = garments[0]!
    const sewing = steps.filter(({ stage }) => stage === 'sew').map(({ id }) => id)
    expect(sewing.length).toBeGreaterThan(2)
    expect((await room.done<Ticked>('step.tick', { id: sewing[1] })).marked).toEqual([sewing[1]])
    const { marked } = await room.done<Ticked>('stage.tick', { garmentId, stage: 'sew' })
    expect(marked).toEqual(sewing.filter((id) => id !== sewing[1]))
    expect((await room.done<Ticked>('step.tick', { id: sewing[1] })).marked).toEqual([])
  })

  test('is undone exactly: what was done before a stage was ticked stays done, with its own date', async () => {
    const room = await agreedWork()
    const { garments } = await room.accepted()
    const { id: garmentId, steps } = garments[0]!
    const first = steps.find(({ stage }) => stage === 'sew')!
    const before = (await room.done<Ticked>('step.tick', { id: first.id })).commission
    const { marked } = await room.done<Ticked>('stage.tick', { garmentId, stage: 'sew' })
    const { commission } = await room.done<Ticked>('steps.untick', { ids: marked })
    expect(marks(commission)).toEqual(marks(before))
    expect(marks(commission).filter(([, doneAt]) => doneAt !== null)).toHaveLength(1)
  })

  test('is undone all or nothing: where one step is open again already, none is touched', async () => {
    const room = await agreedWork()
    const { garments } = await room.accepted()
    const { id: garmentId } = garments[0]!
    const { marked } = await room.done<Ticked>('stage.tick', { garmentId, stage: 'sew' })
    const { commission: before } = await room.done<Ticked>('step.untick', { id: marked.at(-1) })
    expect((await room.refusal('steps.untick', { ids: marked })).code).toBe('refusal.plan.undone')
    const { commission } = await room.done<{ commission: FollowedCommission }>('commission.get', {
      id: before.id,
    })
    expect(marks(commission)).toEqual(marks(before))
  })

  test('is undone in one commission at a time, and not once that is closed', async () => {
    const room = await agreedWork()
    const [one, two] = [await room.accepted(), await room.accepted()]
    const tickedOf = async ({ garments }: FollowedCommission) =>
      (await room.done<Ticked>('stage.tick', { garmentId: garments[0]!.id, stage: 'sew' })).marked
    const [some, others] = [await tickedOf(one), await tickedOf(two)]
    expect((await room.refusal('steps.untick', { ids: [...some, ...others] })).code).toBe(
      'refusal.plan.undoSeveral',
    )
    expect((await room.refusal('steps.untick', { ids: ['nobody'] })).field).toBe('ids')
    await room.done('commission.cancel', { id: one.id, revision: one.revision })
    expect((await room.refusal('steps.untick', { ids: some })).code).toBe('refusal.plan.closed')
  })

  test('confirming one step of cutting ticks that step and no other', async () => {
    const room = await agreedWork({ warpShrinkage: 0.05, weftShrinkage: 0.03 })
    const { garments } = await room.accepted()
    const { steps } = garments[0]!
    const cutting = steps.filter(({ stage }) => stage === 'cut').map(({ id }) => id)
    const asked = { id: cutting[0], anyway: ['unwashed'] }
    expect((await room.refusal('step.tick', asked)).field).toBe('anyway.unmeasured')
    const all = { ...asked, anyway: ['unwashed', 'unmeasured'] }
    const { commission, marked } = await room.done<Ticked>('step.tick', all)
    expect(marked).toEqual([cutting[0]])
    expect(marks(commission).filter(([, doneAt]) => doneAt !== null)).toHaveLength(1)
  })

  test('undone at the cutting, the cloth is whole and promised again; by whichever way it is unticked', async () => {
    const room = await agreedWork()
    await room.done('stock.add', { clothId: room.cloth.id, length: '4 m' })
    const { garments } = await room.accepted()
    const { id: garmentId, steps } = garments[0]!
    const cutting = steps.filter(({ stage }) => stage === 'cut').map(({ id }) => id)
    type Length = { length: number; reserved: number; used: number }
    const cloth = async () => {
      const { lengths } = await room.done<{ lengths: Length[] }>('stock.list', { used: true })
      return lengths.map(({ length, reserved, used }) => ({ length, reserved, used }))
    }
    const whole = await cloth()
    expect(whole[0]!.reserved).toBeGreaterThan(0)
    const cut = async () => {
      const asked = { garmentId, stage: 'cut', anyway: ['unwashed'] }
      const { marked } = await room.done<Ticked>('stage.tick', asked)
      expect((await cloth())[0]!.used).toBeCloseTo(whole[0]!.reserved, 6)
      return marked
    }
    await room.done('steps.untick', { ids: await cut() })
    expect(await cloth()).toEqual(whole)
    await cut()
    await room.done('stage.untick', { garmentId, stage: 'cut' })
    expect(await cloth()).toEqual(whole)
    await cut()
    for (const id of cutting) await room.done('step.untick', { id })
    expect(await cloth()).toEqual(whole)
  })
})
