import { type Body, lengthOf } from '../measure/body.ts'
import type { MeasureId } from '../measure/vocabulary.ts'
import { type PhraseCode, phrase } from '../words/phrase.ts'
import type { Places } from './arm.ts'
import { fitCheck } from './fit.ts'
import type { Levels } from './levels.ts'
import {
  ARM_EASE,
  FLOOR_CLEARANCE,
  HEAD_EASE,
  LEAST_EASE,
  SEAT_SPREAD,
  SHOULDERS_TO_CHEST,
} from './practice.ts'
import type { FitCheck } from './types.ts'

/** The larger of bust and chest, mm. */
export const chestOf = (body: Body): number =>
  Math.max(lengthOf(body, 'bustGirth') ?? 0, lengthOf(body, 'chestGirth') ?? 0)

/** Round both shoulders with the arms down, mm: not measured, and taken as a part of the chest. */
export const shouldersOf = (body: Body): number => chestOf(body) * SHOULDERS_TO_CHEST

/** Asks one question of the fit report, mended by a named choice: the garment gives `garment`, the body `needs`. */
const asks =
  (bound: FitCheck['bound']) =>
  (
    body: Body,
    id: string,
    garment: number,
    needs: () => number,
    by: string,
    from: readonly MeasureId[] = [],
  ): FitCheck =>
    fitCheck(body, {
      id,
      from,
      bound,
      garment: () => garment,
      needs,
      mend: phrase(`draft.mend.${by}` as PhraseCode),
    })

/** The garment must have so much, or may have no more than so much; mm, against what the body needs. */
export const least = asks('least')
export const most = asks('most')

type Trunk = {
  levels: Levels
  /** From the high shoulder point to the hem. */
  length: number
  /** Finished girth at a level down from there. */
  girthAt: (level: number) => number
  /** The choice that gives more of it. */
  by: string
}

/** Chest, waist, hip and seat, as far down as the garment reaches. */
export function trunkFits(body: Body, { levels, length, girthAt, by }: Trunk): FitCheck[] {
  const measure = (id: MeasureId) => lengthOf(body, id)!
  return [
    least(body, 'chest', girthAt(0), () => chestOf(body) + LEAST_EASE, by),
    ...(length >= levels.waist
      ? [least(body, 'waist', girthAt(levels.waist), () => measure('waistGirth') + LEAST_EASE, by)]
      : []),
    ...(length >= levels.hip
      ? [
          least(body, 'hip', girthAt(levels.hip), () => measure('hipGirth') + LEAST_EASE, by),
          least(body, 'seat', girthAt(levels.hip), () => measure('hipGirth') * (1 + SEAT_SPREAD), by),
        ]
      : []),
  ]
}

type Arm = { places: Places; length: number; girthAt: (place: number) => number; head: string; end: string }

/** Upper arm, bent elbow and forearm, as far down as the sleeve reaches. */
export function armFits(body: Body, { places, length, girthAt, head, end }: Arm): FitCheck[] {
  const at = (id: 'biceps' | 'elbow' | 'forearm', measure: MeasureId, by: string) =>
    places[id] < length
      ? [least(body, id, girthAt(places[id]), () => lengthOf(body, measure)! + ARM_EASE, by, [measure])]
      : []
  return [
    ...at('biceps', 'upperArmGirth', head),
    ...at('elbow', 'elbowGirth', end),
    ...at('forearm', 'forearmGirth', end),
  ]
}

/** Whether the head passes an opening so long round, its slit opened. */
export const headPasses = (body: Body, round: number, by: string): FitCheck =>
  least(body, 'head', round, () => lengthOf(body, 'headGirth')! + HEAD_EASE, by, ['headGirth'])

/** Whether what hangs so long from the shoulder clears the floor. */
export const clearsFloor = (body: Body, levels: Levels, length: number, by: string): FitCheck =>
  most(body, 'floor', length, () => levels.cervicalHeight - FLOOR_CLEARANCE, by)
