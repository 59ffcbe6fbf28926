import { readerIn } from '../../core/words/languages.ts'
import { phrase } from '../../core/words/phrase.ts'
import { say } from '../../core/words/say.ts'
import { machineLocale } from '../parts/machine-locale.ts'

/** What a page shows that was opened without its key. */
export function NoKey() {
  return (
    <main className="narrow stack">
      <h1>Ellwand</h1>
      <p className="sheet">
        {say(phrase('screen.noKey'), readerIn({ locale: machineLocale(), unit: 'cm' }))}
      </p>
    </main>
  )
}
