import { type Gaussian, triangleOf } from '../../measure/gaussian.ts'

/** One thing measured: y = x · β, give or take its variance. */
export type Measured = { x: readonly number[]; y: number; variance: number }

/**
 * Linear regression with known variances: the coefficients' normal distribution after the measurements, given the
 * one before. With no prior it is weighted least squares and (XᵀV⁻¹X)⁻¹; with one, the conjugate normal
 * update. The prior stands in the equations as measurements of its own, and all are solved by an orthogonal
 * triangulation (Householder) of scaled columns, which keeps its digits where normal equations lose them.
 *
 * @throws Error when the measurements without a prior do not settle every coefficient
 */
export function regress(measured: readonly Measured[], prior?: Gaussian): Gaussian {
  const size = prior?.mean.length ?? measured[0]!.x.length
  const rows = [
    ...(prior === undefined ? [] : whitened(prior)),
    ...measured.map(({ x, y, variance }) => {
      const weight = 1 / Math.sqrt(variance)
      return Float64Array.from([...x, y], (value) => value * weight)
    }),
  ]
  const scale = Array.from({ length: size }, (_, k) => Math.hypot(...rows.map((row) => row[k]!)) || 1)
  for (const row of rows) for (let k = 0; k < size; k++) row[k] = row[k]! / scale[k]!
  triangulate(rows, size)
  const inverse = inverseOfUpper(rows, size)
  return {
    mean: inverse.map(
      (row, i) => row.reduce((sum, value, k) => sum + value * rows[k]![size]!, 0) / scale[i]!,
    ),
    covariance: inverse.map((a, i) =>
      inverse.map((b, j) => a.reduce((sum, value, k) => sum + value * b[k]!, 0) / (scale[i]! * scale[j]!)),
    ),
  }
}

/** The prior as equations of variance 1: L⁻¹β = L⁻¹m, with LLᵀ its covariance. */
function whitened({ mean, covariance }: Gaussian): Float64Array[] {
  const lower = triangleOf(covariance)
  const rows = mean.map(() => new Float64Array(mean.length + 1))
  for (let i = 0; i < mean.length; i++) {
    for (let column = 0; column <= i; column++) {
      let sum = column === i ? 1 : 0
      for (let k = column; k < i; k++) sum -= lower[i]![k]! * rows[k]![column]!
      rows[i]![column] = sum / lower[i]![i]!
    }
    rows[i]![mean.length] = mean.reduce((sum, value, k) => sum + rows[i]![k]! * value, 0)
  }
  return rows
}

/** Householder reflections that leave the first columns upper triangular, the last one carried along. */
function triangulate(rows: Float64Array[], size: number): void {
  for (let k = 0; k < size; k++) {
    let norm = 0
    for (let i = k; i < rows.length; i++) norm += rows[i]![k]! ** 2
    norm = Math.sqrt(norm)
    if (!(norm > 1e-12)) throw new Error('the measurements do not settle every coefficient')
    const head = rows[k]![k]!
    const pivot = head > 0 ? -norm : norm
    const v = Float64Array.from(rows.slice(k), (row) => row[k]!)
    v[0] = head - pivot
    const length = 2 * norm * (norm + Math.abs(head))
    for (let column = k; column <= size; column++) {
      let dot = 0
      for (let i = 0; i < v.length; i++) dot += v[i]! * rows[k + i]![column]!
      const by = (2 * dot) / length
      for (let i = 0; i < v.length; i++) rows[k + i]![column]! -= by * v[i]!
    }
  }
}

function inverseOfUpper(rows: readonly Float64Array[], size: number): number[][] {
  const inverse = Array.from({ length: size }, () => new Array<number>(size).fill(0))
  for (let column = 0; column < size; column++) {
    for (let i = column; i >= 0; i--) {
      let sum = i === column ? 1 : 0
      for (let k = i + 1; k <= column; k++) sum -= rows[i]![k]! * inverse[k]![column]!
      inverse[i]![column] = sum / rows[i]![i]!
    }
  }
  return inverse
}
