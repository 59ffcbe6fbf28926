import { surveyed } from '../../build/survey.ts'
import type { Lengths } from '../../core/measure/proportions.ts'

export { hasSurvey, surveyColumn } from '../../build/survey.ts'

export type SurveyBody = Required<Lengths>

export const surveyBodies = (sex: 'female' | 'male'): SurveyBody[] =>
  surveyed(sex === 'female' ? 'women' : 'men')
