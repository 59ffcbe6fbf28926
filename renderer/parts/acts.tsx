import { type FormEvent, type ReactNode, useEffect, useRef, useState } from 'react'
import { Button as AriaButton } from 'react-aria-components'
import { useDoing, useTell } from '../workroom.tsx'
import { Button } from './button.tsx'
import { Refusal } from './refusal.tsx'

export type Act = {
  id: string
  words: string
  /** What it does, where the words on it alone do not say. */
  label?: string
  form: (close: () => void) => ReactNode
}

/** Things one can do here: a row of buttons, and below it the form of the one that was pressed. */
export function Acts({ acts, plain = false }: { acts: readonly Act[]; plain?: boolean }) {
  const [open, setOpen] = useState<string>()
  const buttons = useRef(new Map<string, HTMLButtonElement>())
  const panel = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (open !== undefined)
      panel.current?.querySelector<HTMLElement>('input, select, textarea, button')?.focus()
  }, [open])
  const close = () => {
    if (open !== undefined) buttons.current.get(open)?.focus()
    setOpen(undefined)
  }
  const act = acts.find(({ id }) => id === open)
  return (
    <>
      <div className="row acts">
        {acts.map(({ id, words, label }) => (
          <AriaButton
            key={id}
            ref={(button) => {
              if (button === null) buttons.current.delete(id)
              else buttons.current.set(id, button)
            }}
            className={plain ? 'log-time' : 'button'}
            aria-expanded={id === open}
            {...(label === undefined ? {} : { 'aria-label': label })}
            onPress={() => (id === open ? close() : setOpen(id))}
          >
            {words}
          </AriaButton>
        ))}
      </div>
      {act === undefined ? null : (
        // biome-ignore lint/a11y/noStaticElementInteractions: Escape leaves whatever is open in it
        <div
          key={act.id}
          ref={panel}
          className="act"
          onKeyDown={(event) => {
            if (event.key === 'Escape') close()
          }}
        >
          {act.form(close)}
        </div>
      )}
    </>
  )
}

type FormProps = {
  /** What the form is for, said to whoever cannot see where it stands. */
  label: string
  keep: string
  /** What is done; a refusal of it is shown, and the form stays. */
  work: () => Promise<unknown>
  close: () => void
  /** What comes once it is kept; it closes, if nothing does. */
  then?: () => void
  children: ReactNode
}

/** A form that opens where it is needed, and closes once its work is done. */
export function ActForm({ label, keep, work, close, then = close, children }: FormProps) {
  const tell = useTell()
  const doing = useDoing()
  const submit = async (event: FormEvent) => {
    event.preventDefault()
    if (await doing.run(work)) then()
  }
  return (
    <form className="stack" aria-label={label} onSubmit={(event) => void submit(event)}>
      {children}
      <Refusal sentence={doing.refused?.message} />
      <div className="row">
        <Button main type="submit" busy={doing.busy}>
          {keep}
        </Button>
        <Button onPress={close}>{tell('times.list.leave')}</Button>
      </div>
    </form>
  )
}
