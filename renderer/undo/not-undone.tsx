import { useTell } from '../workroom.tsx'
import { FINAL, type Final } from './final.ts'

/** Said before it is done: that it cannot be undone, and what can be done instead. */
export function NotUndone({ act }: { act: Final }) {
  const tell = useTell()
  return <p className="quiet">{tell('undo.final', { why: tell(FINAL[act]) })}</p>
}
