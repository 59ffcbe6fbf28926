import { phrase } from '../core/words/phrase.ts'
import { say } from '../core/words/say.ts'

/** The sentence for a Node that is too old to run the planner, or undefined when it is not. */
export function oldNode(version: string): string | undefined {
  const [major = 0, minor = 0] = version.split('.').map(Number)
  return major > 22 || (major === 22 && minor >= 18) ? undefined : say(phrase('ask.oldNode', { version }))
}
