import { readFileSync } from 'node:fs'
import { z } from 'zod'
import { makePiece, straightSides } from '../../core/draft/pieces.ts'
import type { Piece } from '../../core/draft/types.ts'
import type { Cloth } from '../../core/lay/types.ts'

/** Width every strip is scaled to, mm, so that the tolerances of real cloth hold for it. */
const WIDTH = 1400

const QUARTERS = [0, 90, 180, 270] as const
const file = z.object({
  name: z.string(),
  stripWidth: z.number().positive(),
  bestKnownLength: z.number().positive(),
  pieces: z.array(
    z.object({
      id: z.string(),
      demand: z.number().int().positive(),
      orientations: z.array(z.union(QUARTERS.map((angle) => z.literal(angle)))),
      outline: z.array(z.tuple([z.number(), z.number()])).min(3),
    }),
  ),
})

/** A published strip packing problem as pieces on cloth that has a right side, so that none is turned over. */
export type Instance = {
  name: string
  pieces: Piece[]
  cloth: Cloth
  /** mm for one unit of the file. */
  scale: number
  stripWidth: number
  /** Area of all pieces by the file's own outlines, in its units. */
  area: number
  bestKnownDensity: number
}

/** @param path of a file as in the data: lengths run along x there, the strip's width along y */
export function readInstance(path: string): Instance {
  const { name, stripWidth, bestKnownLength, pieces } = file.parse(JSON.parse(readFileSync(path, 'utf8')))
  const scale = WIDTH / stripWidth
  const area = pieces.reduce((sum, { demand, outline }) => sum + demand * Math.abs(shoelace(outline)), 0)
  return {
    name,
    pieces: pieces.map(({ id, demand, orientations, outline }) =>
      pieceOf(id, demand, orientations, outline, scale),
    ),
    cloth: {
      ...{ width: WIDTH, selvedge: 0, warpShrinkage: 0, weftShrinkage: 0, thickness: 0.4, increment: 100 },
      ...{ rightSide: true, nap: false },
    },
    scale,
    stripWidth,
    area,
    bestKnownDensity: area / (bestKnownLength * stripWidth),
  }
}

function pieceOf(
  id: string,
  demand: number,
  turn: Piece['turn'],
  outline: [number, number][],
  scale: number,
): Piece {
  const name = { code: 'draft.piece.gore' } as const
  // A quarter turn brings the file's length along the cloth.
  const corners = outline.map(([x, y]) => ({ x: -y * scale, y: x * scale }))
  if (shoelace(outline) < 0) corners.reverse()
  return makePiece(
    {
      ...{ id, name, turn, grain: 'straight', cloth: 'main', sizes: [] },
      copies: Array.from({ length: demand }, (_, k) => ({ id: `${k + 1}`, name, mirrored: false })),
    },
    {
      sides: straightSides(
        corners,
        corners.map((_, i) => ({ id: `${i}`, allowance: 0 })),
      ),
    },
  )
}

function shoelace(outline: readonly [number, number][]): number {
  return outline.reduce((sum, [x, y], i) => {
    const [nx, ny] = outline[(i + 1) % outline.length]!
    return sum + (x * ny - nx * y) / 2
  }, 0)
}
