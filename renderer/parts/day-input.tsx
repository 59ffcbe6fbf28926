import { useRef, useState } from 'react'
import { Refusal } from '../../core/words/refusal.ts'
import { say } from '../../core/words/say.ts'
import { formOfDay, readTypedDay, writeDay } from '../../core/words/typed-day.ts'
import { useHouse, useTell } from '../workroom.tsx'
import { todayHere } from './today.ts'

type Props = {
  id: string
  said: string
  /** `YYYY-MM-DD`, or nothing. */
  value: string
  onChange: (day: string) => void
  required: boolean
  invalid: boolean
}

/**
 * A day, typed and shown as the workroom's region writes it: a browser's own field for days goes by the language of
 * the browser. What cannot be read keeps its form from being sent, with the sentence why.
 */
export function DayInput({ id, said, value, onChange, required, invalid }: Props) {
  const { reader } = useHouse()
  const tell = useTell()
  const [typed, setTyped] = useState<string>()
  const [left, setLeft] = useState(false)
  const written = useRef<HTMLInputElement>(null)
  const calendar = useRef<HTMLInputElement>(null)
  const shown = typed ?? (/^\d{4}-\d{2}-\d{2}$/.test(value) ? writeDay(value, reader.locale) : value)
  const read = (text: string): { day: string } | { refused: string } => {
    try {
      return { day: text.trim() === '' ? '' : readTypedDay(text, reader.locale, todayHere()) }
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      return { refused: say(error.phrase, reader) }
    }
  }
  const take = (text: string) => {
    const found = read(text)
    written.current?.setCustomValidity('refused' in found ? found.refused : '')
    setTyped(text)
    setLeft(false)
    if ('day' in found) onChange(found.day)
  }
  const leave = () => {
    setLeft(true)
    if (typed !== undefined && 'day' in read(typed)) setTyped(undefined)
  }
  const wrong = typed === undefined ? undefined : read(typed)
  const refused = left && wrong !== undefined && 'refused' in wrong ? wrong.refused : undefined
  return (
    <>
      <div className="day-input">
        <input
          ref={written}
          id={id}
          value={shown}
          required={required}
          autoComplete="off"
          placeholder={formOfDay(reader.locale, tell('day.letters'))}
          aria-describedby={said}
          aria-invalid={invalid || refused !== undefined}
          onChange={(event) => take(event.target.value)}
          onBlur={leave}
        />
        <button
          type="button"
          aria-label={tell('day.pick')}
          title={tell('day.pick')}
          onClick={() => calendar.current?.showPicker()}
        >
          <svg viewBox="0 0 16 16" aria-hidden="true">
            <path d="M1.5 3.5h13v11h-13zM1.5 6.5h13M5 1.5v3M11 1.5v3" />
          </svg>
        </button>
        <input
          ref={calendar}
          type="date"
          className="day-calendar"
          tabIndex={-1}
          aria-hidden="true"
          value={value}
          onChange={(event) => {
            written.current?.setCustomValidity('')
            setTyped(undefined)
            onChange(event.target.value)
          }}
        />
      </div>
      {refused === undefined ? null : (
        <p className="wrong" role="alert">
          {refused}
        </p>
      )}
    </>
  )
}
