import type { Body } from './body.ts'
import { estimateMissing } from './missing.ts'
import type { ProportionsOf } from './survey.ts'

/**
 * The body that a size for stock is cut to: chest and stature as the size says, everything else what half of the
 * surveyed people of that size are under. No body was measured, and none is guessed at: the figures are the size.
 *
 * @param chest bust girth of women, chest girth of men, mm
 */
export function stockBody(of: ProportionsOf, chest: number, stature: number): Body {
  const given = of === 'men' ? { chestGirth: chest, stature } : { bustGirth: chest, stature }
  const rest = estimateMissing(given, of).map(({ measure, mm }) => [measure, Math.round(mm)] as const)
  return {
    measures: Object.fromEntries(
      [...Object.entries(given), ...rest].map(([id, mm]) => [id, { mm, source: 'taken' as const }]),
    ),
  }
}
