import { type FormEvent, type ReactNode, useEffect, useRef, useState } from 'react'
import { Button as AriaButton } from 'react-aria-components'
import type { Final } from '../undo/final.ts'
import { NotUndone } from '../undo/not-undone.tsx'
import { useDoing, useTell } from '../workroom.tsx'
import { Button } from './button.tsx'
import { KeptApart, useForgetAll, useHalfFilledIn } from './kept.tsx'
import { Refusal } from './refusal.tsx'

/** One of several things that can be done with an entry; `form` stands open until it calls `close`. */
export type Act = {
  id: string
  words: string
  /** What it does, where the words on it alone do not say. */
  label?: string
  form: (close: () => void) => ReactNode
}

type ActsProps = {
  acts: readonly Act[]
  plain?: boolean
  /** The id of the one that stands open when she comes, where the address asks for it. */
  opened?: string | undefined
}

/** Things one can do here: a row of buttons, and below it the form of the one that was pressed, or is half filled. */
export function Acts({ acts, plain = false, opened }: ActsProps) {
  const halfFilled = useHalfFilledIn()
  const [open, setOpen] = useState(() => opened ?? acts.find((act) => halfFilled(nameOf(act)))?.id)
  const buttons = useRef(new Map<string, HTMLButtonElement>())
  const panel = useRef<HTMLDivElement>(null)
  const before = useRef(open)
  useEffect(() => {
    // What is open already when she comes does not draw her away from where she is.
    if (open !== undefined && open !== before.current)
      panel.current?.querySelector<HTMLElement>('input, select, textarea, button')?.focus()
    before.current = open
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
          <KeptApart name={nameOf(act)}>{act.form(close)}</KeptApart>
        </div>
      )}
    </>
  )
}

/** By what a form is told from the others of its screen. */
const nameOf = ({ label, words }: Act): string => label ?? words

type FormProps = {
  /** What the form is for, said to whoever cannot see where it stands. */
  label: string
  keep: string
  /** What is done; a refusal of it is shown, and the form stays. */
  work: () => Promise<unknown>
  close: () => void
  /** What comes once it is kept; it closes, if nothing does. */
  then?: () => void
  /** What it does, where that cannot be undone: it is said. */
  final?: Final
  children: ReactNode
}

/** A form that opens where it is needed, and closes once its work is done. */
export function ActForm({ label, keep, work, close, then = close, final, children }: FormProps) {
  const tell = useTell()
  const doing = useDoing()
  const forget = useForgetAll()
  const submit = async (event: FormEvent) => {
    event.preventDefault()
    if (!(await doing.run(work))) return
    forget()
    then()
  }
  const leave = () => {
    forget()
    close()
  }
  return (
    <form className="stack" aria-label={label} onSubmit={(event) => void submit(event)}>
      {children}
      {final === undefined ? null : <NotUndone act={final} />}
      <Refusal sentence={doing.refused?.message} />
      <div className="row">
        <Button main type="submit" busy={doing.busy}>
          {keep}
        </Button>
        <Button onPress={leave}>{tell('times.list.leave')}</Button>
      </div>
    </form>
  )
}
