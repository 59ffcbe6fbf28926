import type { ComponentProps } from 'react'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import { Tick } from '../parts/tick.tsx'
import { LeftOver } from '../rooms/remnants.tsx'
import { ToTable } from '../table/to-table.tsx'
import { StartTimer } from '../today/start-timer.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import { CutStage } from './cut-stage.tsx'
import { Holds } from './holds.tsx'
import { LogTime } from './log-time.tsx'
import { type Followed, type Garment, minutesOf, minutesOn, type Time } from './logged.ts'
import { GarmentPapers } from './papers.tsx'
import { Ticked } from './ticked.tsx'
import { type Stage, useTicking } from './ticking.ts'

type Props = {
  commissionId: string
  garment: Garment
  /** What it is called in this commission. */
  name: string
  times: readonly Time[]
  /** Steps are ticked while it is open, and time is written down until it is called off. */
  state: Followed['state']
  onTicked: (commission: Followed) => void
  onLogged: (minutes: number, name: string) => void
}

type LogOn = ComponentProps<typeof LogTime>['on']

/** One garment: its papers, its steps to tick, and the time each took. */
export function GarmentSteps({
  commissionId,
  garment,
  name,
  times,
  state: standing,
  onTicked,
  onLogged,
}: Props) {
  const { reader } = useHouse()
  const tell = useTell()
  const ticking = useTicking(garment.id, onTicked)
  const open = standing === 'open'
  const log = (on: LogOn, what: string) =>
    standing === 'cancelled' ? null : <LogTime on={on} name={what} onLogged={onLogged} />
  /** What was expected of steps, or what they took once that is known. */
  const timeAt = (stepIds: readonly string[], expected = '') => {
    const took = minutesOn(times, stepIds)
    const time = printMinutes(took)
    if (took === 0) return expected
    return expected === '' ? tell('times.log.took', { time }) : tell('times.log.tookOf', { time, expected })
  }
  /** What there is to say of ticking at a stage: it stands where the hand was. */
  const toldAt = (stage: Stage) => {
    const { act, did, guard, refused, busy } = ticking
    const here = act?.stage === stage
    const last = did?.act.stage === stage ? did : undefined
    return {
      busy,
      refused: here ? refused : undefined,
      anyway: here && guard !== undefined ? ticking.anyway : undefined,
      washing: guard === 'absent',
      did: last && {
        what: last.act.name,
        untimed: last.ids.length > 0 && last.ids.every((id) => minutesOf(times, id) === 0),
        ...(last.undone ? {} : { undo: ticking.undo }),
      },
    }
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
        {open ? <ToTable {...{ commissionId, garmentId: garment.id, name }} /> : null}
      </div>
      {open ? <Holds {...{ garment, name }} /> : null}
      <GarmentPapers garmentId={garment.id} />
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
                    onChange={(done) => ticking.mark({ stage, name: wholeName }, done)}
                  />
                  {open && state !== 'done' ? (
                    <StartTimer short on={{ garmentId: garment.id, stage }} name={wholeName} />
                  ) : null}
                  {log({ garmentId: garment.id, stage }, wholeName)}
                </div>
              )}
              {here.map((step) => (
                <div key={step.id} className="step">
                  <Tick
                    name={say(step.name, reader)}
                    done={step.doneAt !== null}
                    disabled={!open}
                    aside={timeAt([step.id], printMinutes(step.minutes.mean))}
                    onChange={(done) =>
                      ticking.mark({ stage, stepId: step.id, name: say(step.name, reader) }, done)
                    }
                  />
                  {open && step.doneAt === null ? (
                    <StartTimer short on={{ stepIds: [step.id] }} name={say(step.name, reader)} />
                  ) : null}
                  {log({ stepIds: [step.id] }, say(step.name, reader))}
                </div>
              ))}
              {open ? <Ticked {...toldAt(stage)} /> : null}
              {stage === 'cut' ? <CutStage garment={garment} name={name} open={open} /> : null}
            </fieldset>
          )
        })}
        {garment.cut ? <LeftOver garmentId={garment.id} /> : null}
      </div>
    </section>
  )
}
