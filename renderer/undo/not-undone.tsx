import { useTell } from '../workroom.tsx'
import { FINAL, type Final } from './final.ts'

type Props = {
  act: Final
  /** Where nothing is lost by it: what it means is said, without the warning. */
  mild?: boolean
}

/** Said before it is done: that it cannot be undone, and what can be done instead. */
export function NotUndone({ act, mild = false }: Props) {
  const tell = useTell()
  const why = tell(FINAL[act])
  return <p className="quiet">{mild ? why : tell('undo.final', { why })}</p>
}
