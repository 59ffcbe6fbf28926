import { Button as AriaButton } from 'react-aria-components'
import type { KeyName } from '../../core/words/keys.ts'
import type { InputOf } from '../../core/workroom.ts'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useTell } from '../workroom.tsx'
import { useRunning } from './running.tsx'

type Props = {
  on: InputOf<'timer.start'>
  /** What the time is spent on, as it stands at the step. */
  name: string
  /** In a narrow row of many, where one word must do. */
  short?: boolean
}

/** Starts the timer on a step or a whole stage; where it runs on that step already, says so. */
export function StartTimer({ on, name, short = false }: Props) {
  const tell = useTell()
  const doing = useDoing()
  const { timer, start } = useRunning()
  const here = timer !== undefined && on.stepIds?.length === 1 && timer.stepIds.includes(on.stepIds[0]!)
  if (here) return <span className="start-timer runs">{tell('timer.runsHere')}</span>
  return (
    <>
      <AriaButton
        className={short ? 'log-time start-timer' : 'button start-timer'}
        aria-label={tell('timer.start.for', { step: name })}
        data-key={'timer' satisfies KeyName}
        isDisabled={doing.busy}
        onPress={() => void doing.run(() => start(on))}
      >
        {tell(short ? 'timer.start.short' : 'timer.start')}
      </AriaButton>
      {timer === undefined ? null : <Refusal sentence={doing.refused?.message} />}
    </>
  )
}
