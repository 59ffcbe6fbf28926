import type { PhraseCode } from '../../core/words/phrase.ts'
import { SelectField, TextField } from '../parts/field.tsx'
import { useTell } from '../workroom.tsx'
import type { Form } from './form.ts'

type Props = {
  form: Form
  id: string
  label?: string | undefined
  help?: string | undefined
  placeholder?: string
  /** Where the workroom would refuse it. */
  at?: string
}

/** One setting that is typed. */
export function Typing({ form: { typed, set, wrongAt }, id, label, help, placeholder, at }: Props) {
  const tell = useTell()
  return (
    <TextField
      name={id}
      label={label ?? tell(`screen.settings.${id}` as PhraseCode)}
      value={typed.text[id] ?? ''}
      onChange={(text) => set({ text: { ...typed.text, [id]: text } })}
      help={help}
      placeholder={placeholder}
      wrong={at === undefined ? undefined : wrongAt(`changes.${at}`)}
    />
  )
}

/** One setting that is chosen. */
export function Choosing({
  form: { typed, set },
  id,
  options,
}: Props & { options: readonly { id: string; name: string }[] }) {
  const tell = useTell()
  return (
    <SelectField
      label={tell(`screen.settings.${id}` as PhraseCode)}
      value={typed.text[id] ?? ''}
      onChange={(to) => set({ text: { ...typed.text, [id]: to } })}
      options={options}
    />
  )
}
