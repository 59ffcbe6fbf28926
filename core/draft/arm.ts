import { type Body, lengthOf } from '../measure/body.ts'
import { BICEPS_ON_ARM, ELBOW_ON_ARM, FOREARM_ON_ARM } from './levels.ts'

/**
 * Length of the arm and half the breadth of the shoulders, both from the middle of the back. Taken from
 * shoulder and arm length where both are known, else from the length over the bent arm.
 */
export function armOf(body: Body): { arm: number; shoulder: number; differ: number } {
  const shoulder = lengthOf(body, 'neckBaseGirth')! / (2 * Math.PI) + lengthOf(body, 'shoulderLength')!
  const arm = lengthOf(body, 'armLength')
  const bent = lengthOf(body, 'cervicalToWristLength')
  if (arm === undefined) return { arm: bent! - shoulder, shoulder, differ: 0 }
  return { arm, shoulder, differ: bent === undefined ? 0 : Math.abs(bent - shoulder - arm) }
}

/** Places along a sleeve, mm down from its head. */
export type Places = { biceps: number; elbow: number; forearm: number; wrist: number }

/** Where the arm lies in a sleeve that begins at the edge of a panel `width` wide, somewhere on the upper arm. */
export function placesOnSleeve(body: Body, width: number): Places {
  const { arm, shoulder } = armOf(body)
  const dropped = width / 2 - shoulder
  const elbow = (lengthOf(body, 'upperArmLength') ?? ELBOW_ON_ARM * arm) - dropped
  return {
    biceps: Math.max(0, BICEPS_ON_ARM * arm - dropped),
    ...{ elbow, forearm: FOREARM_ON_ARM * arm - dropped, wrist: arm - dropped },
  }
}

/** What a square gusset adds to a sleeve: its diagonal at the head, nothing one side further down. */
export const gussetGirth = (gusset: number, place: number): number =>
  gusset === 0 ? 0 : gusset * Math.SQRT2 * Math.max(0, 1 - place / gusset)
