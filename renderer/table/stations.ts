import type { OutputOf } from '../../core/workroom.ts'
import type { Garment } from '../commission/logged.ts'

/** What is needed at the cutting table for a garment, and one of its pieces, mm; each piece stands there once. */
export type AtTable = OutputOf<'garment.table'>
export type TablePiece = AtTable['pieces'][number]
type Step = Garment['steps'][number]

/** One thing to do at the table: a step of the garment, the cloth to measure anew, or a piece to mark. */
export type Station =
  | { key: string; kind: 'step'; step: Step }
  | { key: string; kind: 'measure'; step: Step }
  | { key: string; kind: 'mark'; step: Step; piece: TablePiece; place: number; of: number }

/**
 * A garment's steps in their order. Before the cutting, as long as it is to come, stand the measuring of the washed
 * cloth and every piece to mark; `step` of these is the cutting they belong to.
 */
export function stationsOf(garment: Pick<Garment, 'steps'>, pieces: readonly TablePiece[]): Station[] {
  const cutting = garment.steps.find(({ stage, doneAt }) => stage === 'cut' && doneAt === null)
  return garment.steps.flatMap((step): Station[] => {
    const own: Station = { key: step.id, kind: 'step', step }
    if (step !== cutting || pieces.length === 0) return [own]
    return [
      { key: 'measure', kind: 'measure', step },
      ...pieces.map(
        (piece, i): Station => ({
          ...{ key: `mark/${piece.id}`, kind: 'mark', step, piece, place: i + 1, of: pieces.length },
        }),
      ),
      own,
    ]
  })
}

/** Where she begins: at the first thing that is not done, or at the last where all of it is. */
export function firstOpen(stations: readonly Station[]): string | undefined {
  const open = stations.find(({ step }) => step.doneAt === null)
  return (open ?? stations.at(-1))?.key
}
