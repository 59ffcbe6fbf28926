import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { goredUndertunic } from '../../core/draft/constructions/gored-undertunic.ts'
import { FINISH_PLANS } from '../../core/sew/finish-plans.ts'
import { minutesOf, NO_MINUTES } from '../../core/sew/minutes.ts'
import { paceBefore } from '../../core/sew/pace/standards.ts'
import { DEFAULT_THREAD_RULES, USUAL_WAYS } from '../../core/sew/parameters.ts'
import { sew } from '../../core/sew/sewing.ts'
import { STITCH } from '../../core/sew/stitches.ts'
import { handledThread, threadUse } from '../../core/sew/thread-use.ts'
import type { Row } from '../../core/sew/types.ts'
import { bodyOf, someBody, WOMAN } from '../support/bodies.ts'

describe('times', () => {
  // Log-normal with matched moments; 0.8416 is the 80 % point of the normal distribution in any table.
  test('have a median under their mean and an 80 % point over their median', () => {
    const time = minutesOf(100, 35)
    const sigma = Math.sqrt(Math.log(1 + 0.35 ** 2))
    expect(time.p50).toBeCloseTo(100 * Math.exp((-sigma * sigma) / 2), 9)
    expect(time.p80).toBeCloseTo(time.p50 * Math.exp(0.8416 * sigma), 2)
    expect(minutesOf(0, 0)).toBe(NO_MINUTES)
  })

  test('keep their odds: four in five of many drawn times lie within p80', () => {
    const time = minutesOf(60, 25)
    const sigma = Math.sqrt(Math.log(1 + (25 / 60) ** 2))
    // Quantiles of the normal by the library-free rational bound: draw evenly spaced probabilities instead.
    let within = 0
    const n = 20_001
    let seed = 1
    const uniform = () => {
      seed = (seed * 48_271) % 2_147_483_647
      return seed / 2_147_483_647
    }
    for (let i = 0; i < n; i++) {
      const z = Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform())
      if (time.p50 * Math.exp(sigma * z) <= time.p80) within++
    }
    expect(within / n).toBeCloseTo(0.8, 1)
  })
})

describe('thread', () => {
  const row = (stitch: Row['stitch'], thread: number): Row => ({
    ...{ step: 's', of: 'x', purpose: 'join', stitch, length: 1000, density: 4, thread },
    minutes: NO_MINUTES,
  })
  const rules = { needleful: 450, needlefulLost: 50, machineEnd: 50, machineWaste: 0.15 }

  // Dillmont: a needleful of 40–50 cm. 3.2 m at 0.40 m usable are 8 needlefuls, each losing its ends.
  test('by hand loses the ends of every needleful', () => {
    expect(threadUse([row('running', 3200)], [], rules)).toEqual([
      { work: 'hand', sewn: 3.2, wasted: expect.closeTo(0.4, 9), metres: expect.closeTo(3.6, 9) },
    ])
    expect(threadUse([row('running', 3201)], [], rules)[0]!.metres).toBeCloseTo(3.201 + 0.45, 9)
  })

  test('by machine loses its ends at both ends of a row, and its waste', () => {
    expect(
      threadUse([row('lockstitch301', 2500), row('lockstitch301', 2500)], [], rules)[0]!.metres,
    ).toBeCloseTo((5 + 0.2) * 1.15, 9)
  })

  // A double thread lies twice in every stitch and twice in every end.
  test('sewn double is twice as long, ends and all, and waxed it is threaded less often', () => {
    const rows = [row('running', 3200)]
    const plain = threadUse(rows, [], rules)[0]!
    const double = threadUse(rows, [], { ...rules, doubled: ['running'] })[0]!
    expect(double.sewn).toBeCloseTo(2 * plain.sewn, 9)
    expect(double.metres).toBeCloseTo(2 * plain.metres, 9)
    const waxed = threadUse(rows, [], { ...rules, waxed: true })[0]!
    // 450 × 1.3 less 50 are 535 mm: 3200 mm want 6 needlefuls.
    expect(waxed.wasted).toBeCloseTo((Math.ceil(3200 / 535) * 50) / 1000, 9)
    expect(waxed.sewn).toBe(plain.sewn)
    const other = { ...rules, doubled: ['hemming' as const] }
    expect(threadUse(rows, [], other)).toEqual(threadUse(rows, [], rules))
  })

  test('in what is worked by the piece is counted too, each piece with a thread of its own', () => {
    const holes = handledThread([{ operation: 'workButtonhole', quantity: 4 }], 0.4, USUAL_WAYS)
    expect(holes).toHaveLength(4)
    const { density, thread } = STITCH.buttonhole
    expect(holes[0]!.thread).toBeCloseTo(48 * thread(10 / density, 0.8), 9)
    expect(threadUse([], holes, rules)[0]!.metres).toBeGreaterThan((4 * holes[0]!.thread) / 1000)
    expect(handledThread([{ operation: 'setGusset', quantity: 2 }], 0.4, USUAL_WAYS)).toEqual([])
  })

  test('and time follow the density and pace that the maker sets', () => {
    const draft = goredUndertunic.draft(bodyOf(WOMAN), {}, 'mm')
    const usual = sew(draft, FINISH_PLANS.allByHand, 0.4, DEFAULT_THREAD_RULES)
    const finer = sew(draft, FINISH_PLANS.allByHand, 0.4, DEFAULT_THREAD_RULES, {
      ...USUAL_WAYS,
      density: { halfBackstitch: 6 },
    })
    expect(finer.rows.find(({ stitch }) => stitch === 'halfBackstitch')!.density).toBe(6)
    expect(finer.threads[0]!.metres).toBeGreaterThan(usual.threads[0]!.metres)
    expect(finer.total.mean).toBeGreaterThan(usual.total.mean)
    const quicker = sew(draft, FINISH_PLANS.allByHand, 0.4, DEFAULT_THREAD_RULES, {
      ...USUAL_WAYS,
      pace: paceBefore({ perMinute: { halfBackstitch: 24 }, minutes: { press: 10 } }),
      minutes: { prewash: 0 },
    })
    expect(quicker.total.mean).toBeLessThan(usual.total.mean)
    // What the catalogue has five minutes for takes ten; what is not done takes none.
    const wash = (of: typeof usual) => of.steps.find(({ step }) => step === 'wash')!
    expect(wash(quicker).total.mean).toBeCloseTo(2 * wash(usual).work!.press!, 6)
    expect(wash(quicker).work).toEqual({ press: wash(usual).work!.press })
  })

  test('is never less than what is sewn', () => {
    const draft = goredUndertunic.draft(bodyOf(WOMAN), {}, 'mm')
    for (const plan of Object.values(FINISH_PLANS)) {
      const { rows, threads } = sew(draft, plan, 0.4, DEFAULT_THREAD_RULES)
      expect(threads.reduce((sum, { sewn }) => sum + sewn, 0)).toBeCloseTo(
        rows.reduce((sum, { thread }) => sum + thread, 0) / 1000,
        9,
      )
      for (const { wasted, sewn, metres } of threads) {
        expect(wasted).toBeGreaterThan(0)
        expect(metres).toBeCloseTo(sewn + wasted, 9)
      }
    }
  })
})

