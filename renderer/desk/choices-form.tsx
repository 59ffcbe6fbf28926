import { memo, useCallback } from 'react'
import { printLength } from '../../core/words/length.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { WordHelp } from '../help/help.tsx'
import { wordOfChoice } from '../help/topics.ts'
import { SelectField, TextField } from '../parts/field.tsx'
import { useHouse, useTell } from '../workroom.tsx'

type Value = number | string | boolean
/** Choices that the maker made, by their ids, lengths in mm; what is not in it is worked out from the body. */
export type Chosen = Record<string, Value>
type Construction = OutputOf<'construction.describe'>
type Choice = Construction['choices'][number]

type Props = {
  construction: Construction
  /** What each choice comes to at present. */
  used: Readonly<Record<string, Value>>
  chosen: Chosen
  onChange: (change: (chosen: Chosen) => Chosen) => void
  wrong: { id: string; sentence: string } | undefined
}

/** A construction's choices as its own data describes them, those set most often first. */
export const ChoicesForm = memo(({ construction, used, chosen, onChange, wrong }: Props) => {
  const tell = useTell()
  const set = useCallback(
    (id: string, value: Value | undefined) =>
      onChange(({ [id]: _, ...rest }) => (value === undefined ? rest : { ...rest, [id]: value })),
    [onChange],
  )
  const field = (choice: Choice) => (
    <ChoiceField
      key={choice.id}
      choice={choice}
      used={used[choice.id]}
      chosen={chosen[choice.id]}
      onChange={set}
      wrong={wrong?.id === choice.id ? wrong.sentence : undefined}
    />
  )
  const often = construction.often.flatMap((id) => construction.choices.filter((choice) => choice.id === id))
  const rest = construction.choices.filter(({ id }) => !construction.often.includes(id))
  return (
    <>
      {often.map(field)}
      {rest.length === 0 ? null : (
        <details open={rest.some(({ id }) => id === wrong?.id) || undefined}>
          <summary>{tell('screen.desk.moreChoices', { count: rest.length })}</summary>
          <div className="stack">{rest.map(field)}</div>
        </details>
      )}
    </>
  )
})

type FieldProps = {
  choice: Choice
  used: Value | undefined
  chosen: Value | undefined
  onChange: (id: string, value: Value | undefined) => void
  wrong: string | undefined
}

const ChoiceField = memo(({ choice, used, chosen, onChange, wrong }: FieldProps) => {
  const { reader } = useHouse()
  const tell = useTell()
  const word = wordOfChoice(choice.id)
  const mark = word === undefined ? undefined : <WordHelp word={word} />
  const shared = { label: choice.label, help: choice.help, wrong, mark }
  if (choice.kind === 'length') {
    const worked = typeof used === 'number' ? printLength(used, reader.unit, reader.locale) : undefined
    return (
      <TextField
        {...shared}
        value={chosen === undefined ? '' : String(chosen)}
        placeholder={worked === undefined ? undefined : tell('screen.desk.worksOut', { value: worked })}
        onChange={(text) => onChange(choice.id, text.trim() === '' ? undefined : text)}
      />
    )
  }
  const options = optionsOf(choice, tell)
  const value = chosen ?? used ?? ('default' in choice ? choice.default : undefined)
  return (
    <SelectField
      {...shared}
      value={String(value ?? options[0]!.id)}
      options={options}
      onChange={(id) => onChange(choice.id, chosenOf(choice, id))}
    />
  )
})

function optionsOf(choice: Choice, tell: ReturnType<typeof useTell>): { id: string; name: string }[] {
  if (choice.kind === 'yesNo')
    return [true, false].map((value) => ({ id: String(value), name: tell(value ? 'paper.yes' : 'paper.no') }))
  if (choice.kind === 'count')
    return choice.options.map((count) => ({ id: String(count), name: String(count) }))
  if (choice.kind === 'option') {
    const labels = 'labels' in choice ? (choice.labels as Record<string, string>) : {}
    return choice.options.map((id) => ({ id, name: labels[id] ?? id }))
  }
  return []
}

const chosenOf = (choice: Choice, id: string): Value =>
  choice.kind === 'yesNo' ? id === 'true' : choice.kind === 'count' ? Number(id) : id
