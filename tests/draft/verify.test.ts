import { describe, expect, test } from 'vitest'
import { goredUndertunic } from '../../core/draft/constructions/gored-undertunic.ts'
import type { Draft } from '../../core/draft/types.ts'
import { assertSewable, faultsOf } from '../../core/draft/verify.ts'
import { reversePath } from '../../core/geometry/path.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'

const sound = goredUndertunic.draft(bodyOf(WOMAN), {}, 'mm')
const spoilt = (spoil: (draft: Draft) => void): string[] => {
  const draft = structuredClone(sound)
  spoil(draft)
  return faultsOf(draft)
}

describe('the check of a draft', () => {
  test('passes a sound draft', () => {
    expect(faultsOf(sound)).toEqual([])
  })

  test('finds a seam that does not walk', () => {
    const faults = spoilt((draft) => {
      draft.seams.find(({ id }) => id === 'side-left')!.ratio = 1.01
    })
    expect(faults).toEqual([expect.stringMatching(/^seam side-left does not walk/)])
  })

  test('lets two sides differ by half a millimetre and no more', () => {
    const stretched = (by: number) =>
      spoilt((draft) => {
        const [seam] = draft.seams.filter(({ kind }) => kind === 'shoulder')
        seam!.ratio = 1 + by / seam!.length
      })
    expect(stretched(0.49)).toEqual([])
    expect(stretched(0.51)).toHaveLength(1)
  })

  test('finds an edge that is forgotten, one sewn twice, and one that does not exist', () => {
    expect(
      spoilt((draft) => {
        draft.hems.pop()
      }).join(),
    ).toContain('front/front/hem from 0 to')
    expect(
      spoilt((draft) => {
        draft.hems.push({ ...draft.hems[0]!, id: 'again' })
      }).join(),
    ).toContain('sewn twice or not at all')
    expect(
      spoilt((draft) => {
        draft.hems[0]!.spans[0]!.edge = 'nowhere'
      }).join(),
    ).toContain('nowhere is no edge of the draft')
  })

  test('finds an outline that is open, turns the wrong way or crosses itself', () => {
    const gore = (draft: Draft) => draft.pieces.find(({ id }) => id === 'gore')!
    expect(
      spoilt((draft) => {
        gore(draft).outline = gore(draft).outline.slice(1)
      }),
    ).toContain('gore outline is not closed')
    expect(
      spoilt((draft) => {
        gore(draft).cut = reversePath(gore(draft).cut)
      }),
    ).toContain('gore cut turns the wrong way')
    expect(
      spoilt((draft) => {
        const [a, b, c, d] = [
          [0, 0],
          [100, 10],
          [100, 0],
          [0, 40],
        ].map(([x, y]) => ({ x: x!, y: y! }))
        gore(draft).outline = [
          { kind: 'line', from: a!, to: b! },
          { kind: 'line', from: b!, to: d! },
          { kind: 'line', from: d!, to: c! },
          { kind: 'line', from: c!, to: a! },
        ]
      }).join(),
    ).toMatch(/gore outline (crosses itself|turns the wrong way)/)
  })

  test('finds a seam that no step sews', () => {
    const faults = spoilt((draft) => {
      draft.steps.find(({ id }) => id === 'gores')!.seams.pop()
    })
    expect(faults).toEqual([expect.stringContaining('is sewn in 0 steps')])
  })

  test('stops a draft with faults', () => {
    expect(() => assertSewable({ ...sound, hems: [] })).toThrow('cannot be sewn')
  })
})
