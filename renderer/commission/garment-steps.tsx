import { useState } from 'react'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { InputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { LeftOver } from '../rooms/remnants.tsx'
import { StartTimer } from '../today/start-timer.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import { CutStage } from './cut-stage.tsx'
import { LogTime } from './log-time.tsx'
import { type Followed, type Garment, minutesOn, type Time } from './logged.ts'

type Guard = NonNullable<InputOf<'stage.tick'>['anyway']>[number]

type Props = {
  garment: Garment
  /** What it is called in this commission. */
  name: string
  times: readonly Time[]
  /** Whether the commission is still worked on: only then are steps ticked. */
  open: boolean
  onTicked: (commission: Followed) => void
  onLogged: (minutes: number, name: string) => void
}

/** One garment: its papers, its steps to tick, and the time each took. */
export function GarmentSteps({ garment, name, times, open, onTicked, onLogged }: Props) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const tick = (done: boolean, id: string) =>
    doing.run(async () =>
      onTicked((await workroom.ask(done ? 'step.tick' : 'step.untick', { id })).commission),
    )
  const whole = (done: boolean, stage: Garment['stages'][number]['stage']) =>
    doing.run(async () => {
      const asked = { garmentId: garment.id, stage }
      onTicked((await workroom.ask(done ? 'stage.tick' : 'stage.untick', asked)).commission)
    })
  /** What she was warned of before cutting, and cuts all the same: each is asked once. */
  const [warned, setWarned] = useState<Guard[]>([])
  const guard = doing.refused?.field?.startsWith('anyway.')
    ? (doing.refused.field.slice('anyway.'.length) as Guard)
    : undefined
  const cutAnyway = (next: Guard) =>
    doing.run(async () => {
      const anyway = [...warned, next]
      setWarned(anyway)
      const asked = { garmentId: garment.id, stage: 'cut' as const, anyway }
      onTicked((await workroom.ask('stage.tick', asked)).commission)
      setWarned([])
    })
  const print = (paper: 'workOrder.print' | 'cuttingSheet.print') =>
    doing.run(async () => {
      const { document } = await workroom.ask(paper, { garmentId: garment.id })
      const shown = await workroom.bridge.paper(document.id)
      if (!shown.ok) throw new Error(shown.error.message)
    })
  /** What was expected of steps, or what they took once that is known. */
  const timeAt = (stepIds: readonly string[], expected = '') => {
    const took = minutesOn(times, stepIds)
    return took === 0 ? expected : tell('times.log.took', { time: printMinutes(took) })
  }
  return (
    <section className="sheet stack">
      <div className="between">
        <div>
          <h2>{name}</h2>
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
      {guard === undefined ? null : (
        <div>
          <Button onPress={() => void cutAnyway(guard)}>{tell('screen.commission.cutAnyway')}</Button>
        </div>
      )}
      <div className="stages">
        {garment.stages.map(({ stage, state, steps }) => {
          const here = garment.steps.filter((step) => step.stage === stage)
          const wholeName = tell('screen.commission.wholeStage', { stage: tell(`paper.stage.${stage}`) })
          return (
            <fieldset key={stage} className={`stage ${state}${steps > 1 ? ' many' : ''}`}>
              <legend>{tell(`paper.stage.${stage}`)}</legend>
              {steps === 1 ? null : (
                <div className="step">
                  <Tick
                    name={wholeName}
                    done={state === 'done'}
                    disabled={!open}
                    aside={timeAt(here.map(({ id }) => id))}
                    onChange={(done) => void whole(done, stage)}
                  />
                  {open && state !== 'done' ? (
                    <StartTimer short on={{ garmentId: garment.id, stage }} name={wholeName} />
                  ) : null}
                  <LogTime on={{ garmentId: garment.id, stage }} name={wholeName} onLogged={onLogged} />
                </div>
              )}
              {here.map((step) => (
                <div key={step.id} className="step">
                  <Tick
                    name={say(step.name, reader)}
                    done={step.doneAt !== null}
                    disabled={!open}
                    aside={timeAt([step.id], printMinutes(step.minutes.mean))}
                    onChange={(done) => void tick(done, step.id)}
                  />
                  {open && step.doneAt === null ? (
                    <StartTimer short on={{ stepIds: [step.id] }} name={say(step.name, reader)} />
                  ) : null}
                  <LogTime on={{ stepIds: [step.id] }} name={say(step.name, reader)} onLogged={onLogged} />
                </div>
              ))}
              {stage === 'cut' ? <CutStage garment={garment} name={name} open={open} /> : null}
            </fieldset>
          )
        })}
        {garment.cut ? <LeftOver garmentId={garment.id} /> : null}
      </div>
    </section>
  )
}
