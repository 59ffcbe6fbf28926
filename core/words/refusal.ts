import type { Phrase } from './phrase.ts'

/**
 * Something the maker asked for that cannot be done, with the sentence that says what is wrong and what to
 * do. Thrown anywhere in the core, turned into a typed error at the request boundary. Nothing is stored
 * once a refusal is thrown: every use case is one transaction.
 */
export class Refusal extends Error {
  override readonly name = 'Refusal'
  readonly phrase: Phrase
  /** The input the sentence speaks of, as a dotted path from the request's payload, when there is one. */
  readonly field: string | undefined

  constructor(phrase: Phrase, field?: string) {
    super(phrase.code)
    this.phrase = phrase
    this.field = field
  }

  /** The same refusal, said of a field further out: `measures` + `bustGirth` → `measures.bustGirth`. */
  within(outer: string): Refusal {
    return new Refusal(this.phrase, this.field === undefined ? outer : `${outer}.${this.field}`)
  }
}

/** Runs `work` and, if it refuses, names `field` as the place the refusal speaks of. */
export function refusingAt<T>(field: string, work: () => T): T {
  try {
    return work()
  } catch (error) {
    throw error instanceof Refusal ? error.within(field) : error
  }
}
