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
}

/** Something the maker does. The one she most likely wants is `main`. */
export function Button({ children, main = false, busy = false, type = 'button', onPress, pressed }: Props) {
  return (
    <AriaButton
      className={main ? 'button main' : 'button'}
      type={type}
      isDisabled={busy}
      {...(pressed === undefined ? {} : { 'aria-pressed': pressed })}
      {...(onPress === undefined ? {} : { onPress })}
    >
      {children}
    </AriaButton>
  )
}
