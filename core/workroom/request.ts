import type { z } from 'zod'
import type { Places, Strip } from '../lay/strip.ts'
import type { Manner } from '../lay/types.ts'
import type { Store } from '../store/open.ts'

/** How long to look for a shorter lay; the same seed gives the same one where the clock does not end it. */
export type LaySearchLimits = {
  seconds: number
  seed: number
  signal: AbortSignal
  /** Told now and then how far it is, 0 to 1, and the best places so far. */
  tick: (done: number, best: Places) => void
}

/** Places, and how the search ended: at its time, by the maker's wish, or because a thread broke down. */
export type LaySearched = { places: Places; ended: 'done' | 'stopped' | 'broken' }

/** How far a job has come: a part of one, what it is at, and what it would give if stopped now. */
export type Progress = { done: number; doing: string; best?: unknown }

/**
 * What a use case is given besides its input: the open store, and everything that would make its outcome
 * differ from one run to the next.
 */
export type Context = {
  store: Store
  /** Instant, UTC ISO 8601. */
  now: () => string
  newId: () => string
  random: (bytes: number) => Uint8Array
  signal: AbortSignal
  report: (progress: Progress) => void
  /** Lets threads of their own look for a shorter lay; what it gives is never longer than the start. */
  searchLay: (
    task: { strip: Strip; manner: Manner },
    start: Places,
    limits: LaySearchLimits,
  ) => Promise<LaySearched>
  /** Who asks, for the history. */
  actor: string
}

/**
 * A query reads; a command is one transaction, kept whole or not at all; a job takes long, reports, can be
 * stopped, and makes its own transaction at the end.
 */
export type Kind = 'query' | 'command' | 'job'

/** One entry of the request table. */
export type Request<Name extends string = string, Input extends z.ZodType = z.ZodType, Output = unknown> = {
  name: Name
  kind: Kind
  /** One line on what it does. */
  about: string
  input: Input
  /** May be asked where the book is damaged and everything else can only be looked at. */
  mends?: true
  /** @throws Refusal with a sentence for the maker */
  run: (input: z.output<Input>, context: Context) => Output
}

/** One entry of the request table; here only for its types. */
export const request = <const Name extends string, Input extends z.ZodType, Output>(
  entry: Request<Name, Input, Output>,
): Request<Name, Input, Output> => entry
