import { describe, expect, test } from 'vitest'
import { WOMAN } from '../support/bodies.ts'
import { workroom } from '../support/store.ts'

const cloth = {
  name: 'Loom linen',
  width: '120 cm',
  pricePerMetre: { minor: 1400, currency: 'GBP' },
}
const tunic = { construction: 'goredUndertunic', measures: WOMAN, unit: 'mm' as const, choices: {} }
type Lay = { length: number; placements: { piece: string; copy: string; x: number }[]; manner?: string }
type Row = {
  name: string
  width: number
  toBuy?: number
  cost?: { minor: number }
  refused?: { code: string }
}

describe('lays asked for in the workroom', () => {
  test('get shorter by a search, and an estimate takes the places found', async () => {
    const { done, refusal } = workroom()
    const { lay, firstLength, ended } = await done<{ lay: Lay; firstLength: number; ended: string }>(
      'lay.best',
      {
        ...{ ...tunic, cloth },
      },
    )
    expect(ended).toBe('done')
    expect(lay.length).toBeLessThanOrEqual(firstLength)
    const asked = { ...tunic, cloth, lay: { placements: lay.placements } }
    const estimate = await done<{ lay: Lay }>('garment.estimate', asked)
    expect(estimate.lay.placements).toEqual(lay.placements)
    // The same places are those of no lay once the tunic is longer.
    const longer = await refusal('garment.estimate', { ...asked, choices: { length: 1300 } })
    expect(longer.field).toMatch(/^cloth/)
  })

  test('made by hand are judged in plain words', async () => {
    const { done } = workroom()
    const { lay } = await done<{ lay: Lay }>('garment.lay', { ...tunic, cloth })
    const judge = (placements: Lay['placements']) =>
      done<{ lay?: Lay; faults: { copies: string[]; sentence: { code: string } }[] }>('lay.judge', {
        ...{ ...tunic, cloth, lay: { placements } },
      })
    expect((await judge(lay.placements)).faults).toEqual([])
    const [first, second, ...rest] = lay.placements as [Lay['placements'][0], Lay['placements'][0]]
    const { faults } = await judge([
      first,
      { ...second, ...{ x: first.x, y: (first as { y?: number }).y } },
      ...rest,
    ])
    expect(faults.map(({ sentence }) => sentence.code)).toContain('lay.fault.overlap')
    expect(faults[0]!.copies).toContain(`${second.piece}/${second.copy}`)
  })

  test('are costed flat, folded and torn', async () => {
    const { done } = workroom()
    const { manners } = await done<{ manners: (Row & { manner: string })[] }>('lay.manners', {
      ...tunic,
      cloth,
    })
    expect(manners.map(({ manner }) => manner)).toEqual(['single', 'doubled', 'torn'])
    const [flat, , torn] = manners
    expect(flat!.toBuy!).toBeLessThanOrEqual(torn!.toBuy!)
    // £14 a metre: the price of the length to buy, to the penny.
    expect(flat!.cost!.minor).toBe(Math.round((flat!.toBuy! / 1000) * 1400))
  })

  test('are compared on every cloth in the book and in other widths; too narrow a one has its reason', async () => {
    const { done } = workroom()
    await done('cloth.add', { ...cloth, name: 'Wide linen', width: '150 cm' })
    const { rows } = await done<{ rows: Row[] }>('lay.compare', {
      ...tunic,
      cloth,
      widths: ['25 cm', '91.4 cm'],
    })
    expect(rows.map(({ name, width }) => [name, Math.round(width)])).toEqual([
      ['Wide linen', 1500],
      ['Loom linen', 250],
      ['Loom linen', 914],
    ])
    expect(rows[1]!.refused?.code).toBe('refusal.lay.tooNarrow')
    expect(rows[0]!.toBuy!).toBeLessThan(rows[2]!.toBuy!)
  })

  test('of several garments share one length of cloth', async () => {
    const { done } = workroom()
    const { lay, saves } = await done<{ lay: Lay; saves: number }>('lay.together', {
      ...{ garments: [tunic, tunic], cloth },
    })
    expect(saves).toBeGreaterThanOrEqual(0)
    const names = lay.placements.map(({ piece, copy }) => `${piece}/${copy}`)
    expect(new Set(names).size).toBe(names.length)
    expect(names.filter((name) => name.startsWith('2.')).length).toBe(names.length / 2)
  })
})
