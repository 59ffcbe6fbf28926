import { type FormEvent, type KeyboardEvent, useEffect, useRef, useState } from 'react'
import { Button as AriaButton } from 'react-aria-components'
import type { InputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { TextField } from '../parts/field.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'

type Props = {
  on: Pick<InputOf<'time.log'>, 'stepIds' | 'garmentId' | 'stage'>
  /** What the time is spent on, as it stands at the step. */
  name: string
  onLogged: (minutes: number, name: string) => void
}

/** The way to write down time at a step or a whole stage: a button, and under the step one field. */
export function LogTime({ on, name, onLogged }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [typed, setTyped, forget] = useHalfFilled(`log ${JSON.stringify(on)}`, '')
  const [day, setDay, forgetDay] = useHalfFilled(`log on ${JSON.stringify(on)}`, '')
  const [open, setOpen] = useState(typed !== '')
  const came = useRef(open)
  const button = useRef<HTMLButtonElement>(null)
  const form = useRef<HTMLFormElement>(null)
  useEffect(() => {
    // A field that is half filled when she comes does not draw her to it.
    if (open && !came.current) form.current?.querySelector('input')?.focus()
    came.current = false
  }, [open])
  const close = () => {
    setOpen(false)
    button.current?.focus()
  }
  const write = async (event: FormEvent) => {
    event.preventDefault()
    await doing.run(async () => {
      const { time } = await workroom.ask('time.log', {
        ...{ ...on, minutes: typed },
        ...(day === '' ? {} : { day }),
      })
      setTyped('')
      setDay('')
      forget()
      forgetDay()
      close()
      onLogged(time.minutes, name)
    })
  }
  const leave = (event: KeyboardEvent) => {
    if (event.key === 'Escape') close()
  }
  return (
    <>
      <AriaButton
        ref={button}
        className="log-time"
        aria-label={tell('times.logFor', { step: name })}
        aria-expanded={open}
        onPress={() => (open ? close() : setOpen(true))}
      >
        {tell('times.log')}
      </AriaButton>
      {open ? (
        <form
          ref={form}
          className="log-form"
          aria-label={tell('times.logFor', { step: name })}
          onSubmit={(event) => void write(event)}
          onKeyDown={leave}
        >
          <TextField
            label={tell('times.log.spent')}
            help={doing.refused === undefined ? tell('times.log.help') : undefined}
            value={typed}
            wrong={doing.refused?.message}
            onChange={setTyped}
          />
          <TextField
            label={tell('times.log.day')}
            type="date"
            help={tell('life.deliver.today')}
            value={day}
            onChange={setDay}
          />
          <Button main type="submit" busy={doing.busy}>
            {tell('times.log.write')}
          </Button>
        </form>
      ) : null}
    </>
  )
}
