import { type ReactNode, useState } from 'react'
import { printLength, readLength } from '../../core/words/length.ts'
import { useHouse, useTell } from '../workroom.tsx'
import { TextField } from './field.tsx'

/** A length in the workroom's unit, that may be nothing or less than nothing. */
export function Millimetres({
  label,
  value,
  onChange,
  mark,
}: {
  label: string
  value: number
  onChange: (mm: number) => void
  mark?: ReactNode
}) {
  const { reader } = useHouse()
  const tell = useTell()
  const [text, setText] = useState(value === 0 ? '0' : printLength(value, reader.unit, reader.locale))
  const [wrong, setWrong] = useState<string>()
  return (
    <TextField
      label={label}
      mark={mark}
      value={text}
      wrong={wrong}
      onChange={(next) => {
        setText(next)
        try {
          const less = next.trim().startsWith('-') || next.trim().startsWith('−')
          const bare = next.trim().replace(/^[-−]/, '')
          const mm = bare === '0' ? 0 : readLength(bare, reader.unit)
          onChange(less ? -mm : mm)
          setWrong(undefined)
        } catch {
          setWrong(tell('own.screen.noLength'))
        }
      }}
    />
  )
}
