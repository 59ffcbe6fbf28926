import { pathLength, signedArea } from '../../../geometry/path.ts'
import { distance } from '../../../geometry/point.ts'
import { type PhraseCode, phrase } from '../../../words/phrase.ts'
import type { Hem, OperationId, Piece, Seam, Stage, Step } from '../../types.ts'
import type { Figures } from './figures.ts'

type Work = { operation: OperationId; quantity: number }

/**
 * The making, step by step. Quantities of operations: square metres of cloth to wash and press, pieces to
 * lay out, metres to cut, clip, press open and level, and the rest by the piece.
 */
export function stepsOf(
  f: Figures,
  pieces: readonly Piece[],
  seams: readonly Seam[],
  hems: readonly Hem[],
): Step[] {
  const clothArea = sum(pieces, ({ cut, copies }) => (copies.length * signedArea(cut)) / 1e6)
  const cutEdge = sum(pieces, (piece) => (piece.copies.length * cutLength(piece)) / 1000)
  const copies = sum(pieces, (piece) => piece.copies.length)
  const seamMetres = sum(seams, ({ length }) => length / 1000)
  const neckMetres = (f.neck.perimeter + 2 * f.neck.slit) / 1000
  const slits = (f.neck.slit > 0 ? 1 : 0) + (f.skirt.gores > 4 ? 2 : 0)

  const step = (
    id: string,
    stage: Stage,
    work: Work[],
    sewn: Pick<Step, 'seams' | 'hems'> = NOTHING,
    cautions: string[] = [],
  ): Step => ({
    id,
    stage,
    name: phrase(`draft.step.${id}` as PhraseCode),
    ...sewn,
    operations: work,
    cautions: cautions.map((code) => phrase(`draft.caution.${code}` as PhraseCode)),
  })
  const sewing = (pick: (seam: Seam) => boolean) => ({
    seams: seams.filter(pick).map(({ id }) => id),
    hems: [],
  })
  const hemming = (...ids: string[]) => ({
    seams: [],
    hems: hems.filter(({ id }) => ids.includes(id)).map(({ id }) => id),
  })
  const neckFaced = (s: Seam) => s.kind === 'facing' || s.kind === 'facingJoin'
  const firstSide = (s: Seam) => s.id.startsWith('gusset-sleeve-front')
  const secondSide = (s: Seam) => s.id.startsWith('gusset-sleeve-back') || s.kind === 'underarm'
  const toBody = (s: Seam) => s.kind === 'armhole' || s.id.startsWith('gusset-body')
  const together = (s: Seam) => s.kind === 'side' || s.id.startsWith('gore-to-gore')
  const goresIn = (s: Seam) => s.kind === 'gore' || s.id.startsWith('centre-line')

  const steps = [
    step('wash', 'prepare', [work('prewash', clothArea), work('press', clothArea)], NOTHING, [
      'dust',
      'iron',
    ]),
    step('cut', 'cut', [work('layOut', copies), work('cutOut', cutEdge)], NOTHING, ['blades']),
    step(
      'shoulders',
      'sew',
      [],
      sewing((s) => s.kind === 'shoulder'),
    ),
    step('gores', 'sew', [], sewing(goresIn)),
    step('gussets', 'sew', [work('setGusset', 2)], sewing(firstSide)),
    step('sleeveSeams', 'sew', [], sewing(secondSide)),
    step('armholes', 'sew', [], sewing(toBody)),
    step('sideSeams', 'sew', [], sewing(together)),
    step('pressSeams', 'sew', [work('pressSeams', seamMetres)], NOTHING, ['iron']),
    step('tryOn', 'fit', [work('tryOn', 1)], NOTHING, ['pins']),
    step(
      'neck',
      'hem',
      [work('clipNeck', neckMetres), ...(slits > 0 ? [work('reinforceSlit', slits)] : [])],
      { ...hemming('neck', 'slit', 'facing-edge'), seams: seams.filter(neckFaced).map(({ id }) => id) },
    ),
    step('wrists', 'hem', [], hemming('wrist-left', 'wrist-right')),
    step('level', 'fit', [work('hangBias', 1), work('levelHem', f.skirt.sweep / 1000)]),
    step('bottom', 'hem', [], hemming('bottom')),
    step('finish', 'finish', [work('finalPress', clothArea)], NOTHING, ['iron', 'needles']),
  ]
  return steps.filter(({ seams: s, hems: h, operations }) => s.length + h.length + operations.length > 0)
}

const NOTHING = { seams: [] as string[], hems: [] as string[] }
const work = (operation: OperationId, quantity: number): Work => ({ operation, quantity })
const sum = <T>(of: readonly T[], measure: (one: T) => number): number =>
  of.reduce((total, one) => total + measure(one), 0)

const cutLength = ({ cut, openings, slits }: Piece): number =>
  pathLength(cut) +
  sum(openings, (o) => pathLength(o.cut)) +
  sum(slits, ({ apex, open }) => distance(apex, open))
