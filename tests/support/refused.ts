import { Refusal } from '../../core/words/refusal.ts'
import { say } from '../../core/words/say.ts'

/** The sentence, code and field of the refusal that `work` must end in. */
export function refused(work: () => unknown): { sentence: string; code: string; field: string | undefined } {
  try {
    work()
  } catch (error) {
    if (error instanceof Refusal)
      return { sentence: say(error.phrase), code: error.phrase.code, field: error.field }
    throw error
  }
  throw new Error('nothing was refused')
}