describe('the sewing of a tunic', () => {
  const draft = goredUndertunic.draft(bodyOf(WOMAN), {}, 'mm')
  const sewing = sew(draft, FINISH_PLANS.machineWhereHidden, 0.4, DEFAULT_THREAD_RULES)

  test('sews every seam and hem at its whole length', () => {
    for (const { id, length, finish } of draft.seams) {
      const rows = sewing.rows.filter(({ of }) => of === id)
      expect(rows.map(({ purpose }) => purpose)).toEqual(finish === 'felled' ? ['join', 'fell'] : ['join'])
      for (const row of rows) expect(row.length).toBe(length)
    }
    for (const { id, length } of draft.hems)
      expect(sewing.rows.filter(({ of }) => of === id).map((row) => row.length)).toEqual([length])
  })

  test('keeps raw edges of open seams by two rows, unless the plan leaves them', () => {
    const open = goredUndertunic.draft(bodyOf(WOMAN), { seamFinish: 'open' }, 'mm')
    const rows = (edges: 'zigzag304' | null) =>
      sew(open, { ...FINISH_PLANS.allByMachine, edges }, 0.4, DEFAULT_THREAD_RULES).rows.filter(
        ({ of }) => of === 'side-left',
      )
    expect(rows('zigzag304').map(({ purpose }) => purpose)).toEqual(['join', 'edge'])
    expect(rows('zigzag304')[1]!.length).toBeCloseTo(2 * rows('zigzag304')[0]!.length, 9)
    expect(rows(null).map(({ purpose }) => purpose)).toEqual(['join'])
  })

  test('hides the machine: what is seen is sewn by hand', () => {
    const stitches = new Set(
      sewing.rows.filter(({ purpose }) => purpose === 'hem').map(({ stitch }) => stitch),
    )
    expect(stitches).toEqual(new Set(['hemming']))
  })

  test('takes the time of its steps, by skill and in all', () => {
    const means = (of: readonly { mean: number }[]) => of.reduce((sum, { mean }) => sum + mean, 0)
    expect(sewing.total.mean).toBeCloseTo(means(sewing.steps.map(({ total }) => total)), 6)
    expect(sewing.total.mean).toBeCloseTo(means(Object.values(sewing.bySkill)), 6)
    expect(sewing.steps.map(({ step }) => step)).toEqual(draft.steps.map(({ id }) => id))
  })

  test('by hand takes longer than by machine, on every body', () => {
    fc.assert(
      fc.property(someBody, (body) => {
        const one = goredUndertunic.draft(body, {}, 'mm')
        const [hand, mixed, machine] = (['allByHand', 'machineWhereHidden', 'allByMachine'] as const).map(
          (plan) => sew(one, FINISH_PLANS[plan], 0.4, DEFAULT_THREAD_RULES).total.mean,
        )
        expect(hand).toBeGreaterThan(mixed!)
        expect(mixed).toBeGreaterThan(machine!)
      }),
      { numRuns: 60 },
    )
  })

  test('refuses a draft whose steps sew what is not there', () => {
    const steps = [{ ...draft.steps[2]!, seams: ['nothing'] }]
    expect(() => sew({ ...draft, steps }, FINISH_PLANS.allByHand, 0.4, DEFAULT_THREAD_RULES)).toThrow(
      'does not have',
    )
  })
})
