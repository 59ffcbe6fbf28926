import { Checkbox } from 'react-aria-components'

type Props = {
  name: string
  done: boolean
  aside?: string
  disabled?: boolean
  onChange: (done: boolean) => void
}

/** A box to tick, as on the work order, large enough for a hand with chalk on it. */
export function Tick({ name, done, aside = '', disabled = false, onChange }: Props) {
  return (
    <Checkbox className="tick" isSelected={done} isDisabled={disabled} onChange={onChange}>
      <span className="tick-box" aria-hidden="true">
        ✓
      </span>
      <span className="tick-name">{name}</span>
      <span className="quiet">{aside}</span>
    </Checkbox>
  )
}
