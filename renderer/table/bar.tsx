import { Button as AriaButton } from 'react-aria-components'
import { printMinutes } from '../../core/words/time.ts'
import { Refusal } from '../parts/refusal.tsx'
import { useRunning, useTimerName } from '../today/running.tsx'
import { TimerStrip } from '../today/timer-strip.tsx'
import { useDoing, useTell } from '../workroom.tsx'

type Props = {
  back: (() => void) | undefined
  next: (() => void) | undefined
  /** Ticking the step, where this is one. */
  done: { act: (() => void) | undefined } | undefined
  isDone: boolean
  /** The step that time is spent on; none where the commission is closed. */
  stepId: string | undefined
  name: string
}

/** What the hand needs at every step, always at the foot of the screen: back, the timer, done, next. */
export function TableBar({ back, next, done, isDone, stepId, name }: Props) {
  const tell = useTell()
  return (
    <footer className="table-foot">
      <TableTimerSaid stepId={stepId} />
      <nav className="table-bar" aria-label={tell('table.bar')}>
        <Large words={tell('table.back')} act={back} />
        {stepId === undefined ? <span /> : <TableTimer {...{ stepId, name }} />}
        {done === undefined ? (
          <span />
        ) : isDone ? (
          <span className="table-isdone">{tell('table.isDone')}</span>
        ) : (
          <Large words={tell('table.done')} act={done.act} main />
        )}
        <Large words={tell('table.next')} act={next} main={done?.act === undefined} />
      </nav>
      <p className="quiet table-keys">{tell('table.keys')}</p>
    </footer>
  )
}

type LargeProps = { words: string; act: (() => void) | undefined; main?: boolean; label?: string }

function Large({ words, act, main = false, label }: LargeProps) {
  return (
    <AriaButton
      className={main ? 'button main' : 'button'}
      isDisabled={act === undefined}
      {...(label === undefined ? {} : { 'aria-label': label })}
      {...(act === undefined ? {} : { onPress: act })}
    >
      {words}
    </AriaButton>
  )
}

/** What the timer came to, or the questions of one that looks forgotten or runs on other work. */
function TableTimerSaid({ stepId }: { stepId: string | undefined }) {
  const tell = useTell()
  const { timer, said } = useRunning()
  const nameOf = useTimerName()
  if (timer !== undefined && timer.guess !== null) return <TimerStrip />
  const elsewhere = timer !== undefined && (stepId === undefined || !timer.stepIds.includes(stepId))
  const words = elsewhere ? tell('table.elsewhere', { step: nameOf(timer), number: timer.number }) : said
  return (
    <p role="status" className={words === '' ? 'unseen' : 'timer-said'}>
      {words}
    </p>
  )
}

function TableTimer({ stepId, name }: { stepId: string; name: string }) {
  const tell = useTell()
  const doing = useDoing()
  const { timer, start, stop } = useRunning()
  const press = () => void doing.run(() => (timer === undefined ? start({ stepIds: [stepId] }) : stop()))
  const words =
    timer === undefined ? tell('table.start') : tell('table.stop', { time: printMinutes(timer.minutes) })
  return (
    <div>
      <Large
        words={words}
        act={doing.busy || (timer !== undefined && timer.guess !== null) ? undefined : press}
        {...(timer === undefined ? { label: tell('timer.start.for', { step: name }) } : {})}
      />
      <Refusal sentence={doing.refused?.message} />
    </div>
  )
}
