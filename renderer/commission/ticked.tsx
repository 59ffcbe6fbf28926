import { useRef } from 'react'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useTell } from '../workroom.tsx'

type Props = {
  refused: string | undefined
  busy: boolean
  /** Goes on in spite of what washing or cutting asks first, where it asked. */
  anyway: (() => void) | undefined
  /** Whether it was washing that asked. */
  washing?: boolean | undefined
  /** What was done last; without `undo` it is open again. */
  did: { what: string; untimed?: boolean; undo?: () => void } | undefined
}

/** Beneath what one ticks: why it was refused, or what was done with the way back. */
export function Ticked({ refused, busy, anyway, washing = false, did }: Props) {
  const tell = useTell()
  const line = useRef<HTMLDivElement>(null)
  /** The button goes with what it undoes; who pressed it by key stays where she was. */
  const undo = (work: () => void) => {
    line.current?.focus()
    work()
  }
  const undoing = did?.undo
  return (
    <>
      <Refusal sentence={refused} />
      {anyway === undefined ? null : (
        <div>
          <Button busy={busy} onPress={anyway}>
            {tell(washing ? 'screen.commission.washedAnyway' : 'screen.commission.cutAnyway')}
          </Button>
        </div>
      )}
      <div ref={line} role="status" className="ticked" tabIndex={-1}>
        {did === undefined ? null : (
          <>
            <span>
              {tell(undoing === undefined ? 'tick.undone' : 'tick.done', { what: did.what })}{' '}
              {undoing !== undefined && did.untimed === true ? tell('tick.untimed') : ''}
            </span>
            {undoing === undefined ? null : (
              <Button
                label={tell('tick.undo.what', { what: did.what })}
                busy={busy}
                onPress={() => undo(undoing)}
              >
                {tell('tick.undo')}
              </Button>
            )}
          </>
        )}
      </div>
    </>
  )
}
