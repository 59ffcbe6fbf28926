import { readLength } from '../words/length.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import type { LengthUnit } from '../words/units.ts'
import type { Body, Measure, MeasureSource } from './body.ts'
import { refuseImpossible } from './plausible.ts'
import { isMeasureId, MEASURE_IDS, MEASURES, type MeasureId } from './vocabulary.ts'

/**
 * A measure as it comes in: a number is millimetres, a text is read in the set's unit, and an object says
 * besides where the measure comes from and, when it is estimated, its standard deviation.
 */
export type WrittenMeasure =
  | number
  | string
  | { length: number | string; source?: MeasureSource | undefined; sd?: number | string | undefined }

/**
 * Reads the measures of one body.
 *
 * @throws Refusal at the measure that is unknown, unreadable or outside every human size, or that
 * contradicts another
 */
export function readBody(written: Readonly<Record<string, WrittenMeasure>>, unit: LengthUnit): Body {
  const measures: Partial<Record<MeasureId, Measure>> = {}
  for (const [id, value] of Object.entries(written)) {
    if (!isMeasureId(id)) {
      throw new Refusal(phrase('refusal.measure.unknown', { id, known: MEASURE_IDS.join(', ') }), id)
    }
    measures[id] = refusingAt(id, () => readMeasure(id, value, unit))
  }
  refuseImpossible(measures)
  return { measures }
}

function readMeasure(id: MeasureId, value: WrittenMeasure, unit: LengthUnit): Measure {
  const { length, source, sd } = typeof value === 'object' ? value : { length: value }
  const mm = readLength(length, unit)
  const [least, most] = MEASURES[id].range
  if (mm < least || mm > most) {
    const params = {
      measure: phrase(`measure.name.${id}`),
      given: { mm },
      least: { mm: least },
      most: { mm: most },
    }
    throw new Refusal(phrase('refusal.measure.range', params))
  }
  const known = source ?? (sd === undefined ? 'taken' : 'estimated')
  return sd === undefined ? { mm, source: known } : { mm, source: known, sd: readLength(sd, unit) }
}
