import { Checkbox } from 'react-aria-components'

type Props = {
  name: string
  done: boolean
  aside?: string
  disabled?: boolean
  /** Something wanted, which is not crossed out like something done. */
  wanted?: boolean
  onChange: (done: boolean) => void
}

/** A box to tick, as on the work order, large enough for a hand with chalk on it. */
export function Tick({ name, done, aside = '', disabled = false, wanted = false, onChange }: Props) {
  return (
    <Checkbox
      className={wanted ? 'tick wanted' : 'tick'}
      isSelected={done}
      isDisabled={disabled}
      onChange={onChange}
    >
      <span className="tick-box" aria-hidden="true">
        ✓
      </span>
      <span className="tick-name">{name}</span>
      <span className="quiet">{aside}</span>
    </Checkbox>
  )
}
