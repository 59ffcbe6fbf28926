import type { Answer, Progress } from '../../core/workroom.ts'

/** News of a job, as a shell passes it on. */
export type JobNews = { job: string; progress?: Progress; answer?: Answer }

/** The one way out of the page: what a shell offers it, in a window or in the browser. */
export type Bridge = {
  ask(name: string, payload: unknown): Promise<Answer>
  cancel(job: string): Promise<Answer>
  enter(which: 'own' | 'sample'): Promise<Answer>
  /** Shows a printed paper to the maker. */
  paper(document: string): Promise<Answer>
  /** @param ended hears that no more news will come, where that can be known */
  listen(hear: (news: JobNews) => void, ended?: () => void): void
}
