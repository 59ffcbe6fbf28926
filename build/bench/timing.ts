/** With `--brief`, to see that all of it still runs: everything a fifth as often, so that its figures say little. */
const BRIEF = process.argv.includes('--brief')

/** How often something is done: so often, or as much as a brief bench needs. */
export const runsOf = (often: number): number => (BRIEF ? Math.max(1, Math.ceil(often / 5)) : often)

/** Timings of one piece of work, ms. */
export type Timing = {
  name: string
  runs: number
  p50: number
  p95: number
  worst: number
  inKernels: number
}

/**
 * A fixed amount of arithmetic, ms: what a timing is divided by, so that figures of two machines can be
 * held against each other.
 */
export function kernel(): number {
  const started = performance.now()
  let sum = 0
  for (let i = 1; i < 3_000_000; i++) sum += Math.sqrt(i) / (1 + (i % 7))
  const took = performance.now() - started
  return sum > 0 ? took : 0
}

/** Times `work` once for every input, after as many runs to warm up as `warm` says. */
export function timed<T>(name: string, inputs: readonly T[], work: (input: T) => unknown, warm = 20): Timing {
  for (const input of inputs.slice(0, runsOf(warm))) work(input)
  const times = inputs.slice(0, runsOf(inputs.length)).map((input) => {
    const started = performance.now()
    work(input)
    return performance.now() - started
  })
  return summedUp(name, times)
}

/** Median, 95 % point and worst of some times, ms. */
export function summedUp(name: string, times: readonly number[]): Timing {
  const sorted = [...times].sort((a, b) => a - b)
  const at = (part: number) => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))]!
  const kernels = Array.from({ length: 5 }, kernel).sort((a, b) => a - b)
  return {
    name,
    runs: times.length,
    p50: at(0.5),
    p95: at(0.95),
    worst: sorted.at(-1)!,
    inKernels: at(0.95) / kernels[2]!,
  }
}
