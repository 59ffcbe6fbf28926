import { isSpoken } from '../core/words/languages.ts'
import type { Phrase, PhraseCode, PhraseValue } from '../core/words/phrase.ts'
import { phrase } from '../core/words/phrase.ts'
import { readerIn } from '../core/words/readers.ts'
import { type Reader, say } from '../core/words/say.ts'
import type { StoreHost } from './store-host.ts'

/** Who reads before a workroom is open: whoever set up the machine, where the planner speaks that language. */
function machineReader(): Reader {
  const { locale } = Intl.DateTimeFormat().resolvedOptions()
  return readerIn({ locale: isSpoken(locale) ? locale : 'en-GB', unit: 'cm' })
}

/** A thread of the shell has one window and one workroom, and so it speaks to one reader. */
let reader = machineReader()

/** Has the shell speak to this reader from here on. */
export function speakTo(next: Reader): void {
  reader = next
}

/** Words of the shell itself, in menus and dialogs, to the reader it speaks to. */
export const sayHere = (sentence: Phrase): string => say(sentence, reader)
export const tellHere = (code: PhraseCode, params?: Record<string, PhraseValue>): string =>
  sayHere(phrase(code, params))

/** The same store, whose workroom's language the shell follows; `changed` is called when it is another. */
export function following(store: StoreHost, changed: () => void): StoreHost {
  const look = async () => {
    const answered = await store.ask('settings.get', {})
    if (!answered.ok) return
    const { settings, revision } = answered.result as {
      settings: { letterhead: Pick<Reader, 'locale' | 'unit'> }
      revision: number
    }
    const before = reader.locale
    speakTo(revision === 0 ? machineReader() : readerIn(settings.letterhead))
    if (reader.locale !== before) changed()
  }
  const thenLook = async <T extends { ok: boolean }>(answer: Promise<T>): Promise<T> => {
    const answered = await answer
    if (answered.ok) await look()
    return answered
  }
  return {
    ...store,
    ask: (name, payload) =>
      name === 'settings.set' ? thenLook(store.ask(name, payload)) : store.ask(name, payload),
    enter: (which) => thenLook(store.enter(which)),
  }
}
