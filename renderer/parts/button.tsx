import type { ReactNode } from 'react'
import { Button as AriaButton } from 'react-aria-components'

type Props = {
  children: ReactNode
  main?: boolean
  busy?: boolean
  type?: 'button' | 'submit'
  onPress?: () => void
}

/** Something the maker does. The one she most likely wants is `main`. */
export function Button({ children, main = false, busy = false, type = 'button', onPress }: Props) {
  return (
    <AriaButton
      className={main ? 'button main' : 'button'}
      type={type}
      isDisabled={busy}
      {...(onPress === undefined ? {} : { onPress })}
    >
      {children}
    </AriaButton>
  )
}
