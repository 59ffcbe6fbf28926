import { Matrix, solve } from 'ml-matrix'
import { type Doubt, doubtsOf } from '../../core/measure/doubts.ts'
import { estimateMissing } from '../../core/measure/missing.ts'
import type { Lengths } from '../../core/measure/proportions.ts'
import { SURVEYED } from '../../core/measure/survey.ts'
import { SURVEYED_PROPORTIONS } from '../../core/measure/survey-proportions.ts'
import { isGirth, type MeasureId } from '../../core/measure/vocabulary.ts'
import { hasSurvey, proportionsOf, surveyed } from '../survey.ts'

/**
 * `npm run bench:bodies`: how many slips planted in real sets of measures are found, how many real sets are
 * doubted, and how near estimates come; on people whose measures had no part in the proportions they are held
 * against. The survey's people are dealt out in ten heaps; each heap is tried with proportions of the others.
 */
if (!hasSurvey) {
  console.error('The survey is not here: set ELLWAND_DATA to the folder in which its folder bodies is.')
  process.exit(1)
}
const HEAPS = 10
/** Measures that few makers take; the checks are tried without them. */
const SELDOM: MeasureId[] = [
  'backWidth',
  'trunkGirth',
  'totalCrotchLength',
  'handLength',
  'heelGirth',
  'footLength',
]
const TAKEN = SURVEYED.filter((id) => !SELDOM.includes(id))
const TORSO = [
  ['bustGirth', 'waistGirth'],
  ['bustGirth', 'hipGirth'],
  ['waistGirth', 'hipGirth'],
] as const
const GIVEN: MeasureId[] = ['stature', 'bustGirth', 'waistGirth', 'hipGirth']
/** Half a normal distribution's middle 80 %, in standard deviations. */
const EIGHTY = 1.2815516

class Tally {
  readonly #counts = new Map<string, [hits: number, all: number]>()

  add(name: string, hit: boolean): void {
    const count = this.#counts.get(name) ?? [0, 0]
    this.#counts.set(name, [count[0] + (hit ? 1 : 0), count[1] + 1])
  }

  of(name: string): number {
    const [hits, all] = this.#counts.get(name) ?? [0, 0]
    return hits / all
  }

