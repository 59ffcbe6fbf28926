import { type FormEvent, useEffect, useRef } from 'react'
import { printMinutes } from '../../core/words/time.ts'
import { Button } from '../parts/button.tsx'
import { TextField } from '../parts/field.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import type { Time } from './logged.ts'

type Props = { time: Time; steps: string; onChanged: () => void; onClose: () => void }

/** A logged time opened: to be put right, taken back, or kept from teaching. */
export function TimeForm({ time, steps, onChanged, onClose }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const written = printMinutes(time.minutes)
  const [minutes, setMinutes, forgetMinutes] = useHalfFilled(`minutes ${time.id}`, written)
  const [day, setDay, forgetDay] = useHalfFilled(`day ${time.id}`, time.day)
  const [note, setNote, forgetNote] = useHalfFilled(`note ${time.id}`, time.note)
  const form = useRef<HTMLFormElement>(null)
  useEffect(() => {
    form.current?.scrollIntoView({ block: 'nearest' })
    form.current?.querySelector('input')?.focus()
  }, [])
  const { id, revision } = time
  const done = async (work: () => Promise<unknown>) => {
    if (!(await doing.run(work))) return
    leave()
    onChanged()
  }
  const leave = () => {
    for (const forget of [forgetMinutes, forgetDay, forgetNote]) forget()
    onClose()
  }
  const keep = (event: FormEvent) => {
    event.preventDefault()
    // What stands in the field was rounded to the minute: left as it is, it changes nothing.
    const changes = { ...(minutes === written ? {} : { minutes }), day, note }
    void done(() => workroom.ask('time.change', { id, revision, ...changes }))
  }
  const act = (name: 'setAside' | 'takeUp' | 'remove') => (
    <Button busy={doing.busy} onPress={() => void done(() => workroom.ask(`time.${name}`, { id, revision }))}>
      {tell(`times.list.${name}`)}
    </Button>
  )
  const { message, field } = doing.refused ?? {}
  const wrong = field === 'minutes' ? message : undefined
  return (
    <form
      ref={form}
      className="stack"
      aria-label={tell('times.list.form', { steps })}
      onSubmit={keep}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose()
      }}
    >
      <p>
        <strong>{steps}</strong>
      </p>
      <div className="columns">
        <TextField
          label={tell('times.log.spent')}
          help={wrong === undefined ? tell('times.log.help') : undefined}
          value={minutes}
          wrong={wrong}
          onChange={setMinutes}
        />
        <TextField label={tell('times.list.day')} type="date" value={day} onChange={setDay} />
        <TextField label={tell('times.list.note')} value={note} onChange={setNote} />
      </div>
      <Refusal sentence={wrong === undefined ? message : undefined} />
      <div className="between">
        <div className="row">
          <Button main type="submit" busy={doing.busy}>
            {tell('times.list.keep')}
          </Button>
          <Button onPress={leave}>{tell('times.list.leave')}</Button>
        </div>
        <div className="row">
          {act(time.asideAt === null ? 'setAside' : 'takeUp')}
          {act('remove')}
        </div>
      </div>
    </form>
  )
}
