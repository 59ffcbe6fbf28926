import { readLength } from '../words/length.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import type { LengthUnit } from '../words/units.ts'
import { type Body, lengthsOf, type Measure, type MeasureSource, type Sides } from './body.ts'
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
  return plausible(readMeasures(written, unit))
}

/**
 * The same body, if it can be one.
 *
 * @throws Refusal at the measure that is outside every human size, or that contradicts another
 */
export function plausible(body: Body): Body {
  for (const [id, { mm }] of Object.entries(body.measures))
    refusingAt(id, () => refuseAbsurd(id as MeasureId, mm))
  refuseImpossible(lengthsOf(body))
  return body
}

/**
 * Reads measures as they are written, whatever size they turn out to be.
 *
 * @throws Refusal at the measure that is unknown or unreadable
 */
export function readMeasures(written: Readonly<Record<string, WrittenMeasure>>, unit: LengthUnit): Body {
  const measures: Partial<Record<MeasureId, Measure>> = {}
  for (const [id, value] of Object.entries(written)) {
    if (!isMeasureId(id)) {
      throw new Refusal(phrase('refusal.measure.unknown', { id, known: MEASURE_IDS.join(', ') }), id)
    }
    measures[id] = refusingAt(id, () => readMeasure(value, unit))
  }
  return { measures }
}

function readMeasure(value: WrittenMeasure, unit: LengthUnit): Measure {
  const { length, source, sd } = typeof value === 'object' ? value : { length: value }
  const sides = typeof length === 'string' ? readSides(length, unit) : undefined
  const mm = sides === undefined ? readLength(length, unit) : Math.max(sides.left, sides.right)
  const known = source ?? (sd === undefined ? 'taken' : 'estimated')
  return {
    ...{ mm, source: known },
    ...(sd === undefined ? {} : { sd: readLength(sd, unit) }),
    ...(sides === undefined ? {} : { sides }),
  }
}

/** A measure taken on both sides, as `L 58.5 R 59`. */
const BOTH_SIDES = /^\s*l(?:eft)?[.:]?\s+(.+?)[,;]?\s+r(?:ight)?[.:]?\s+(.+)$/i

function readSides(text: string, unit: LengthUnit): Sides | undefined {
  const [, left, right] = BOTH_SIDES.exec(text) ?? []
  if (left === undefined || right === undefined) return undefined
  return { left: readLength(left, unit), right: readLength(right, unit) }
}

function refuseAbsurd(id: MeasureId, mm: number): void {
  const [least, most] = MEASURES[id].range
  if (mm >= least && mm <= most) return
  throw new Refusal(
    phrase('refusal.measure.range', {
      measure: phrase(`measure.name.${id}`),
      given: { mm },
      least: { mm: least },
      most: { mm: most },
    }),
  )
}
