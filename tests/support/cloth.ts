import fc from 'fast-check'
import { makePiece, straightSides } from '../../core/draft/pieces.ts'
import type { Piece } from '../../core/draft/types.ts'
import type { Point } from '../../core/geometry/types.ts'
import type { Cloth } from '../../core/lay/types.ts'

/** Cloth of exactly this usable width. */
export const plainCloth = (width: number, more: Partial<Cloth> = {}): Cloth => ({
  ...{ width, selvedge: 0, warpShrinkage: 0, weftShrinkage: 0, rightSide: false, nap: false },
  ...{ thickness: 0.4, increment: 100, ...more },
})

const named = { code: 'draft.piece.gore' } as const

/** A piece with these corners, anticlockwise. */
export function cornered(
  id: string,
  corners: readonly Point[],
  copies: number,
  { mirrored = false, ...more }: Partial<Piece> & { mirrored?: boolean } = {},
): Piece {
  return makePiece(
    {
      ...{ id, name: named, grain: 'straight', turn: [0, 180], cloth: 'main', sizes: [], ...more },
      copies: Array.from({ length: copies }, (_, i) => ({
        ...{ id: `${id}${i}`, name: named, mirrored: mirrored && i % 2 === 1 },
      })),
    },
    {
      sides: straightSides(
        [...corners],
        corners.map((_, i) => ({ id: `${i}`, allowance: 0 })),
      ),
    },
  )
}

export const rectangle = (id: string, width: number, height: number, copies: number, more = {}): Piece =>
  cornered(
    id,
    [
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: height },
      { x: 0, y: height },
    ],
    copies,
    more,
  )

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** Trapezia, wedges and angles with a notch, some cut in pairs. */
const somePiece = fc
  .record({
    kind: fc.constantFrom('wedge', 'angle', 'arrow'),
    width: size(40, 600),
    height: size(40, 900),
    part: size(0.2, 0.8),
    copies: fc.integer({ min: 1, max: 4 }),
    mirrored: fc.boolean(),
  })
  .map(({ kind, width, height, part, copies, mirrored }) => (i: number) => {
    const [a, b] = [width * part, height * part]
    const corners = {
      wedge: [
        { x: 0, y: 0 },
        { x: width, y: 0 },
        { x: a, y: height },
        { x: 0, y: height },
      ],
      angle: [
        { x: 0, y: 0 },
        { x: width, y: 0 },
        { x: width, y: b },
        { x: a, y: b },
        { x: a, y: height },
        { x: 0, y: height },
      ],
      arrow: [
        { x: 0, y: 0 },
        { x: a, y: b },
        { x: width, y: 0 },
        { x: a, y: height },
      ],
    }[kind]
    return cornered(`${kind}${i}`, corners!, copies, { mirrored })
  })

/** Up to a dozen copies of pieces, convex and not. */
export const someParts = fc
  .array(somePiece, { minLength: 1, maxLength: 5 })
  .map((all) => all.map((make, i) => make(i)))
