import { type Phrase, type PhraseCode, phrase } from '../words/phrase.ts'
import { MOST_FULLNESS } from './practice.ts'
import type { Hem, OperationId } from './types.ts'

/** Hems nearer to the floor than this trail by the fire and on the stairs (common practice), mm. */
const TRAILING = 120

/**
 * What to say of a garment by the way it hangs: hems so deep that they pucker on their curve, a hem that trails, and
 * last, of every one, flame.
 *
 * @param fromFloor of the lowest hem, mm; not given for what hangs nowhere near it
 */
export function hangingCautions(hems: readonly Hem[], fromFloor = Infinity): Phrase[] {
  const puckering = new Set(
    hems.filter(({ fullness }) => fullness > MOST_FULLNESS + 1e-9).map(({ depth }) => depth),
  )
  return [
    ...[...puckering].map((mm) => phrase('draft.caution.hemPuckers', { depth: { mm } })),
    ...(fromFloor < TRAILING ? [phrase('draft.caution.trailing')] : []),
    phrase('draft.caution.flame'),
  ]
}

/** What each kind of work can hurt with: blades, points, a hot iron, dust, pins left in. */
const OF_WORK: Partial<Record<OperationId, readonly PhraseCode[]>> = {
  prewash: ['draft.caution.dust'],
  press: ['draft.caution.iron'],
  pressSeams: ['draft.caution.iron'],
  finalPress: ['draft.caution.iron', 'draft.caution.needles'],
  cutOut: ['draft.caution.blades', 'draft.caution.pinsInLine'],
  cutPiece: ['draft.caution.blades', 'draft.caution.pinsInLine'],
  clipNeck: ['draft.caution.blades'],
  reinforceSlit: ['draft.caution.blades'],
  toile: ['draft.caution.blades', 'draft.caution.pinsInLine'],
  workButtonhole: ['draft.caution.blades'],
  workEyelet: ['draft.caution.points'],
  unpick: ['draft.caution.points'],
  tryOn: ['draft.caution.pins'],
  fitToile: ['draft.caution.pins'],
  levelHem: ['draft.caution.pins'],
}

/** What is to be minded at a step: what its draft says of it, and what its kinds of work can hurt with, each once. */
export function workCautions(said: readonly Phrase[], work: readonly string[]): Phrase[] {
  const usual = work.flatMap((id) => OF_WORK[id as OperationId] ?? [])
  const known = new Set(said.map(({ code }) => code))
  return [...said, ...[...new Set(usual)].filter((code) => !known.has(code)).map((code) => phrase(code))]
}
