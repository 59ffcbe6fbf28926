import { type KeyboardEvent, memo, useState } from 'react'
import { ComboBox, Input, Label, ListBox, ListBoxItem, Popover } from 'react-aria-components'
import { namedSo } from '../../core/words/plain-letters.ts'
import { useTell } from '../workroom.tsx'

/** So many names are shown; whoever looks for another types a letter more. */
const MOST = 40

type Props = {
  label: string
  value: string
  onChange: (id: string) => void
  options: readonly { id: string; name: string }[]
}

/** One of many by its name: any beginnings of its words are typed, without capitals and marks. */
export const PickField = memo(({ label, value, onChange, options }: Props) => {
  const tell = useTell()
  const name = options.find(({ id }) => id === value)?.name ?? ''
  const [typed, setTyped] = useState<string>()
  const found = typed === undefined ? options : options.filter((one) => namedSo(one.name, typed))
  const shown = found.slice(0, MOST)
  const chosen = (id: string | number | null) => {
    setTyped(undefined)
    if (id !== null && id !== value) onChange(String(id))
  }
  /** Enter takes the first that is found, unless the arrows have gone to another. */
  const first = (event: KeyboardEvent<HTMLInputElement>) => {
    const { activeElement } = document
    if (event.key !== 'Enter' || typed === undefined || shown[0] === undefined) return
    if (activeElement?.hasAttribute('aria-activedescendant') !== true) chosen(shown[0].id)
  }
  return (
    <ComboBox
      className="field pick"
      items={shown}
      inputValue={typed ?? name}
      onInputChange={(text) => setTyped(text === name ? undefined : text)}
      selectedKey={value}
      onSelectionChange={chosen}
      menuTrigger="focus"
      allowsEmptyCollection
      onBlur={() => setTyped(undefined)}
    >
      <Label>{label}</Label>
      {/* What she types takes the place of the name, as it does after the Tab key. */}
      <Input onClick={(event) => typed === undefined && event.currentTarget.select()} onKeyDown={first} />
      <Popover className="picked" placement="bottom start">
        <ListBox renderEmptyState={() => <p className="quiet">{tell('screen.pick.none')}</p>}>
          {(option: { id: string; name: string }) => (
            <ListBoxItem id={option.id} textValue={option.name} className="picked-name">
              {option.name}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  )
})
