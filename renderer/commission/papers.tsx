import { useState } from 'react'
import type { KeyName } from '../../core/words/keys.ts'
import type { InputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { SelectField } from '../parts/field.tsx'
import { LookAt } from '../parts/look-at.tsx'
import { useShown } from '../parts/printing.ts'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

type PatternPaper = NonNullable<InputOf<'pattern.print'>['paper']>
const PAPERS = ['A4', 'A3', 'Letter', 'oneSheet'] as const

const LOOKED = ['cuttingSheet', 'pattern', 'careSheet'] as const
type Looked = (typeof LOOKED)[number]

/** The papers of a garment: those of every day at hand, the others behind a word. */
export function GarmentPapers({ garmentId }: { garmentId: string }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const show = useShown()
  const [paper, setPaper] = useState<PatternPaper>('A4')
  const [looked, setLooked] = useState<Looked>('cuttingSheet')
  const asked = { garmentId }
  const { value: printed, reload } = useQuery('garment.printed', asked)
  const last = (['workOrder', 'cuttingSheet'] as const).flatMap((kind) => {
    const day = printed?.[kind] ?? null
    return day === null ? [] : [tell(`papers.printed.${kind}`, { day: { date: day } })]
  })
  const button = (words: string, print: () => Promise<{ document: { id: string } }>, key?: KeyName) => (
    <Button
      busy={doing.busy}
      onPress={() => void doing.run(() => show(print())).then(reload)}
      {...(key === undefined ? {} : { shortcut: key })}
    >
      {words}
    </Button>
  )
  return (
    <div className="papers">
      <div className="row">
        {button(tell('paper.order.title'), () => workroom.ask('workOrder.print', asked), 'print')}
        {button(tell('paper.cutting.title'), () => workroom.ask('cuttingSheet.print', asked))}
        <LookAt asked={{ paper: 'workOrder', garmentId }} words={tell('papers.look.workOrder')} />
      </div>
      {last.length === 0 ? null : <p className="quiet">{last.join(' · ')}</p>}
      {printed?.stale === true ? <p className="under">{tell('papers.stale')}</p> : null}
      <details>
        <summary>{tell('papers.more')}</summary>
        <div className="stack">
          <div className="row papers-pattern">
            <SelectField
              label={tell('papers.pattern.on')}
              value={paper}
              onChange={(id) => setPaper(id as PatternPaper)}
              options={PAPERS.map((id) => ({ id, name: tell(`papers.on.${id}`) }))}
            />
            {button(tell('paper.pattern.title'), () => workroom.ask('pattern.print', { garmentId, paper }))}
            {button(tell('papers.pattern.svg'), () => workroom.ask('pattern.draw', asked))}
          </div>
          <div className="row">
            {button(tell('paper.care.title'), () => workroom.ask('careSheet.print', asked))}
          </div>
          <SelectField
            label={tell('papers.lookAt')}
            value={looked}
            onChange={(id) => setLooked(id as Looked)}
            options={LOOKED.map((id) => ({ id, name: tell(`papers.lookAt.${id}`) }))}
          />
          <LookAt
            asked={
              looked === 'pattern' ? { paper: looked, garmentId, on: paper } : { paper: looked, garmentId }
            }
            words={tell('papers.look')}
          />
        </div>
      </details>
      <Refusal sentence={doing.refused?.message} />
    </div>
  )
}
