import { type Body, lengthOf } from '../measure/body.ts'
import type { MeasureId } from '../measure/vocabulary.ts'
import { type Phrase, type PhraseCode, phrase } from '../words/phrase.ts'
import type { FitCheck } from './types.ts'

/** Less than this under its need, a garment still fits: no tape reads finer (mm). */
const READING = 0.5

type Question = {
  id: string
  /** Measures the question cannot be answered without. */
  from?: readonly MeasureId[]
  bound: FitCheck['bound']
  garment: () => number
  needs: () => number
  mend: Phrase
}

/** Answers one question of the fit report, or says which measures are missing for it. */
export function fitCheck(body: Body, { id, from = [], bound, garment, needs, mend }: Question): FitCheck {
  const name = phrase(`draft.fit.${id}` as PhraseCode)
  const missing = from.filter((measure) => body.measures[measure] === undefined)
  if (missing.length > 0) return { id, name, status: 'unchecked', bound, missing }
  const [given, needed] = [garment(), needs()]
  const good = bound === 'least' ? given >= needed - READING : given <= needed + READING
  const answer = { id, name, bound, garment: given, needs: needed }
  return good ? { ...answer, status: 'good' } : { ...answer, status: 'fails', mend }
}

/** Nearer to the floor than this, a hem is trodden on (common practice), mm. */
const OFF_FLOOR = 20

/** Whether what hangs so long from the waist clears the floor. */
export const clearOfFloor = (body: Body, length: number, mend: Phrase): FitCheck =>
  fitCheck(body, {
    ...{ id: 'floor', from: ['waistHeight'], bound: 'most', mend },
    garment: () => length,
    needs: () => lengthOf(body, 'waistHeight')! - OFF_FLOOR,
  })
