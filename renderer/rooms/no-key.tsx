import { phrase } from '../../core/words/phrase.ts'
import { type Reader, say } from '../../core/words/say.ts'

/** What a page shows that was opened without its key. */
export function NoKey({ reader }: { reader: Reader }) {
  return (
    <main className="narrow stack">
      <h1>Ellwand</h1>
      <p className="sheet">{say(phrase('screen.noKey'), reader)}</p>
    </main>
  )
}
