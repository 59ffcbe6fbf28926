import { phrase } from '../../core/words/phrase.ts'
import { say } from '../../core/words/say.ts'

/** What a page shows that was opened without its key. */
export function NoKey() {
  return (
    <main className="narrow stack">
      <h1>Ellwand</h1>
      <p className="sheet">{say(phrase('screen.noKey'))}</p>
    </main>
  )
}
