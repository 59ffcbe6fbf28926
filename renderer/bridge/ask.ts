import type { Answer, InputOf, OutputOf, Progress, RequestName } from '../../core/workroom.ts'
import type { Bridge, JobNews } from './bridge.ts'
import { Reach, type Unreached } from './reach.ts'

/** A refusal as the screen shows it: its sentence, and the field it speaks of. */
export class Refused extends Error {
  readonly code: string
  readonly field: string | undefined

  constructor({ code, message, field }: { code: string; message: string; field?: string }) {
    super(message)
    this.code = code
    this.field = field
  }
}

type Watch = (name: RequestName, payload: unknown) => Promise<(answer: unknown) => void>
type Waiting = { done: (answer: Answer) => void; tell: (progress: Progress) => void }

/** A job that is being done. */
export type Running = {
  job: string
  name: RequestName
  /** When it was begun, by the page's clock, ms. */
  since: number
  /** The part that is done, 0 to 1. */
  done: number
  stop: () => void
}

/** The workroom as the screen sees it: typed requests, jobs waited for to their end. */
export class Workroom {
  /** The far end, and whether it answers. */
  readonly reach: Reach
  readonly bridge: Bridge
  /** What is said to whoever asks while nobody answers. */
  sayUnreached: (how: Unreached['how']) => string = (how) => how
  /** Hears of every request before it is asked, and of its answer when it is granted. */
  watch: Watch | undefined
  readonly #jobs = new Map<string, Waiting>()
  /** News that came before its job's own answer. */
  readonly #early = new Map<string, Answer>()

  #running: readonly Running[] = []
  readonly #hearers = new Set<() => void>()

  constructor(bridge: Bridge) {
    this.reach = new Reach(
      bridge,
      (news) => this.#hear(news),
      (how) => this.#unreached(how),
    )
    this.bridge = this.reach.bridge
    this.reach.hearReached(() => this.#dropJobs())
  }

  /**
   * @param tell hears how far a job is
   * @param signal stops a job; it then ends in its own way
   * @throws Refused with the sentence of the refusal
   */
  async ask<N extends RequestName>(
    name: N,
    payload: InputOf<N>,
    tell: (progress: Progress) => void = () => {},
    signal?: AbortSignal,
  ): Promise<OutputOf<N>> {
    const granted = await this.watch?.(name, payload)
    const answer = await this.askUnseen(name, payload, tell, signal)
    granted?.(answer)
    return answer
  }

  /** The same, without anybody being told. */
  async askUnseen<N extends RequestName>(
    name: N,
    payload: InputOf<N>,
    tell: (progress: Progress) => void = () => {},
    signal?: AbortSignal,
  ): Promise<OutputOf<N>> {
    const answer = await this.bridge.ask(name, payload)
    if (!answer.ok) throw new Refused(answer.error)
    const job = jobOf(answer.result)
    if (job === undefined) return answer.result as OutputOf<N>
    signal?.addEventListener('abort', () => void this.bridge.cancel(job), { once: true })
    if (signal?.aborted === true) void this.bridge.cancel(job)
    this.#run([
      ...this.#running,
      { job, name, since: performance.now(), done: 0, stop: () => void this.bridge.cancel(job) },
    ])
    const end = await this.#end(job, (progress) => {
      this.#run(this.#running.map((one) => (one.job === job ? { ...one, done: progress.done } : one)))
      tell(progress)
    }).finally(() => this.#run(this.#running.filter((one) => one.job !== job)))
    if (!end.ok) throw new Refused(end.error)
    return end.result as OutputOf<N>
  }

  /** The jobs that are being done; the same list until something changes. */
  readonly running = (): readonly Running[] => this.#running

  /** Hears of changes in that list until the returned function is called. */
  readonly hearRunning = (hear: () => void): (() => void) => {
    this.#hearers.add(hear)
    return () => this.#hearers.delete(hear)
  }

  #run(running: readonly Running[]): void {
    this.#running = running
    for (const hear of this.#hearers) hear()
  }

  #end(job: string, tell: (progress: Progress) => void): Promise<Answer> {
    const early = this.#early.get(job)
    if (early !== undefined) {
      this.#early.delete(job)
      return Promise.resolve(early)
    }
    return new Promise((done) => this.#jobs.set(job, { done, tell }))
  }

  #unreached = (how: Unreached['how']) =>
    new Refused({ code: `shell.gone.${how}`, message: this.sayUnreached(how) })

  /** What was being done when the planner went away is not waited for. */
  #dropJobs(): void {
    const how = this.reach.reached()
    if (how === 'here') return
    const error = this.#unreached(how)
    for (const { done } of this.#jobs.values())
      done({ ok: false, error: { code: error.code, message: error.message } })
    this.#jobs.clear()
  }

  #hear({ job, progress, answer }: JobNews): void {
    const waiting = this.#jobs.get(job)
    if (progress !== undefined) waiting?.tell(progress)
    if (answer === undefined) return
    if (waiting === undefined) this.#early.set(job, answer)
    waiting?.done(answer)
    this.#jobs.delete(job)
  }
}

const jobOf = (result: unknown): string | undefined => {
  const keys = Object.keys(result as object)
  return keys.length === 1 && keys[0] === 'job' ? (result as { job: string }).job : undefined
}
