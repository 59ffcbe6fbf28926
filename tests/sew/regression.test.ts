import fc from 'fast-check'
import { Matrix, QrDecomposition } from 'ml-matrix'
import { describe, expect, test } from 'vitest'
import { regress } from '../../core/sew/pace/regression.ts'

/** Least squares of y on x, with the standard deviations of the coefficients from the residuals. */
function fitted(data: readonly (readonly number[])[]) {
  const measured = data.map(([y, ...x]) => ({ x: [1, ...x], y: y!, variance: 1 }))
  const { mean, covariance } = regress(measured)
  const left = measured.map(({ x, y }) => y - x.reduce((sum, value, i) => sum + value * mean[i]!, 0))
  const variance = left.reduce((sum, one) => sum + one * one, 0) / (data.length - mean.length)
  return {
    mean,
    sd: covariance.map((row, i) => Math.sqrt(row[i]! * variance)),
    residual: Math.sqrt(variance),
  }
}

/** Digits in which a value agrees with the certified one. */
const digits = (value: number, certified: number): number =>
  -Math.log10(Math.abs(value - certified) / Math.abs(certified) || 1e-16)

// NIST Statistical Reference Datasets, linear regression: Norris (lower difficulty) and Longley (higher). US
// government work, public domain. Data and certified values typed from memory; that they agree to every digit
// shown is the check of both.
const NORRIS = `0.1 0.2 338.8 337.4 118.1 118.2 888 884.6 9.2 10.1 228.1 226.5 668.5 666.3 998.5 996.3 449.1 448.6
  778.9 777 559.2 558.2 0.3 0.4 0.1 0.6 778.1 775.5 668.8 666.9 339.3 338 448.9 447.5 10.8 11.6 557.7 556 228.3 228.1
  998 995.8 888.8 887.6 119.6 120.2 0.3 0.3 0.6 0.3 557.6 556.8 339.3 339.1 888 887.2 998.5 999 778.9 779 10.2 11.1
  117.6 118.3 228.9 229.2 668.4 669.1 449.2 448.9 0.2 0.5`
const LONGLEY = `60323 83 234289 2356 1590 107608 1947 61122 88.5 259426 2325 1456 108632 1948
  60171 88.2 258054 3682 1616 109773 1949 61187 89.5 284599 3351 1650 110929 1950
  63221 96.2 328975 2099 3099 112075 1951 63639 98.1 346999 1932 3594 113270 1952
  64989 99 365385 1870 3547 115094 1953 63761 100 363112 3578 3350 116219 1954
  66019 101.2 397469 2904 3048 117388 1955 67857 104.6 419180 2822 2857 118734 1956
  68169 108.4 442769 2936 2798 120445 1957 66513 110.8 444546 4681 2637 121950 1958
  68655 112.6 482704 3813 2552 123366 1959 69564 114.2 502601 3931 2514 125368 1960
  69331 115.7 518173 4806 2572 127852 1961 70551 116.9 554894 4007 2827 130081 1962`
/** Rows of so many numbers, the measured one first. */
function rowsOf(text: string, width: number): number[][] {
  const numbers = text.trim().split(/\s+/).map(Number)
  return Array.from({ length: numbers.length / width }, (_, i) => numbers.slice(width * i, width * (i + 1)))
}

