import type { ReactNode } from 'react'
import { Button as AriaButton } from 'react-aria-components'
import type { KeyName } from '../../core/words/keys.ts'
import { ShownKey } from '../head/keys.tsx'

type Props = {
  children: ReactNode
  main?: boolean
  busy?: boolean
  type?: 'button' | 'submit'
  onPress?: () => void
  /** For a button that is down or up. */
  pressed?: boolean
  /** For a button that opens something below it, and closes it. */
  expanded?: boolean
  /** What it does, where the words on it alone do not say. */
  label?: string
  /** The key that does the same; it is shown on the button, and finds it. */
  shortcut?: KeyName
}

/** Something the maker does. The one she most likely wants is `main`. */
export function Button({
  children,
  main = false,
  busy = false,
  type = 'button',
  onPress,
  pressed,
  expanded,
  label,
  shortcut,
}: Props) {
  return (
    <AriaButton
      className={main ? 'button main' : 'button'}
      type={type}
      isDisabled={busy}
      {...(pressed === undefined ? {} : { 'aria-pressed': pressed })}
      {...(expanded === undefined ? {} : { 'aria-expanded': expanded })}
      {...(label === undefined ? {} : { 'aria-label': label })}
      {...(onPress === undefined ? {} : { onPress })}
      {...(shortcut === undefined ? {} : { 'data-key': shortcut })}
    >
      {children}
      {shortcut === undefined ? null : <ShownKey name={shortcut} />}
    </AriaButton>
  )
}
