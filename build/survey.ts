import { existsSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import type { Lengths, Proportions } from '../core/measure/proportions.ts'
import { SURVEY, SURVEYED } from '../core/measure/survey.ts'
import type { MeasureId } from '../core/measure/vocabulary.ts'

/**
 * ANSUR II, the anthropometric survey of US Army personnel of 2012 (public release), as CSV in mm: what the
 * proportions are derived from and tried on. It is not part of the project, and no row of it ever is.
 */
const FILES = { women: 'ansur2-female.csv', men: 'ansur2-male.csv' } as const

/** Where the files of the survey are looked for, and whether they are there. */
export const surveyFolder = resolve(
  process.env.ELLWAND_DATA ?? resolve(import.meta.dirname, '../../shared/data'),
  'bodies',
)
export const hasSurvey = Object.values(FILES).every((file) => existsSync(resolve(surveyFolder, file)))

/** The people of the survey, each with the measures that the planner knows of, mm. */
export function surveyed(of: keyof typeof FILES, folder = surveyFolder): Required<Lengths>[] {
  const [head, ...rows] = readFileSync(resolve(folder, FILES[of]), 'utf8').trim().split('\n')
  const columns = head!.split(',')
  const at = SURVEYED.map((id): [MeasureId, number] => [id, columns.indexOf(SURVEY[id]!.column)])
  return rows.map((row) => {
    const cells = row.split(',')
    return Object.fromEntries(at.map(([id, i]) => [id, Number(cells[i])])) as Required<Lengths>
  })
}

/** One dimension of the survey as it stands in it, mm. */
export function surveyColumn(of: keyof typeof FILES, column: string, folder = surveyFolder): number[] {
  const [head, ...rows] = readFileSync(resolve(folder, FILES[of]), 'utf8').trim().split('\n')
  const at = head!.split(',').indexOf(column)
  return rows.map((row) => Number(row.split(',')[at]))
}

/** Parts of the people of whom a measure is smaller. */
const POINTS = [0.01, 0.5, 0.99]

/** How the measures of these people go together, in logarithms: a stout body varies more than a slender one. */
export function proportionsOf(people: readonly Required<Lengths>[]): Proportions {
  const logs = people.map((one) => SURVEYED.map((id) => Math.log(one[id])))
  const n = people.length
  const mean = SURVEYED.map((_, j) => logs.reduce((sum, row) => sum + row[j]!, 0) / n)
  const triangle = SURVEYED.map((_, i) =>
    SURVEYED.slice(0, i + 1).map((_, j) => {
      const products = logs.reduce((sum, row) => sum + (row[i]! - mean[i]!) * (row[j]! - mean[j]!), 0)
      return rounded(products / (n - 1))
    }),
  )
  const points = SURVEYED.map((id) => {
    const sorted = people.map((one) => one[id]).sort((a, b) => a - b)
    return POINTS.map((part) => sorted[Math.round(part * (n - 1))]!)
  })
  return { people: n, mean: mean.map(rounded), triangle, points }
}

/** Eight digits: far finer than any tape. */
const rounded = (value: number): number => Number(value.toPrecision(8))
