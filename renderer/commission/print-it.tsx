import { Button as AriaButton } from 'react-aria-components'
import { useShown } from '../parts/printing.ts'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useTell } from '../workroom.tsx'

type Props = { number: string; ask: () => Promise<{ document: { id: string } }> }

/** Prints one numbered paper of a list. */
export function PrintIt({ number, ask }: Props) {
  const tell = useTell()
  const doing = useDoing()
  const show = useShown()
  return (
    <>
      <AriaButton
        className="log-time"
        isDisabled={doing.busy}
        aria-label={tell('papers.printOf', { number })}
        onPress={() => void doing.run(() => show(ask()))}
      >
        {tell('papers.print')}
      </AriaButton>
      <Refusal sentence={doing.refused?.message} />
    </>
  )
}
