import type { Path } from '../../geometry/types.ts'
import { makingOf } from '../making.ts'
import { named } from '../names.ts'
import { cutPiece } from '../pieces.ts'
import { NARROW_TURNING } from '../practice.ts'
import { edgesOn, totalsOf, turnedHem } from '../seams.ts'
import type { Draft } from '../types.ts'
import { assertSewable } from '../verify.ts'

type Cloth = Pick<Draft, 'construction' | 'choices' | 'fit' | 'cautions' | 'sizes' | 'flat'> & {
  /** Its piece, which is also its word in the catalogue. */
  piece: string
  sides: readonly { id: string; path: Path }[]
  written: Parameters<typeof cutPiece>[2]['sizes']
  /** Finished depth of the hem all round, and what a curve leaves to ease in. */
  depth: number
  fullness?: number
}

/** One piece of fine cloth with a narrow hem all round: a kerchief, a veil, a wimple. */
export function hemmedCloth({ piece, sides, written, depth, fullness = 0, ...rest }: Cloth): Draft {
  const turned = { allowance: depth + NARROW_TURNING, turned: true }
  const shape = { sides: sides.map((side) => ({ ...side, ...turned })) }
  const pieces = [cutPiece(piece, shape, { sizes: written, joinsFreely: true })]
  const edge = edgesOn(pieces)
  const hems = [
    turnedHem({
      ...{
        id: 'edge',
        kind: 'edge',
        name: named('hem', 'edge'),
        depth,
        allowance: turned.allowance,
        fullness,
      },
      spans: sides.map(({ id }) => edge(piece, id)),
    }),
  ]
  const { step, hemming, before, after } = makingOf(pieces, [], hems)
  const hemmed = step(
    'edges',
    'hem',
    [],
    hemming(() => true),
  )
  return assertSewable({
    ...rest,
    ...{ pieces, seams: [], hems, steps: [...before, hemmed, ...after], notions: [] },
    totals: totalsOf(pieces, [], hems),
  })
}
