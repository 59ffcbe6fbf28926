/**
 * Units of length in millimetres. The metric ones and the inch are exact by definition (international
 * yard and pound agreement of 1959: 1 in = 25.4 mm). Nail, quarter and English ell are exact multiples of
 * the inch as *The Workwoman's Guide* (1838) gives them: 4 nails a quarter, 4 quarters a yard, 5 quarters
 * an English ell.
 */
export const MM_PER = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  ft: 304.8,
  yd: 914.4,
  nl: 57.15,
  qr: 228.6,
  ell: 1143,
} as const

/** A unit that a length may be written in. */
export type LengthUnit = keyof typeof MM_PER

/** The units a workroom may set as its own: a bare number is read, and a length printed, in it. */
export const WORKROOM_UNITS = ['mm', 'cm', 'in'] as const
export type WorkroomUnit = (typeof WORKROOM_UNITS)[number]

/** Whether lengths in it are written as decimals; the others take fractions. */
export const isMetric = (unit: LengthUnit): boolean => unit === 'mm' || unit === 'cm' || unit === 'm'
