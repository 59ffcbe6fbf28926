import type { Answer, Progress } from '../core/workroom.ts'

/** What the shell asks of the thread that owns the store. */
export type ToStore =
  | { kind: 'ask'; id: number; name: string; payload: unknown }
  | { kind: 'cancel'; id: number; job: string }
  | { kind: 'paper'; id: number; document: string }
  | { kind: 'open'; id: number; path: string; sample: boolean }
  | { kind: 'close'; id: number }

/** What it hears back: an answer to each message, and events of jobs in between. */
export type FromStore = { kind: 'answer'; id: number; answer: Answer } | { kind: 'event'; event: JobEvent }

/** News of a job: how far it is, or what came of it. */
export type JobEvent = { job: string; progress: Progress } | { job: string; answer: Answer }

/** The two workrooms a maker can be in: her own, and the sample to look round in. They are never mixed. */
export type Which = 'own' | 'sample'
