import { languageOf } from '../../core/words/languages.ts'
import { useUndoing } from '../undo/undoing.tsx'
import { useHouse } from '../workroom.tsx'

/** What was half filled in her own workroom when she left it for the sample. */
const atHome = new Map<string, unknown>()

/** Puts what was half filled at home in its place again, now that she is back. */
export function keptAsAtHome(kept: Map<string, unknown>): void {
  kept.clear()
  for (const [name, value] of atHome) kept.set(name, value)
  atHome.clear()
}

/** The way into the sample workroom, which then speaks the language she reads. Nothing of hers goes with her. */
export function useEnterSample(): () => Promise<void> {
  const { workroom, reader, kept } = useHouse()
  const { forget } = useUndoing()
  return async () => {
    await workroom.bridge.enter('sample')
    atHome.clear()
    for (const [name, value] of kept) atHome.set(name, value)
    kept.clear()
    const { settings, revision } = await workroom.ask('settings.get', {})
    const { locale } = reader
    if (languageOf(settings.letterhead.locale) !== languageOf(locale))
      await workroom.ask('settings.set', { revision, changes: { letterhead: { locale } } })
    forget()
  }
}
