import type { Answer } from '../../core/workroom.ts'
import type { Bridge, JobNews } from './bridge.ts'

/** Nobody answers any more: the planner was closed, or runs anew and does not know this page. */
export class Unreached extends Error {
  readonly how: 'away' | 'other'

  constructor(how: 'away' | 'other') {
    super(how)
    this.how = how
  }
}

/** Whether the planner answers: `here`, `away` once it was closed, `other` once another runs in its place. */
export type Reached = 'here' | Unreached['how']

/** A bridge whose far end may go away: what is asked then is refused in a sentence, and it is known that nobody answers. */
export class Reach {
  readonly bridge: Bridge
  readonly #far: Bridge
  readonly #hear: (news: JobNews) => void
  readonly #refusal: (how: Unreached['how']) => Error
  #reached: Reached = 'here'
  #listening = false
  readonly #hearers = new Set<() => void>()

  /** @param refusal what is thrown at whoever asks while nobody answers */
  constructor(far: Bridge, hear: (news: JobNews) => void, refusal: (how: Unreached['how']) => Error) {
    this.#far = far
    this.#hear = hear
    this.#refusal = refusal
    this.bridge = {
      ask: (name, payload) => this.#heeded(far.ask(name, payload)),
      cancel: (job) => this.#heeded(far.cancel(job)),
      enter: (which) => this.#heeded(far.enter(which)),
      paper: (document) => this.#heeded(far.paper(document)),
      listen: (news) => far.listen(news),
    }
    this.#listen()
  }

  /** Whether the planner answered last time. */
  readonly reached = (): Reached => this.#reached

  /** Hears of changes in that until the returned function is called. */
  readonly hearReached = (hear: () => void): (() => void) => {
    this.#hearers.add(hear)
    return () => this.#hearers.delete(hear)
  }

  /** Looks whether it answers again. @returns whether it does */
  readonly tryAgain = async (): Promise<boolean> => {
    try {
      await this.#far.ask('workroom.describe', {})
    } catch (error) {
      if (error instanceof Unreached) this.#now(error.how)
      return false
    }
    if (!this.#listening) this.#listen()
    this.#now('here')
    return true
  }

  /** The stream of news ends with the planner, before anything is asked. */
  #listen(): void {
    this.#listening = true
    this.#far.listen(this.#hear, () => {
      this.#listening = false
      void this.tryAgain()
    })
  }

  async #heeded(asked: Promise<Answer>): Promise<Answer> {
    try {
      return await asked
    } catch (error) {
      if (!(error instanceof Unreached)) throw error
      this.#now(error.how)
      throw this.#refusal(error.how)
    }
  }

  #now(reached: Reached): void {
    if (reached === this.#reached) return
    this.#reached = reached
    for (const hear of this.#hearers) hear()
  }
}
