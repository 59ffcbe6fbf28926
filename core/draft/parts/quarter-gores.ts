import { named } from '../names.ts'
import { cutPiece, type Side } from '../pieces.ts'
import { atRight, HANDS, QUARTERS } from '../places.ts'
import { edgesOn, seam } from '../seams.ts'
import type { SeamFinish, Span } from '../types.ts'
import type { Assembly } from './assembly.ts'

type QuarterGores = {
  /** The sides of one gore, its hem called `hem`. */
  sides: readonly Side[]
  sizes: Parameters<typeof cutPiece>[2]['sizes']
  /** Which of them goes to a panel, and which to the other gore of that side. */
  toPanel: string
  outer: string
  finish: SeamFinish
  /** The stretch of a panel's side that a gore goes to. */
  side: (quarter: (typeof QUARTERS)[number]) => Span
}

/** Four gores, one to each side of front and back, and the two of each hand to each other. */
export function quarterGores({ sides, sizes, toPanel, outer, finish, side }: QuarterGores): Assembly {
  const copies = QUARTERS.map(({ id }) => ({ id, name: named('piece', 'gore', id), mirrored: atRight(id) }))
  const pieces = [cutPiece('gore', { sides }, { copies, sizes })]
  const edge = edgesOn(pieces)
  return {
    pieces,
    seams: [
      ...QUARTERS.map((quarter) =>
        seam({
          ...{ id: `gore-${quarter.id}`, kind: 'gore', name: named('seam', 'gore', quarter.id), finish },
          a: [edge('gore', toPanel, quarter.id)],
          b: [side(quarter)],
        }),
      ),
      ...HANDS.map((hand) => {
        const [front, back] = QUARTERS.filter((quarter) => quarter.hand === hand)
        return seam({
          ...{
            id: `gore-to-gore-${hand}`,
            kind: 'goreToGore',
            name: named('seam', 'goreToGore', hand),
            finish,
          },
          a: [edge('gore', outer, back!.id)],
          b: [edge('gore', outer, front!.id)],
        })
      }),
    ],
    hems: [],
  }
}

/** The hem edges of such gores. */
export const goreHems = ({ pieces }: Assembly): Span[] =>
  QUARTERS.map(({ id }) => edgesOn(pieces)('gore', 'hem', id))
