/**
 * What is taken of a maker's times before she has logged any, all common practice and all to give way to her own
 * logs. Spreads are standard deviations of the logarithm: 0.4 says that two makers in three work between
 * two thirds and one and a half times the standard.
 */
export const PACE = {
  /** Whoever is quick is quick at everything, … */
  whole: 0.22,
  /** … at all work of a family, … */
  family: 0.22,
  /** … and at one kind of it. The three together: 0.4. */
  kind: 0.26,
  /** From one step to the next of the same work: cloth, light, interruptions. */
  step: 0.25,
  /** How many logged steps the figure for `step` weighs against hers. */
  stepWeight: 40,
  /** Logged work counts half after so many days: hands change slowly. */
  halfLife: 730,
  /** One entry in so many is thought wrong before it is looked at: a timer left running, or started late. */
  wrong: 0.04,
  /** Spread of a wrong entry: five times too long is nothing odd. */
  wrongSpread: 1.6,
} as const
