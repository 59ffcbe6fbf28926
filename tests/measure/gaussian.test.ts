import fc from 'fast-check'
import { CholeskyDecomposition, inverse, Matrix } from 'ml-matrix'
import { describe, expect, test } from 'vitest'
import {
  agreementOf,
  expectedOf,
  fartherBy,
  type Gaussian,
  triangleOf,
  upperTail,
} from '../../core/measure/gaussian.ts'

const normal = fc.double({ min: -3, max: 3, noNaN: true })
/** A covariance of `size` measures: a random matrix times its own transpose, and something on the diagonal. */
const covariances = fc
  .integer({ min: 2, max: 8 })
  .chain((size) =>
    fc.array(fc.array(normal, { minLength: size, maxLength: size }), { minLength: size, maxLength: size }),
  )
  .map((rows) => {
    const root = new Matrix(rows)
    return root.mmul(root.transpose()).add(Matrix.eye(rows.length).mul(0.5))
  })

describe('what measures say of each other', () => {
  test('rests on the same triangle and inverse as a general matrix library finds (ml-matrix)', () => {
    fc.assert(
      fc.property(covariances, (covariance) => {
        const rows = covariance.to2DArray()
        const library = new CholeskyDecomposition(covariance).lowerTriangularMatrix.to2DArray()
        triangleOf(rows).forEach((row, i) => {
          for (const [j, value] of row.entries()) expect(value).toBeCloseTo(library[i]![j]!, 8)
        })
        const values = rows.map((_, i) => i - 1.5)
        const { precision } = agreementOf({ mean: rows.map(() => 0), covariance: rows }, values)
        const inverted = inverse(covariance).to2DArray()
        precision.forEach((row, i) => {
          for (const [j, value] of row.entries()) expect(value).toBeCloseTo(inverted[i]![j]!, 6)
        })
      }),
    )
  })

  test('is the same asked of one measure or of all', () => {
    fc.assert(
      fc.property(covariances, fc.array(normal, { minLength: 8, maxLength: 8 }), (covariance, drawn) => {
        const cloud: Gaussian = { mean: drawn.slice(0, covariance.rows), covariance: covariance.to2DArray() }
        const values = cloud.mean.map((mean, i) => mean + drawn[7 - i]!)
        const { expected } = agreementOf(cloud, values)
        values.forEach((_, i) => {
          const others = values.flatMap((_, k) => (k === i ? [] : [k]))
          const [alone] = expectedOf(
            cloud,
            others,
            others.map((k) => values[k]!),
            [i],
          )
          expect(alone!.mean).toBeCloseTo(expected[i]!.mean, 6)
          expect(alone!.sd).toBeCloseTo(expected[i]!.sd, 6)
        })
      }),
    )
  })

  test('grows worse by as much as two values that change take it away from the middle', () => {
    fc.assert(
      fc.property(covariances, normal, normal, (covariance, byI, byJ) => {
        const cloud = { mean: covariance.getColumn(0).map(() => 1), covariance: covariance.to2DArray() }
        const values = cloud.mean.map((_, i) => i / 2)
        const changed = values.map((value, i) => value + (i === 0 ? byI : i === 1 ? byJ : 0))
        const distance = (at: number[]) => {
          const off = Matrix.columnVector(at.map((value, i) => value - cloud.mean[i]!))
          return off.transpose().mmul(inverse(covariance)).mmul(off).get(0, 0)
        }
        const by = fartherBy(agreementOf(cloud, values), 0, byI, 1, byJ)
        expect(by).toBeCloseTo(distance(changed) - distance(values), 5)
      }),
    )
  })

  // NIST StRD, linear regression, "Norris" (36 observations, lower difficulty): x, y and the certified values, from
  // memory; that data and values agree to ten digits bears them out.
  test('gives the certified line through the points of Norris (NIST StRD)', () => {
    const x = [
      0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0,
      447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1,
      118.3, 229.2, 669.1, 448.9, 0.5,
    ]
    const y = [
      0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3,
      448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2,
      117.6, 228.9, 668.4, 449.2, 0.2,
    ]
    const cloud = cloudOfColumns([x, y])
    const at = (value: number) => expectedOf(cloud, [0], [value], [1])[0]!
    const slope = at(1).mean - at(0).mean
    expect(at(0).mean).toBeCloseTo(-0.262323073774029, 10)
    expect(slope).toBeCloseTo(1.00211681802045, 12)
    // The residual standard deviation there has n − 2 degrees of freedom, a covariance n − 1.
    expect(at(0).sd * Math.sqrt(35 / 34)).toBeCloseTo(0.884796396144373, 8)
  })

  // NIST StRD, linear regression, "Longley" (16 observations, higher difficulty), from memory as above.
  test('gives the certified plane through the points of Longley (NIST StRD)', () => {
    const rows = [
      [60323, 83.0, 234289, 2356, 1590, 107608, 1947],
      [61122, 88.5, 259426, 2325, 1456, 108632, 1948],
      [60171, 88.2, 258054, 3682, 1616, 109773, 1949],
      [61187, 89.5, 284599, 3351, 1650, 110929, 1950],
      [63221, 96.2, 328975, 2099, 3099, 112075, 1951],
      [63639, 98.1, 346999, 1932, 3594, 113270, 1952],
      [64989, 99.0, 365385, 1870, 3547, 115094, 1953],
      [63761, 100.0, 363112, 3578, 3350, 116219, 1954],
      [66019, 101.2, 397469, 2904, 3048, 117388, 1955],
      [67857, 104.6, 419180, 2822, 2857, 118734, 1956],
      [68169, 108.4, 442769, 2936, 2798, 120445, 1957],
      [66513, 110.8, 444546, 4681, 2637, 121950, 1958],
      [68655, 112.6, 482704, 3813, 2552, 123366, 1959],
      [69564, 114.2, 502601, 3931, 2514, 125368, 1960],
      [69331, 115.7, 518173, 4806, 2572, 127852, 1961],
      [70551, 116.9, 554894, 4007, 2827, 130081, 1962],
    ]
    const certified = [
      15.0618722713733, -0.035819179292591, -2.02022980381683, -1.03322686717359, -0.0511041056535807,
      1829.15146461355,
    ]
    const cloud = cloudOfColumns(rows[0]!.map((_, j) => rows.map((row) => row[j]!)))
    const known = [1, 2, 3, 4, 5, 6]
    const middle = known.map((k) => cloud.mean[k]!)
    const at = (values: number[]) => expectedOf(cloud, known, values, [0])[0]!.mean
    certified.forEach((coefficient, k) => {
      // A step as large as the column varies, so that no digits are lost in the difference.
      const step = Math.sqrt(cloud.covariance[k + 1]![k + 1]!)
      const moved = middle.map((value, i) => (i === k ? value + step : value))
      expect((at(moved) - at(middle)) / step / coefficient).toBeCloseTo(1, 7)
    })
  })

  test('knows how much of a normal distribution lies beyond (published tables)', () => {
    // Standard normal tail areas, NIST/SEMATECH e-Handbook, 1.3.6.7.1.
    expect(upperTail(0)).toBeCloseTo(0.5, 6)
    expect(upperTail(1)).toBeCloseTo(0.15866, 5)
    expect(upperTail(1.96)).toBeCloseTo(0.025, 5)
    expect(upperTail(3)).toBeCloseTo(0.00135, 5)
  })

  test('refuses a covariance that none can be', () => {
    expect(() =>
      triangleOf([
        [1, 2],
        [2, 1],
      ]),
    ).toThrow('not positive definite')
  })
})

function cloudOfColumns(columns: readonly (readonly number[])[]): Gaussian {
  const n = columns[0]!.length
  const mean = columns.map((column) => column.reduce((sum, value) => sum + value, 0) / n)
  const covariance = columns.map((a, i) =>
    columns.map(
      (b, j) => a.reduce((sum, _, k) => sum + (a[k]! - mean[i]!) * (b[k]! - mean[j]!), 0) / (n - 1),
    ),
  )
  return { mean, covariance }
}
