import { useState } from 'react'
import { printDate } from '../../core/words/dates.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'
import { LeftOver } from './remnants.tsx'

type Followed = OutputOf<'commission.get'>['commission']
type Garment = Followed['garments'][number]

/** One commission: its garments, each with its papers and its steps to tick. */
export function Commission({ id }: { id: string }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { value, refused } = useQuery('commission.get', { id })
  const [after, setAfter] = useState<Followed>()
  const commission = after ?? value?.commission
  if (commission === undefined) return <Refusal sentence={refused} />
  return (
    <div className="stack">
      <div>
        <h1>
          {tell('screen.commission.title', { number: commission.number, customer: commission.customer })}
        </h1>
        <p className="quiet">
          {printDate(commission.day, reader.locale)} ·{' '}
          {tell('screen.commission.fromQuote', { quote: commission.quoteNumber })} ·{' '}
          {tell('screen.commission.leftInAll', { left: { minutes: commission.left.mean } })}
        </p>
      </div>
      {commission.garments.map((garment) => (
        <GarmentSteps key={garment.id} garment={garment} onTicked={setAfter} />
      ))}
    </div>
  )
}

function GarmentSteps({ garment, onTicked }: { garment: Garment; onTicked: (commission: Followed) => void }) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const tick = (name: 'step.tick' | 'step.untick', id: string) =>
    doing.run(async () => onTicked((await workroom.ask(name, { id })).commission))
  const whole = (name: 'stage.tick' | 'stage.untick', stage: Garment['stages'][number]['stage']) =>
    doing.run(async () => onTicked((await workroom.ask(name, { garmentId: garment.id, stage })).commission))
  const cutAnyway = () =>
    doing.run(async () => {
      const asked = { garmentId: garment.id, stage: 'cut' as const, onEstimates: true }
      onTicked((await workroom.ask('stage.tick', asked)).commission)
    })
  const print = (name: 'workOrder.print' | 'cuttingSheet.print') =>
    doing.run(async () => {
      const { document } = await workroom.ask(name, { garmentId: garment.id })
      const shown = await workroom.bridge.paper(document.id)
      if (!shown.ok) throw new Error(shown.error.message)
    })
  return (
    <section className="sheet stack">
      <div className="between">
        <div>
          <h2>
            {tell('paper.garment.forWhom', { title: say(garment.title, reader), wearer: garment.wearer })}
          </h2>
          <p className="quiet">
            {garment.cloth} · {tell('screen.commission.leftInAll', { left: { minutes: garment.left.mean } })}
          </p>
        </div>
        <div className="row">
          <Button busy={doing.busy} onPress={() => void print('workOrder.print')}>
            {tell('paper.order.title')}
          </Button>
          <Button busy={doing.busy} onPress={() => void print('cuttingSheet.print')}>
            {tell('paper.cutting.title')}
          </Button>
        </div>
      </div>
      <Refusal sentence={doing.refused?.message} />
      {doing.refused?.field === 'onEstimates' ? (
        <div>
          <Button onPress={() => void cutAnyway()}>{tell('screen.commission.cutAnyway')}</Button>
        </div>
      ) : null}
      <div className="stages">
        {garment.stages.map(({ stage, state, steps }) => (
          <fieldset key={stage} className={`stage ${state}${steps > 1 ? ' many' : ''}`}>
            <legend>{tell(`paper.stage.${stage}`)}</legend>
            {steps === 1 ? null : (
              <Tick
                name={tell('screen.commission.wholeStage', { stage: tell(`paper.stage.${stage}`) })}
                done={state === 'done'}
                onChange={(done) => void whole(done ? 'stage.tick' : 'stage.untick', stage)}
              />
            )}
            {garment.steps
              .filter((step) => step.stage === stage)
              .map((step) => (
                <Tick
                  key={step.id}
                  name={say(step.name, reader)}
                  done={step.doneAt !== null}
                  aside={printMinutes(step.minutes.mean)}
                  onChange={(done) => void tick(done ? 'step.tick' : 'step.untick', step.id)}
                />
              ))}
          </fieldset>
        ))}
        {garment.cut ? <LeftOver garmentId={garment.id} /> : null}
      </div>
    </section>
  )
}
