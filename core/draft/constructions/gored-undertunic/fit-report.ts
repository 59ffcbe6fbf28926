import { type Body, lengthOf } from '../../../measure/body.ts'
import { type Phrase, type PhraseCode, phrase } from '../../../words/phrase.ts'
import { fitCheck } from '../../fit.ts'
import type { FitCheck } from '../../types.ts'
import type { Figures } from './figures.ts'
import { ARM_EASE, FLOOR_CLEARANCE, LEAST_EASE, SEAT_SPREAD, THUMB } from './practice.ts'
import { strideNeed } from './skirt.ts'

/** Asks the tunic, level by level, whether the body fits in and can move. */
export function fitReport(f: Figures, body: Body): FitCheck[] {
  const { levels, skirt, sleeve, neck, length } = f
  const measure = (id: Parameters<typeof lengthOf>[1]) => lengthOf(body, id)!
  const around = Math.max(lengthOf(body, 'bustGirth') ?? 0, lengthOf(body, 'chestGirth') ?? 0)
  const reaches = (level: number) => length >= level
  const onSleeve = (place: number) => place < sleeve.length
  const least = (
    id: string,
    garment: () => number,
    needs: () => number,
    mendBy: string,
    from: FitCheck['missing'] = [],
  ) => fitCheck(body, { id, from, bound: 'least', garment, needs, mend: mend(mendBy) })
  const most = (id: string, garment: () => number, needs: () => number, mendBy: string) =>
    fitCheck(body, { id, bound: 'most', garment, needs, mend: mend(mendBy) })
  const arm = (id: string, place: number, girth: 'elbowGirth' | 'forearmGirth') =>
    onSleeve(place)
      ? [
          least(
            id,
            () => sleeve.girthAt(place),
            () => measure(girth) + ARM_EASE,
            'wristWidth',
            [girth],
          ),
        ]
      : []

  return [
    least(
      'chest',
      () => 2 * f.width,
      () => around + LEAST_EASE,
      'chestEase',
    ),
    ...(reaches(levels.waist)
      ? [
          least(
            'waist',
            () => skirt.girthAt(levels.waist),
            () => measure('waistGirth') + LEAST_EASE,
            'chestEase',
          ),
        ]
      : []),
    ...(reaches(levels.hip)
      ? [
          least(
            'hip',
            () => skirt.girthAt(levels.hip),
            () => measure('hipGirth') + LEAST_EASE,
            'chestEase',
          ),
          least(
            'seat',
            () => skirt.girthAt(levels.hip),
            () => measure('hipGirth') * (1 + SEAT_SPREAD),
            'chestEase',
          ),
        ]
      : []),
    least(
      'biceps',
      () => sleeve.girthAt(sleeve.places.biceps),
      () => measure('upperArmGirth') + ARM_EASE,
      f.chosen.taper && sleeve.wrist < sleeve.head ? 'armholeOrWrist' : 'armholeEase',
    ),
    ...arm('elbow', sleeve.places.elbow, 'elbowGirth'),
    ...arm('forearm', sleeve.places.forearm, 'forearmGirth'),
    least(
      'hand',
      () => sleeve.wrist,
      () => measure('handGirth') + THUMB,
      'wristWidth',
    ),
    least(
      'head',
      () => neck.perimeter + 2 * neck.slit,
      () => neck.toPass,
      'slitLength',
    ),
    most(
      'neckStays',
      () => neck.width,
      () => neck.widest,
      'neckEase',
    ),
    least(
      'stride',
      () => skirt.sweep,
      () => strideNeed(body, levels, length),
      'sweep',
      ['calfGirth'],
    ),
    most(
      'floor',
      () => length,
      () => levels.cervicalHeight - FLOOR_CLEARANCE,
      'length',
    ),
  ]
}

const mend = (by: string): Phrase => phrase(`draft.mend.${by}` as PhraseCode)
