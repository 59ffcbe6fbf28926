import type { Context } from './request.ts'

/** Tells how far a job is, and ends it where the maker has stopped it. */
export const told =
  ({ report, signal }: Pick<Context, 'report' | 'signal'>, doing: string) =>
  (done: number): void => {
    signal.throwIfAborted()
    report({ done, doing })
  }
