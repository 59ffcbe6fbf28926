import { makingOf, work, worthDoing } from '../making.ts'
import type { Hem, OperationId, Piece, Seam, Step } from '../types.ts'

type Extra = {
  /** More work at the neck: a cord drawn through, hooks, a button. */
  atNeck?: { operation: OperationId; quantity: number }[]
  /** More work at the wrists. */
  atWrists?: { operation: OperationId; quantity: number }[]
  /** Sweep of a hem that must hang and be levelled, mm. */
  levelled?: number
}

const gathered = (seams: readonly Seam[]): number =>
  seams.reduce((sum, { gathers, length }) => sum + (gathers === undefined ? 0 : length / 1000), 0)

/**
 * The making of shifts, smocks and shirts: body, gores, sleeves and gussets, then neck, wrists and hem. Each seam
 * and hem goes into the first step that knows its kind.
 */
export function linenSteps(
  pieces: readonly Piece[],
  seams: readonly Seam[],
  hems: readonly Hem[],
  { atNeck = [], atWrists = [], levelled }: Extra,
): Step[] {
  const { step, before, pressSeams, after } = makingOf(pieces, seams, hems)
  const left = { seams: [...seams], hems: [...hems] }
  const take = (seam: (one: Seam) => boolean, hem: (one: Hem) => boolean = () => false) => {
    const taken = { seams: left.seams.filter(seam), hems: left.hems.filter(hem) }
    left.seams = left.seams.filter((one) => !taken.seams.includes(one))
    left.hems = left.hems.filter((one) => !taken.hems.includes(one))
    return taken
  }
  const sewn = (
    id: string,
    stage: Step['stage'],
    { seams: own, hems: ownHems }: ReturnType<typeof take>,
    more: Extra['atNeck'] = [],
    cautions: string[] = [],
  ) => {
    const metres = gathered(own)
    const operations = [...more, ...(metres > 0 ? [work('setGathers', metres)] : [])]
    const ids = { seams: own.map((one) => one.id), hems: ownHems.map((one) => one.id) }
    return step(id, stage, operations, ids, cautions)
  }
  const gussets = pieces.find(({ id }) => id === 'gusset')?.copies.length ?? 0
  return worthDoing([
    ...before,
    sewn(
      'shoulders',
      'sew',
      take(({ kind }) => kind === 'shoulder'),
    ),
    sewn(
      'reinforce',
      'sew',
      take(
        () => false,
        ({ kind }) => kind === 'laidOn',
      ),
    ),
    sewn(
      'gores',
      'sew',
      take(({ kind }) => kind === 'gore'),
    ),
    sewn(
      'gussets',
      'sew',
      take(({ id }) => id.startsWith('gusset-sleeve-front')),
      gussets > 0 ? [work('setGusset', gussets)] : [],
    ),
    sewn(
      'sleeveSeams',
      'sew',
      take(({ id, kind }) => id.startsWith('gusset-sleeve-back') || kind === 'underarm'),
    ),
    sewn(
      'wristbands',
      'sew',
      take(
        ({ id }) => id.startsWith('wristband'),
        ({ id }) => id.startsWith('wristband') || id.startsWith('wrist-opening'),
      ),
      atWrists,
    ),
    sewn(
      'armholes',
      'sew',
      take(({ id, kind }) => kind === 'armhole' || id.startsWith('gusset-body')),
    ),
    sewn(
      'sideSeams',
      'sew',
      take(({ kind }) => kind === 'side' || kind === 'goreToGore'),
    ),
    pressSeams,
    step('tryOn', 'fit', [work('tryOn', 1)], { seams: [], hems: [] }, ['pins']),
    sewn(
      'neck',
      'hem',
      take(
        ({ kind }) => kind === 'band' || kind === 'facing' || kind === 'gusset',
        ({ kind }) => kind === 'neck' || kind === 'slit' || kind === 'band' || kind === 'facingEdge',
      ),
      atNeck,
    ),
    sewn(
      'wrists',
      'hem',
      take(
        () => false,
        ({ kind }) => kind === 'wrist',
      ),
    ),
    ...(levelled === undefined
      ? []
      : [step('level', 'fit', [work('hangBias', 1), work('levelHem', levelled / 1000)])]),
    sewn(
      'bottom',
      'hem',
      take(
        () => false,
        ({ kind }) => kind === 'bottom',
      ),
    ),
    ...after,
  ])
}
