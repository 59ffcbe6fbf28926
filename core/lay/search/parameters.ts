/**
 * Every number the search for a short lay goes by, in one place. Lengths are parts of what is named. The
 * weights, steps and strikes began as arXiv:2509.13329 gives them; samples, patience and whatever that paper
 * does not have were set by trial on published problems.
 */
export const SEARCH = {
  /** Places tried for a piece in trouble: anywhere, near where it lies, and corner to corner with another. */
  anywhere: 10,
  near: 10,
  touching: 20,
  /** How many of the best of them are refined. */
  kept: 3,
  /** Refining steps begin at this part of the smaller side; from the middling on only the best place goes on. */
  coarse: 0.25,
  middling: 0.02,
  fine: 0.001,
  /** The pieces it may meet are gathered anew when it has gone further than this part of its smaller side. */
  margin: 0.5,
  stepUp: 1.1,
  stepDown: 0.5,
  /** How much heavier an overlap that stays becomes with each sweep: the least and the worst of them. */
  heavier: 1.2,
  heaviest: 2,
  /** How an overlap that went loses weight again, down to 1. */
  lighter: 0.95,
  /** Sweeps without a new best before a strike, and strikes before giving up a length. */
  patience: 100,
  strikes: 2,
  /** As patience, for a step longer than the least: there is still a shorter one to try. */
  boldPatience: 30,
  /** A best that is not better by this much does not count as progress. */
  progress: 0.98,
  /** Shortening while it goes well: the first step, the least, and the most, in parts of the length. */
  shortenLeast: 0.001,
  shortenMost: 0.02,
  /** A length freed within this many sweeps was easy: the next step is longer. */
  easy: 60,
  longer: 1.5,
  /** The last part of the time goes into squeezing, from the first step down to the last. */
  squeeze: 0.2,
  squeezeFirst: 0.0005,
  squeezeLast: 0.00001,
  squeezePatience: 100,
  squeezeStrikes: 2,
  /** Pieces of which the area is within the largest ones' share of all area may be swapped in a disturbance. */
  large: 0.75,
  /** Disturbances that throw parts about instead, and up to which part of them. */
  throwing: 0.5,
  thrown: 0.25,
  /** Spread of the choice among near-successes, in parts of their number. */
  nearSuccess: 0.25,
  /** Rectangles: what counts when a hollow is filled, how many preferences change at a time, and how much longer
   * a lay may be that takes the place of a better one. */
  rectangles: { waste: 30, level: 1.5, size: 2, chance: 0.2, changes: 4, worse: 0.01 },
  /** Torn lays: how many parts change their place in the order at a time, and as above. */
  torn: { moves: 3, worse: 0.01 },
  /** An overlap this deep, in parts of the cloth's width, is rounding dust. */
  dust: 1e-9,
} as const
