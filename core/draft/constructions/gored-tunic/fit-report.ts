import { type Body, lengthOf } from '../../../measure/body.ts'
import { armFits, clearsFloor, headPasses, least, most, trunkFits } from '../../fit-trunk.ts'
import { THUMB } from '../../practice.ts'
import { strideNeed } from '../../stride.ts'
import type { FitCheck } from '../../types.ts'
import type { Figures } from './figures.ts'

/** Asks the tunic, level by level, whether the body fits in and can move. */
export function fitReport(f: Figures, body: Body): FitCheck[] {
  const { levels, skirt, sleeve, neck, length } = f
  const { girthAt } = skirt
  const tapered = f.chosen.taper && sleeve.wrist < sleeve.head
  return [
    ...trunkFits(body, { levels, length, girthAt, by: 'chestEase' }),
    ...armFits(body, { ...sleeve, head: tapered ? 'armholeOrWrist' : 'armholeEase', end: 'wristWidth' }),
    least(body, 'hand', sleeve.wrist, () => lengthOf(body, 'handGirth')! + THUMB, 'wristWidth'),
    headPasses(body, neck.perimeter + 2 * neck.slit, 'slitLength'),
    most(body, 'neckStays', neck.width, () => neck.widest, 'neckEase'),
    least(body, 'stride', skirt.sweep, () => strideNeed(body, levels, length), 'sweep', ['calfGirth']),
    clearsFloor(body, levels, length, 'length'),
  ]
}
