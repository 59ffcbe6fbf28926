import type { InputOf, OutputOf, RequestName } from '../../core/workroom.ts'

/** One request that takes something back, as it will be asked. */
export type Step = { [N in RequestName]: { name: N; payload: InputOf<N> } }[RequestName]
export type Ask = <N extends RequestName>(name: N, payload: InputOf<N>) => Promise<OutputOf<N>>
type Did<N extends RequestName, B> = { given: InputOf<N>; answer: OutputOf<N>; before: B }

/** How a request is taken back: what is looked up before it runs, and what is asked afterwards. */
export type Way = {
  before?: (given: never, ask: Ask) => Promise<unknown>
  back: (did: { given: never; answer: never; before: never }) => readonly Step[]
}

/** A way back that follows from what was given and answered; the name is there only for its types. */
export const way = <N extends RequestName>(
  _name: N,
  back: (did: Did<N, undefined>) => readonly Step[],
): Way => ({
  back: back as Way['back'],
})
/** A way back for which something has to be looked up before the request runs. */
export const wayFrom = <N extends RequestName, B>(
  _name: N,
  before: (given: InputOf<N>, ask: Ask) => Promise<B>,
  back: (did: Did<N, B>) => readonly Step[],
): Way => ({ before: before as Way['before'] & {}, back: back as Way['back'] })
