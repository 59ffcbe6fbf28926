import { useEffect, useRef, useState } from 'react'
import { useTell } from '../workroom.tsx'
import { DraftAgain } from './draft-again.tsx'
import { Hold } from './fitting-hold.tsx'
import type { Fitting } from './fittings.tsx'
import type { Followed, Garment } from './logged.ts'
import { MeasureAnew } from './measure-anew.tsx'

type Part = 'found' | 'measures' | 'draft'

type Props = {
  commission: Followed
  /** Garments that were tried on. */
  garments: readonly Garment[]
  fitting: Fitting
  when: string
  close: () => void
  onDone: () => void
}

/**
 * What a fitting found. Written down for the first time it leads on to the measures that changed, and to what a new draft
 * would change; each part is kept by itself, and after any of them one may stop.
 */
export function Found({ commission, garments, fitting, when, close, onDone }: Props) {
  const tell = useTell()
  const [leads] = useState(fitting.heldAt === null && commission.state === 'open')
  const [part, setPart] = useState<Part>('found')
  const [now, setNow] = useState(fitting)
  const room = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (part !== 'found') room.current?.querySelector<HTMLElement>('h3')?.focus()
  }, [part])
  const then = (next: Part) => (leads ? () => setPart(next) : close)
  const kept = (fitting: Fitting) => {
    setNow(fitting)
    onDone()
  }
  const given = { commission, garments, close }
  return (
    <div className="stack" ref={room}>
      {leads ? <h3 tabIndex={-1}>{tell(`redraft.part.${part}`)}</h3> : null}
      {part === 'found' ? (
        <Hold {...{ commission, fitting, when, close }} then={then('measures')} onDone={kept} />
      ) : null}
      {part === 'measures' ? (
        <MeasureAnew {...given} fittingId={now.id} then={then('draft')} onDone={kept} />
      ) : null}
      {part === 'draft' ? <DraftAgain {...given} fitting={now} onDone={onDone} /> : null}
    </div>
  )
}
