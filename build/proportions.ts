import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { proportionsOf, surveyed } from './survey.ts'

/**
 * `npm run proportions -- FOLDER`: derives core/measure/survey-proportions.ts from a folder with the two files of
 * ANSUR II.
 */
const folder = process.argv[2]
if (folder === undefined) {
  console.error('Give the folder in which ansur2-female.csv and ansur2-male.csv are.')
  process.exit(1)
}
const [women, men] = [surveyed('women', folder), surveyed('men', folder)]
const found = { women: proportionsOf(women), men: proportionsOf(men), all: proportionsOf([...women, ...men]) }
const path = join(import.meta.dirname, '../core/measure/survey-proportions.ts')
writeFileSync(
  path,
  `/*
 * This file is long because it is a table: the means and the lower triangles of three covariance matrices, number by
 * number, as the survey gave them. Nothing in it is written by hand.
 */
import type { Proportions } from './proportions.ts'
import type { ProportionsOf } from './survey.ts'

/** Derived by build/proportions.ts from half of the public release of ANSUR II (US Army, 2012). */
export const SURVEYED_PROPORTIONS: Record<ProportionsOf, Proportions> = ${JSON.stringify(found)}
`,
)
console.log(`${path}: ${women.length} women and ${men.length} men`)
