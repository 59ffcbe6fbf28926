import type { Body } from '../../core/measure/body.ts'
import { readBody } from '../../core/measure/read-body.ts'

/** A woman of middling size, mm. */
const MIDDLING = {
  ...{ stature: 1680, cervicalHeight: 1435, headGirth: 565, neckBaseGirth: 385, shoulderLength: 124 },
  ...{ bustGirth: 960, waistGirth: 795, hipGirth: 1030, armLength: 585, upperArmGirth: 300 },
  ...{ elbowGirth: 265, forearmGirth: 250, handGirth: 190, waistHeight: 1035, hipHeight: 880 },
  ...{ insideLegHeight: 780, kneeHeight: 460, calfGirth: 370 },
  ...{ neckGirth: 345, underbustGirth: 815, wristGirth: 162, thighGirth: 600, kneeGirth: 370 },
  ...{ ankleGirth: 225, heelGirth: 325, footLength: 245, totalCrotchLength: 730 },
}
const HEIGHTS = [
  'stature',
  'cervicalHeight',
  'armLength',
  'waistHeight',
  'hipHeight',
  'insideLegHeight',
  'kneeHeight',
  'footLength',
  'totalCrotchLength',
]

const SLOW_TO_GROW = [
  ...['headGirth', 'handGirth', 'neckBaseGirth', 'neckGirth', 'wristGirth'],
  ...['ankleGirth', 'heelGirth'],
]

/** Heads, hands, feet and necks vary less than waists. */
const girth = (name: string, stout: number): number =>
  SLOW_TO_GROW.includes(name) ? 1 + (stout - 1) / 4 : stout

/** A body of middling size and grown, for timings that want only one. */
export const middlingBody: Body = readBody(MIDDLING, 'mm')

/**
 * Bodies spread evenly over heights of 150 to 190 cm and girths from slender to stout: ten by six of them,
 * in an order in which the first few are already spread.
 */
export const stratifiedBodies: Body[] = Array.from({ length: 60 }, (_, i) => {
  const k = (i * 37) % 60
  const [tall, stout] = [0.893 + ((k % 10) / 9) * 0.238, 0.82 + (Math.floor(k / 10) / 5) * 0.6]
  return readBody(
    Object.fromEntries(
      Object.entries(MIDDLING).map(([name, mm]) => [
        name,
        HEIGHTS.includes(name) ? mm * tall : name.endsWith('Girth') ? mm * girth(name, stout) : mm,
      ]),
    ),
    'mm',
  )
})
