import { existsSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import type { MeasureId } from '../../core/measure/vocabulary.ts'

/**
 * ANSUR II, the anthropometric survey of US Army personnel of 2012 (public release), as CSV in mm. It is not
 * part of the project: tests that use it say that they are skipped when it is not beside it.
 */
const folder = resolve(
  process.env.ELLWAND_DATA ?? resolve(import.meta.dirname, '../../../shared/data'),
  'bodies',
)
export const hasSurvey = existsSync(resolve(folder, 'ansur2-female.csv'))

/** The survey's columns by the names the planner uses. It took biceps and forearm flexed, chest at the bust point. */
const COLUMNS: Partial<Record<MeasureId, string>> = {
  stature: 'stature',
  cervicalHeight: 'cervicaleheight',
  headGirth: 'headcircumference',
  neckBaseGirth: 'neckcircumferencebase',
  shoulderLength: 'shoulderlength',
  bustGirth: 'chestcircumference',
  waistGirth: 'waistcircumference',
  hipGirth: 'buttockcircumference',
  armLength: 'sleeveoutseam',
  cervicalToWristLength: 'sleevelengthspinewrist',
  upperArmLength: 'shoulderelbowlength',
  upperArmGirth: 'bicepscircumferenceflexed',
  forearmGirth: 'forearmcircumferenceflexed',
  wristGirth: 'wristcircumference',
  handGirth: 'handcircumference',
  waistHeight: 'waistheightomphalion',
  insideLegHeight: 'crotchheight',
  kneeHeight: 'kneeheightmidpatella',
  calfGirth: 'calfcircumference',
}

export type SurveyBody = Partial<Record<MeasureId, number>>

export function surveyBodies(sex: 'female' | 'male'): SurveyBody[] {
  const [head, ...rows] = readFileSync(resolve(folder, `ansur2-${sex}.csv`), 'utf8')
    .trim()
    .split('\n')
  const columns = head!.split(',')
  const at = Object.entries(COLUMNS).map(([id, name]) => [id, columns.indexOf(name)] as const)
  return rows.map((row) => {
    const cells = row.split(',')
    return Object.fromEntries(at.map(([id, i]) => [id, Number(cells[i])]))
  })
}