  /** Mean of the parts of all whose name begins so. */
  mean(beginning: string): number {
    const names = [...this.#counts.keys()].filter((name) => name.startsWith(beginning))
    return names.reduce((sum, name) => sum + this.of(name), 0) / names.length
  }
}

for (const group of ['women', 'men'] as const) {
  const people = surveyed(group)
  const tally = new Tally()
  const squares = new Map<MeasureId, { ours: number; plain: number }>()
  for (let heap = 0; heap < HEAPS; heap++) {
    const others = people.filter((_, i) => i % HEAPS !== heap)
    Object.assign(SURVEYED_PROPORTIONS[group], proportionsOf(others))
    const plain = leastSquares(others)
    people
      .filter((_, i) => i % HEAPS === heap)
      .forEach((person, i) => {
        tryOn(person, group, (i + heap) % 2 === 0 ? 100 : -100, tally)
        const given = Object.fromEntries(GIVEN.map((id) => [id, person[id]])) as Lengths
        for (const { measure, mm, sd } of estimateMissing(given, group)) {
          const sums = squares.get(measure) ?? { ours: 0, plain: 0 }
          sums.ours += (mm - person[measure]) ** 2
          sums.plain += (plain(measure, person) - person[measure]) ** 2
          squares.set(measure, sums)
          tally.add(`within ${measure}`, Math.abs(mm - person[measure]) <= EIGHTY * sd)
        }
      })
  }
  const percent = (part: number) => Number((100 * part).toFixed(2))
  const worse = [...squares].map(
    ([measure, { ours, plain }]) => [measure, Math.sqrt(ours / plain) - 1] as const,
  )
  console.log(
    JSON.stringify({
      ...{ group, people: people.length, measures: TAKEN.length },
      clean: { doubted: percent(tally.of('clean')), surely: percent(tally.of('sure')) },
      found: {
        unit: percent(tally.of('unit')),
        swapped: percent(tally.of('swapped')),
        decimetre: percent(tally.mean('decimetre ')),
        digitsTurned: percent(tally.mean('turned ')),
      },
      named: percent(tally.of('named')),
      decimetre: Object.fromEntries(
        TAKEN.filter(isGirth).map((id) => [id, percent(tally.of(`decimetre ${id}`))]),
      ),
      estimates: {
        within80: percent(tally.mean('within ')),
        worseThanLeastSquares: Object.fromEntries(worse.map(([id, part]) => [id, percent(part)])),
        rmse: Object.fromEntries(
          [...squares].map(([id, { ours }]) => [id, Number(Math.sqrt(ours / people.length).toFixed(1))]),
        ),
      },
    }),
  )
}

function tryOn(person: Required<Lengths>, of: 'women' | 'men', slip: number, tally: Tally): void {
  const set = Object.fromEntries(TAKEN.map((id) => [id, person[id]])) as Required<Lengths>
  const clean = doubtsOf(set, of)
  tally.add('clean', clean.length > 0)
  tally.add(
    'sure',
    clean.some(({ sure }) => sure),
  )
  const plant = (name: string, changed: Lengths, kind: Doubt['kind'], at: readonly MeasureId[]) => {
    const doubts = doubtsOf({ ...set, ...changed }, of)
    tally.add(name, doubts.length > 0)
    const right = (doubt: Doubt) =>
      doubt.kind === kind &&
      at.includes(doubt.measure) &&
      (doubt.other === undefined || at.includes(doubt.other))
    if (doubts.length > 0) tally.add('named', doubts.some(right))
  }
  for (const id of TAKEN.filter(isGirth)) {
    plant('unit', { [id]: person[id] / 2.54 }, 'unit', [id])
    plant(`decimetre ${id}`, { [id]: person[id] + slip }, 'digit', [id])
    for (const turned of digitsTurned(person[id])) plant(`turned ${id}`, { [id]: turned }, 'digit', [id])
  }
  for (const [a, b] of TORSO) {
    const [small, large] = [Math.min(person[a], person[b]), Math.max(person[a], person[b])]
    if (large >= 1.15 * small) plant('swapped', { [a]: person[b], [b]: person[a] }, 'swapped', [a, b])
  }
}

/** A length in which two digits side by side have changed places, where that makes 90 mm or more. */
function digitsTurned(mm: number): number[] {
  const written = String(mm)
  return Array.from({ length: written.length - 1 }, (_, i) =>
    Number(written.slice(0, i) + written[i + 1] + written[i] + written.slice(i + 2)),
  ).filter((turned) => Math.abs(turned - mm) >= 90 && String(turned).length === written.length)
}

/** Ordinary least squares on the four measures given, in mm, by the normal equations. */
function leastSquares(people: readonly Required<Lengths>[]) {
  const mean = (id: MeasureId) => people.reduce((sum, one) => sum + one[id], 0) / people.length
  const middle = new Map(SURVEYED.map((id) => [id, mean(id)]))
  const product = (a: MeasureId, b: MeasureId) =>
    people.reduce((sum, one) => sum + (one[a] - middle.get(a)!) * (one[b] - middle.get(b)!), 0)
  const left = new Matrix(GIVEN.map((a) => GIVEN.map((b) => product(a, b))))
  const weights = new Map(
    SURVEYED.map((id) => [
      id,
      solve(left, Matrix.columnVector(GIVEN.map((a) => product(a, id)))).to1DArray(),
    ]),
  )
  return (id: MeasureId, one: Required<Lengths>): number =>
    middle.get(id)! +
    GIVEN.reduce((sum, given, k) => sum + weights.get(id)![k]! * (one[given] - middle.get(given)!), 0)
}