describe('with no prior, regression is least squares to more than six digits of the certified values', () => {
  test('NIST Norris', () => {
    // In the data set the measured y stands before x.
    const { mean, sd, residual } = fitted(rowsOf(NORRIS, 2))
    expect(rowsOf(NORRIS, 2)).toHaveLength(36)
    expect(digits(mean[0]!, -0.262323073774029)).toBeGreaterThan(9)
    expect(digits(mean[1]!, 1.00211681802045)).toBeGreaterThan(11)
    expect(digits(sd[0]!, 0.232818234301152)).toBeGreaterThan(9)
    expect(digits(sd[1]!, 0.000429796848199937)).toBeGreaterThan(9)
    expect(digits(residual, 0.884796396144373)).toBeGreaterThan(9)
  })

  test('NIST Longley', () => {
    const { mean, sd, residual } = fitted(rowsOf(LONGLEY, 7))
    const certified = [
      [-3482258.63459582, 890420.383607373],
      [15.0618722713733, 84.9149257747669],
      [-0.035819179292591, 0.0334910077722432],
      [-2.02022980381683, 0.488399681651699],
      [-1.03322686717359, 0.214274163161675],
      [-0.0511041056535807, 0.22607320006937],
      [1829.15146461355, 455.478499142212],
    ]
    certified.forEach(([coefficient, deviation], i) => {
      expect(digits(mean[i]!, coefficient!)).toBeGreaterThan(6)
      expect(digits(sd[i]!, deviation!)).toBeGreaterThan(6)
    })
    expect(digits(residual, 304.854073561965)).toBeGreaterThan(6)
  })

  // ml-matrix, a general linear algebra library.
  test('any system is solved as a general library solves it', () => {
    const number = fc.double({ min: -10, max: 10, noNaN: true })
    fc.assert(
      fc.property(fc.array(fc.tuple(number, number, number), { minLength: 6, maxLength: 20 }), (rows) => {
        // A column that the others make up settles nothing: a little of the square of each keeps them apart.
        const x = rows.map(([a, b], i) => [1, a + Math.sin(7 * i), b + Math.cos(5 * i * i)])
        const y = rows.map((row) => row[2])
        const { mean } = regress(x.map((row, i) => ({ x: row, y: y[i]!, variance: 1 })))
        const solved = new QrDecomposition(new Matrix(x)).solve(Matrix.columnVector(y)).to1DArray()
        for (const [i, value] of mean.entries()) expect(value).toBeCloseTo(solved[i]!, 6)
      }),
    )
  })
})

describe('with a prior', () => {
  // The textbook update of a normal mean with known variance (any text on Bayesian statistics):
  // precision = 1/τ² + n/σ², mean = (m/τ² + Σy/σ²) ÷ precision.
  test('one coefficient is the textbook posterior', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        fc.array(fc.double({ min: -20, max: 20, noNaN: true }), { maxLength: 12 }),
        (mean, tau, sigma, ys) => {
          const posterior = regress(
            ys.map((y) => ({ x: [1], y, variance: sigma ** 2 })),
            { mean: [mean], covariance: [[tau ** 2]] },
          )
          const precision = 1 / tau ** 2 + ys.length / sigma ** 2
          const sum = ys.reduce((all, y) => all + y, 0)
          expect(posterior.mean[0]).toBeCloseTo((mean / tau ** 2 + sum / sigma ** 2) / precision, 8)
          expect(posterior.covariance[0]![0]).toBeCloseTo(1 / precision, 8)
        },
      ),
    )
  })

  // The multivariate form: Λ = Λ₀ + XᵀV⁻¹X, μ = Λ⁻¹(Λ₀μ₀ + XᵀV⁻¹y); the matrices by ml-matrix.
  test('several coefficients are the conjugate normal posterior', () => {
    const prior = {
      mean: [0.3, -0.2, 1],
      covariance: [
        [1, 0.4, 0.1],
        [0.4, 0.8, 0.2],
        [0.1, 0.2, 0.5],
      ],
    }
    const measured = [
      { x: [1, 0.5, 0], y: 0.7, variance: 0.2 },
      { x: [0, 1, 1], y: 1.4, variance: 0.5 },
      { x: [0.2, 0, 0.8], y: 1.1, variance: 0.1 },
      { x: [1, 1, 1], y: 0.9, variance: 0.3 },
    ]
    const x = new Matrix(measured.map((one) => one.x))
    const weight = Matrix.diag(measured.map((one) => 1 / one.variance))
    const y = Matrix.columnVector(measured.map((one) => one.y))
    const inverse = (m: Matrix) => new QrDecomposition(m).solve(Matrix.eye(m.rows))
    const precision0 = inverse(new Matrix(prior.covariance))
    const precision = Matrix.add(precision0, x.transpose().mmul(weight).mmul(x))
    const covariance = inverse(precision)
    const mean = covariance.mmul(
      Matrix.add(precision0.mmul(Matrix.columnVector(prior.mean)), x.transpose().mmul(weight).mmul(y)),
    )
    const found = regress(measured, prior)
    for (const [i, value] of found.mean.entries()) expect(value).toBeCloseTo(mean.get(i, 0), 10)
    for (const [i, row] of found.covariance.entries())
      for (const [j, value] of row.entries()) expect(value).toBeCloseTo(covariance.get(i, j), 10)
  })

  test('what is not settled without one is a fault', () => {
    expect(() =>
      regress([
        { x: [1, 1], y: 1, variance: 1 },
        { x: [2, 2], y: 2, variance: 1 },
      ]),
    ).toThrow('settle')
  })
})
