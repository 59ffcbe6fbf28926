import { pathLength, signedArea } from '../geometry/path.ts'
import { distance } from '../geometry/point.ts'
import { type PhraseCode, phrase } from '../words/phrase.ts'
import type { Hem, OperationId, Piece, Seam, Stage, Step } from './types.ts'

/** Work of a step that is not a line of stitches, in the operation's own unit. */
export type Work = { operation: OperationId; quantity: number }
type Sewn = Pick<Step, 'seams' | 'hems'>

const NOTHING: Sewn = { seams: [], hems: [] }
/** So much of an operation, in its own unit. */
export const work = (operation: OperationId, quantity: number): Work => ({ operation, quantity })

/**
 * What every garment's making begins and ends with, and how its steps are written. Quantities of operations:
 * square metres of cloth to wash and press, pieces to lay out and to cut, metres to cut and press open.
 */
export function makingOf(pieces: readonly Piece[], seams: readonly Seam[], hems: readonly Hem[]) {
  const clothArea = sum(pieces, ({ cut, copies }) => (copies.length * signedArea(cut)) / 1e6)
  const cutEdge = sum(pieces, (piece) => (piece.copies.length * cutLength(piece)) / 1000)
  const copies = sum(pieces, (piece) => piece.copies.length)
  const seamMetres = sum(seams, ({ length }) => length / 1000)
  const step = (
    id: string,
    stage: Stage,
    operations: Work[],
    sewn: Sewn = NOTHING,
    cautions: string[] = [],
  ): Step => ({
    ...{ id, stage, ...sewn, operations },
    name: phrase(`draft.step.${id}` as PhraseCode),
    cautions: cautions.map((code) => phrase(`draft.caution.${code}` as PhraseCode)),
  })
  return {
    step,
    sewing: (pick: (seam: Seam) => boolean): Sewn => ({ ...NOTHING, seams: seams.filter(pick).map(idOf) }),
    hemming: (pick: (hem: Hem) => boolean): Sewn => ({ ...NOTHING, hems: hems.filter(pick).map(idOf) }),
    before: [
      step('wash', 'prepare', [work('prewash', clothArea), work('press', clothArea)], NOTHING, [
        'dust',
        'iron',
      ]),
      step(
        'cut',
        'cut',
        [work('layOut', copies), work('cutOut', cutEdge), work('cutPiece', copies)],
        NOTHING,
        ['blades'],
      ),
    ],
    pressSeams: step('pressSeams', 'sew', [work('pressSeams', seamMetres)], NOTHING, ['iron']),
    after: [
      step('finish', 'finish', [work('finalPress', clothArea), work('pack', 1)], NOTHING, [
        'iron',
        'needles',
      ]),
    ],
  }
}

/** Steps in which there is something to do. */
export const worthDoing = (steps: readonly Step[]): Step[] =>
  steps.filter(({ seams, hems, operations }) => seams.length + hems.length + operations.length > 0)

const idOf = ({ id }: { id: string }): string => id
const sum = <T>(of: readonly T[], measure: (one: T) => number): number =>
  of.reduce((total, one) => total + measure(one), 0)

const cutLength = ({ cut, openings, slits }: Piece): number =>
  pathLength(cut) +
  sum(openings, (o) => pathLength(o.cut)) +
  sum(slits, ({ apex, open }) => distance(apex, open))
