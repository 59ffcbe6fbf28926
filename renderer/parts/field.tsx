import { type ReactNode, useId } from 'react'
import { DayInput } from './day-input.tsx'

type Shared = {
  label: string
  help?: string | undefined
  wrong?: string | undefined
  /** A question mark that stands beside the label. */
  mark?: ReactNode
}

/** A label, what is entered under it, what helps, and what is wrong with it in a sentence. */
function Frame({
  label,
  help,
  wrong,
  mark,
  children,
}: Shared & { children: (ids: { id: string; said: string }) => ReactNode }) {
  const id = useId()
  return (
    <div className="field">
      {mark === undefined ? (
        <label htmlFor={id}>{label}</label>
      ) : (
        <div className="labelled">
          <label htmlFor={id}>{label}</label>
          {mark}
        </div>
      )}
      {children({ id, said: `${id}-said` })}
      <div id={`${id}-said`}>
        {wrong === undefined ? null : (
          <p className="wrong" role="alert">
            {wrong}
          </p>
        )}
        {help === undefined ? null : <p className="help">{help}</p>}
      </div>
    </div>
  )
}

type TextProps = Shared & {
  value: string
  onChange: (value: string) => void
  placeholder?: string | undefined
  required?: boolean
  /** By which it is found on its page. */
  name?: string
  /** What is usually entered, to choose from; anything else may be written too. */
  usual?: readonly string[]
  type?: 'text' | 'email' | 'tel' | 'date' | 'time' | 'password'
  onFocus?: () => void
}

/** One line of text; of type `date` a day, `YYYY-MM-DD`, and empty while there is none. */
export function TextField({
  value,
  onChange,
  placeholder,
  required = false,
  type = 'text',
  onFocus,
  name,
  usual,
  ...shared
}: TextProps) {
  return (
    <Frame {...shared}>
      {({ id, said }) =>
        type === 'date' ? (
          <DayInput {...{ id, said, value, onChange, required, invalid: shared.wrong !== undefined }} />
        ) : (
          <>
            <input
              id={id}
              type={type}
              value={value}
              placeholder={placeholder}
              required={required}
              autoComplete="off"
              aria-describedby={said}
              aria-invalid={shared.wrong !== undefined}
              {...(name === undefined ? {} : { name })}
              {...(usual === undefined ? {} : { list: `${id}-usual` })}
              {...(onFocus === undefined ? {} : { onFocus })}
              onChange={(event) => onChange(event.target.value)}
            />
            {usual === undefined ? null : (
              <datalist id={`${id}-usual`}>
                {usual.map((one) => (
                  <option key={one} value={one} />
                ))}
              </datalist>
            )}
          </>
        )
      }
    </Frame>
  )
}

/** Several lines of text. */
export function TextArea({
  value,
  onChange,
  ...shared
}: Shared & { value: string; onChange: (value: string) => void }) {
  return (
    <Frame {...shared}>
      {({ id, said }) => (
        <textarea
          id={id}
          rows={Math.max(2, value.split('\n').length)}
          value={value}
          aria-describedby={said}
          aria-invalid={shared.wrong !== undefined}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Frame>
  )
}

type SelectProps = Shared & {
  value: string
  onChange: (value: string) => void
  options: readonly { id: string; name: string }[]
}

/** One of a few, each by its name; `value` is the id of what is picked. */
export function SelectField({ value, onChange, options, ...shared }: SelectProps) {
  return (
    <Frame {...shared}>
      {({ id, said }) => (
        <select
          id={id}
          value={value}
          aria-describedby={said}
          aria-invalid={shared.wrong !== undefined}
          onChange={(event) => onChange(event.target.value)}
        >
          {options.map((option) => (
            <option key={option.id} value={option.id}>
              {option.name}
            </option>
          ))}
        </select>
      )}
    </Frame>
  )
}
