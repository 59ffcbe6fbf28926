import type { Lengths } from './proportions.ts'
import type { MeasureId } from './vocabulary.ts'

/**
 * One body dimension in millimetres and where it comes from: taken with the tape, carried over from an
 * earlier set, or estimated with a standard deviation (mm).
 */
export type Measure = { mm: number; source: MeasureSource; sd?: number; sides?: Sides }

/** A measure taken on both sides, mm; the larger one counts. */
export type Sides = { left: number; right: number }

/** Where a measure may come from. */
export const MEASURE_SOURCES = ['taken', 'carried', 'estimated'] as const
export type MeasureSource = (typeof MEASURE_SOURCES)[number]

/** A body as the constructions see it: plain JSON, only the measures there are; whole years where a birth day is known. */
export type Body = { measures: Partial<Record<MeasureId, Measure>>; age?: number }

/** Words on single measures. */
export type MeasureNotes = Partial<Record<MeasureId, string>>

/** What a maker asks besides measuring, each in the client's words. */
export const REMARKS = ['posture', 'shoulders', 'hair', 'movement', 'allergies'] as const
export type Remarks = Partial<Record<(typeof REMARKS)[number], string>>

/** All of its measures in mm. */
export const lengthsOf = ({ measures }: Body): Lengths =>
  Object.fromEntries(Object.entries(measures).map(([id, { mm }]) => [id, mm]))

/** The measure in mm, or undefined when it was not taken. */
export const lengthOf = (body: Body, id: MeasureId): number | undefined => body.measures[id]?.mm
