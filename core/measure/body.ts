import type { MeasureId } from './vocabulary.ts'

/**
 * One body dimension in millimetres and where it comes from: taken with the tape, carried over from an
 * earlier set, or estimated with a standard deviation (mm).
 */
export type Measure = { mm: number; source: 'taken' | 'carried' | 'estimated'; sd?: number }

/** A body as the constructions see it: plain JSON, only the measures there are. */
export type Body = { measures: Partial<Record<MeasureId, Measure>> }
