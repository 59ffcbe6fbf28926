import type { MeasureId } from './vocabulary.ts'

/**
 * One body dimension in millimetres and where it comes from: taken with the tape, carried over from an
 * earlier set, or estimated with a standard deviation (mm).
 */
export type Measure = { mm: number; source: MeasureSource; sd?: number }

export const MEASURE_SOURCES = ['taken', 'carried', 'estimated'] as const
export type MeasureSource = (typeof MEASURE_SOURCES)[number]

/** A body as the constructions see it: plain JSON, only the measures there are. */
export type Body = { measures: Partial<Record<MeasureId, Measure>> }

/** The measure in mm, or undefined when it was not taken. */
export const lengthOf = (body: Body, id: MeasureId): number | undefined => body.measures[id]?.mm
