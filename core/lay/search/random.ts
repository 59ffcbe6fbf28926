/** A seeded source of chance: the same seed gives the same numbers. */
export type Random = {
  /** At least 0, less than 1. */
  part(): number
  /** A whole number at least 0, less than `below`. */
  below(below: number): number
  /** About 0 with a spread of 1. */
  normal(): number
  shuffle(values: Int32Array, count: number): void
}

/** Small fast counter generator (Chris Doty-Humphrey's sfc32, public domain), its state spread from the seed. */
export function randomFrom(seed: number): Random {
  let [a, b, c, counter] = [seed | 0, 0x9e3779b9 | 0, 0x243f6a88, 1]
  const part = (): number => {
    const t = (((a + b) | 0) + counter) | 0
    counter = (counter + 1) | 0
    a = b ^ (b >>> 9)
    b = (c + (c << 3)) | 0
    c = (c << 21) | (c >>> 11)
    c = (c + t) | 0
    return (t >>> 0) / 4294967296
  }
  for (let i = 0; i < 15; i++) part()
  const below = (limit: number): number => Math.floor(part() * limit)
  return {
    part,
    below,
    normal: () => Math.sqrt(-2 * Math.log(1 - part())) * Math.cos(2 * Math.PI * part()),
    shuffle: (values, count) => {
      for (let i = count - 1; i > 0; i--) {
        const j = below(i + 1)
        const held = values[i]!
        values[i] = values[j]!
        values[j] = held
      }
    },
  }
}
