import { type FormEvent, useEffect, useRef, useState } from 'react'
import { printDate } from '../../core/words/dates.ts'
import { momentFormat } from '../../core/words/formats.ts'
import { printMinutes } from '../../core/words/time.ts'
import { Button } from '../parts/button.tsx'
import { TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import { type RunningTimer, useRunning, useTimerName } from './running.tsx'

/** The timer that runs, under the head of every room; without one, what the last one came to. */
export function TimerStrip() {
  const { timer, said } = useRunning()
  return (
    <>
      <p role="status" className={said === '' ? 'unseen' : 'timer-said'}>
        {said}
      </p>
      {timer === undefined ? null : <Strip key={timer.startedAt} timer={timer} />}
    </>
  )
}

/** What is asked before it is stopped: how long it really took, or whether it is to be dropped. */
type Asking = 'other' | 'drop' | undefined

function Strip({ timer }: { timer: RunningTimer }) {
  const tell = useTell()
  const nameOf = useTimerName()
  const since = useSince(timer.startedAt)
  const { stop, drop } = useRunning()
  const doing = useDoing()
  const [asking, setAsking] = useState<Asking>()
  const guess = timer.guess === null ? undefined : Math.max(1, timer.guess)
  const ask = (what: Asking) => setAsking(asking === what ? undefined : what)
  return (
    <section
      className="timer"
      aria-label={tell('timer.title')}
      onKeyDown={(event) => event.key === 'Escape' && setAsking(undefined)}
    >
      <p className="timer-what">
        <strong>{nameOf(timer)}</strong>{' '}
        <a href={addressOf('commissions', timer.commissionId)}>{timer.number}</a>{' '}
        <span className="quiet">{since}</span>
      </p>
      <p className="timer-long">{printMinutes(timer.minutes)}</p>
      <div className="row">
        <Button
          main={guess === undefined}
          busy={doing.busy}
          onPress={() => void doing.run(() => stop())}
          shortcut="timer"
        >
          {tell('timer.stop')}
        </Button>
        <Button busy={doing.busy} pressed={asking === 'other'} onPress={() => ask('other')}>
          {tell('timer.other')}
        </Button>
        <Button busy={doing.busy} pressed={asking === 'drop'} onPress={() => ask('drop')}>
          {tell('timer.drop')}
        </Button>
      </div>
      {guess === undefined ? null : (
        <div className="timer-ask">
          <p className="timer-forgotten">{tell('timer.forgotten', { guess: { minutes: guess } })}</p>
          <Button main busy={doing.busy} onPress={() => void doing.run(() => stop(guess))}>
            {tell('timer.guess', { guess: { minutes: guess } })}
          </Button>
        </div>
      )}
      {asking === 'other' ? (
        <OtherTime
          first={guess}
          busy={doing.busy}
          wrong={doing.refused?.message}
          onStop={(minutes) => void doing.run(() => stop(minutes))}
        />
      ) : (
        <Refusal sentence={doing.refused?.message} />
      )}
      {asking === 'drop' ? (
        <div className="timer-ask">
          <p>{tell('timer.drop.sure')}</p>
          <Button busy={doing.busy} onPress={() => void doing.run(drop)}>
            {tell('timer.drop.yes')}
          </Button>
          <Button onPress={() => setAsking(undefined)}>{tell('timer.leave')}</Button>
        </div>
      ) : null}
    </section>
  )
}

type OtherProps = {
  first: number | undefined
  busy: boolean
  wrong: string | undefined
  onStop: (minutes: string) => void
}

/** The time it really took, where the timer ran on or was started late. */
function OtherTime({ first, busy, wrong, onStop }: OtherProps) {
  const tell = useTell()
  const [typed, setTyped] = useState(first === undefined ? '' : printMinutes(first))
  const form = useRef<HTMLFormElement>(null)
  useEffect(() => form.current?.querySelector('input')?.focus(), [])
  const write = (event: FormEvent) => {
    event.preventDefault()
    onStop(typed)
  }
  return (
    <form ref={form} className="timer-ask" onSubmit={write}>
      <TextField
        label={tell('timer.other.label')}
        help={wrong === undefined ? tell('times.log.help') : undefined}
        value={typed}
        wrong={wrong}
        onChange={setTyped}
      />
      <Button main type="submit" busy={busy}>
        {tell('timer.other.write')}
      </Button>
    </form>
  )
}

/** When it was started, by the clock on the wall; with the day, unless that is today. */
function useSince(startedAt: string): string {
  const { reader } = useHouse()
  const tell = useTell()
  const at = new Date(startedAt)
  const time = momentFormat(reader.locale, { hour: 'numeric', minute: '2-digit' }).format(at)
  if (at.toDateString() === new Date().toDateString()) return tell('timer.since', { time })
  const two = (n: number) => String(n).padStart(2, '0')
  const day = printDate(`${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`, reader.locale)
  return tell('timer.since.day', { day, time })
}
