import type { z } from 'zod'
import type { Store } from '../store/open.ts'

/** How far a job has come: a part of one, and what it is at. */
export type Progress = { done: number; doing: string }

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
  /** Who asks, for the history. */
  actor: string
}

/**
 * A query reads; a command is one transaction, kept whole or not at all; a job takes long, reports, can be
 * stopped, and makes its own transaction at the end.
 */
export type Kind = 'query' | 'command' | 'job'

export type Request<Name extends string = string, Input extends z.ZodType = z.ZodType, Output = unknown> = {
  name: Name
  kind: Kind
  /** One line on what it does. */
  about: string
  input: Input
  /** @throws Refusal with a sentence for the maker */
  run: (input: z.output<Input>, context: Context) => Output
}

/** One entry of the request table; here only for its types. */
export const request = <const Name extends string, Input extends z.ZodType, Output>(
  entry: Request<Name, Input, Output>,
): Request<Name, Input, Output> => entry
