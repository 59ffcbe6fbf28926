import type { ReactNode } from 'react'
import { Button as AriaButton } from 'react-aria-components'

type Props = {
  children: ReactNode
  main?: boolean
  busy?: boolean
  type?: 'button' | 'submit'
  onPress?: () => void
  /** For a button that is down or up. */
  pressed?: boolean
  /** What it does, where the words on it alone do not say. */
  label?: string
}

/** Something the maker does. The one she most likely wants is `main`. */
export function Button({
  children,
  main = false,
  busy = false,
  type = 'button',
  onPress,
  pressed,
  label,
}: Props) {
  return (
    <AriaButton
      className={main ? 'button main' : 'button'}
      type={type}
      isDisabled={busy}
      {...(pressed === undefined ? {} : { 'aria-pressed': pressed })}
      {...(label === undefined ? {} : { 'aria-label': label })}
      {...(onPress === undefined ? {} : { onPress })}
    >
      {children}
    </AriaButton>
  )
}
