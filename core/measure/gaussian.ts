/**
 * Several measures that vary together: their means, and the covariance of each with each, row by row. With
 * more of them known, less is left to chance in the others.
 */
export type Gaussian = { mean: readonly number[]; covariance: readonly (readonly number[])[] }

/** A value that is expected, and its standard deviation. */
export type Expected = { mean: number; sd: number }

/** What the known values say of each other and of themselves. */
export type Agreement = {
  /** How hard each value pulls away from the middle of all, and the inverse of the covariance. */
  pull: number[]
  precision: number[][]
  /** For each known value what the other known ones would have it be. */
  expected: Expected[]
}

/**
 * The lower triangle whose product with its own transpose is the matrix (Cholesky).
 * @throws Error when the matrix is not positive definite: a fault of the statistics, never of the maker
 */
export function triangleOf(matrix: readonly (readonly number[])[]): number[][] {
  const lower: number[][] = []
  matrix.forEach((row, i) => {
    lower.push([])
    for (let j = 0; j <= i; j++) {
      let sum = row[j]!
      for (let k = 0; k < j; k++) sum -= lower[i]![k]! * lower[j]![k]!
      if (i === j && !(sum > 0)) throw new Error('the covariance is not positive definite')
      lower[i]!.push(i === j ? Math.sqrt(sum) : sum / lower[j]![j]!)
    }
  })
  return lower
}

/** Solves lower · x = right. */
function forward(lower: readonly (readonly number[])[], right: readonly number[]): number[] {
  const x: number[] = []
  right.forEach((value, i) => {
    let sum = value
    for (let k = 0; k < i; k++) sum -= lower[i]![k]! * x[k]!
    x.push(sum / lower[i]![i]!)
  })
  return x
}

/** Solves transpose(lower) · x = right. */
function backward(lower: readonly (readonly number[])[], right: readonly number[]): number[] {
  const x = [...right]
  for (let i = right.length - 1; i >= 0; i--) {
    for (let k = i + 1; k < right.length; k++) x[i] = x[i]! - lower[k]![i]! * x[k]!
    x[i] = x[i]! / lower[i]![i]!
  }
  return x
}

/** The inverse of a covariance. */
export function inverseOf(covariance: readonly (readonly number[])[]): number[][] {
  const lower = triangleOf(covariance)
  const unit = (i: number) => covariance.map((_, k) => (k === i ? 1 : 0))
  return covariance.map((_, i) => backward(lower, forward(lower, unit(i))))
}

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * b[i]!, 0)

/** The part of a cloud that has to do with the values of these numbers. */
export const partOf = ({ mean, covariance }: Gaussian, at: readonly number[]): Gaussian => ({
  mean: at.map((i) => mean[i]!),
  covariance: at.map((i) => at.map((j) => covariance[i]![j]!)),
})

/**
 * What is expected of the values not known: the mean and spread that are left once some are known.
 *
 * @param at numbers of the known values, and `values` themselves in the same order
 * @param wanted numbers of those asked for
 */
export function expectedOf(
  cloud: Gaussian,
  at: readonly number[],
  values: readonly number[],
  wanted: readonly number[],
): Expected[] {
  const { mean, covariance } = partOf(cloud, at)
  const lower = triangleOf(covariance)
  const off = forward(
    lower,
    values.map((value, i) => value - mean[i]!),
  )
  return wanted.map((one) => {
    const along = forward(
      lower,
      at.map((i) => cloud.covariance[one]![i]!),
    )
    const left = cloud.covariance[one]![one]! - dot(along, along)
    return { mean: cloud.mean[one]! + dot(along, off), sd: Math.sqrt(Math.max(0, left)) }
  })
}

/** How well values of all of the cloud's measures agree with each other. */
export function agreementOf(cloud: Gaussian, values: readonly number[]): Agreement {
  const precision = inverseOf(cloud.covariance)
  const deviation = values.map((value, i) => value - cloud.mean[i]!)
  const pull = precision.map((row) => dot(row, deviation))
  return {
    pull,
    precision,
    expected: values.map((value, i) => ({
      mean: value - pull[i]! / precision[i]![i]!,
      sd: 1 / Math.sqrt(precision[i]![i]!),
    })),
  }
}

/** By how much the squared distance from the middle of all grows when two values change by `byI` and `byJ`. */
export function fartherBy(
  { pull, precision }: Agreement,
  i: number,
  byI: number,
  j: number,
  byJ: number,
): number {
  return (
    2 * (byI * pull[i]! + byJ * pull[j]!) +
    byI * byI * precision[i]![i]! +
    byJ * byJ * precision[j]![j]! +
    2 * byI * byJ * precision[i]![j]!
  )
}

/**
 * The part of a normal distribution that lies more than so many standard deviations above its mean, for 0 and
 * more of them: Abramowitz & Stegun (1964), 26.2.17, to 7.5e-8.
 */
export function upperTail(deviations: number): number {
  const t = 1 / (1 + 0.2316419 * deviations)
  const series =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))))
  return (series * Math.exp((-deviations * deviations) / 2)) / Math.sqrt(2 * Math.PI)
}
