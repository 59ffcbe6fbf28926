import { DEEPEST_DEFAULT_HEM, FACING, FELL, MOST_FULLNESS, ROLL, TURNING } from '../../practice.ts'
import type { UndertunicChoices } from './choices.ts'

/** Allowances by what they belong to, mm. In a felled seam one side is trimmed and the other folded over. */
export type Allowances = {
  narrow: number
  wide: number
  /** On each side of a gore's slit at its open end. */
  slit: number
  neck: number
}

/** The allowances that the chosen finish of seams and neck asks for, mm. */
export function allowancesOf({ seamFinish, seamAllowance, neckFinish }: UndertunicChoices): Allowances {
  const { narrow, wide } = seamFinish === 'felled' ? FELL : { narrow: seamAllowance, wide: seamAllowance }
  return { narrow, wide, slit: narrow, neck: neckFinish === 'facing' ? FACING.seam : ROLL.allowance }
}

/** A hem as it is turned: finished depth, cloth it takes, and what a curve leaves to ease in. mm, parts of one. */
export type Turned = { depth: number; allowance: number; fullness: number }

/** The bottom hem on gores of `radius`, narrow enough by default that its curve does not pucker. */
export function bottomHemOf({ bottomHem }: UndertunicChoices, radius: number): Turned {
  const gentle = Math.floor((radius * MOST_FULLNESS) / 2)
  const depth = bottomHem ?? Math.min(DEEPEST_DEFAULT_HEM, Math.max(TURNING, gentle))
  return { depth, allowance: depth + TURNING, fullness: (2 * depth) / radius }
}

/** The hem at the end of a sleeve, mm; an edge as straight as that has nothing to ease in. */
export const wristHemOf = ({ wristHem }: UndertunicChoices): Turned => ({
  depth: wristHem,
  allowance: wristHem + TURNING,
  fullness: 0,
})
