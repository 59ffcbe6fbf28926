import type { FormEvent } from 'react'
import { numberFormat } from '../../core/words/formats.ts'
import { printLength } from '../../core/words/length.ts'
import { readNumber } from '../../core/words/typed-number.ts'
import { Button } from '../parts/button.tsx'
import { TextField } from '../parts/field.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import { type GarmentAccount, isUsed } from './account.tsx'

type Props = { one: GarmentAccount; name: string; onWritten: () => void }

/** Fields for the cloth and thread a garment took; an empty one is not known. */
export function Took({ one, name, onWritten }: Props) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const { cloth, handThread, machineThread } = one.account
  const metres = (of: number | null) =>
    of === null
      ? ''
      : numberFormat(reader.locale, { maximumFractionDigits: 1, useGrouping: false }).format(of)
  const [typed, setTyped, forget] = useHalfFilled(`took ${one.id}`, {
    cloth: cloth.actual === null ? '' : printLength(cloth.actual, reader.unit, reader.locale),
    handThread: metres(handThread.actual),
    machineThread: metres(machineThread.actual),
  })
  const read = (text: string) => {
    if (text.trim() === '') return null
    const number = readNumber(text.replace(/\s*m\s*$/, ''))
    if (!Number.isFinite(number)) throw new Error(tell('refusal.metres.unreadable', { text }))
    return number
  }
  const write = async (event: FormEvent) => {
    event.preventDefault()
    const written = await doing.run(() =>
      workroom.ask('garment.took', {
        garmentId: one.id,
        cloth: typed.cloth.trim() === '' ? null : typed.cloth,
        handThread: read(typed.handThread),
        machineThread: read(typed.machineThread),
      }),
    )
    if (!written) return
    forget()
    onWritten()
  }
  const field = (id: keyof typeof typed, help?: string) => (
    <TextField
      label={tell(`times.took.${id}`)}
      help={help}
      value={typed[id]}
      onChange={(text) => setTyped((before) => ({ ...before, [id]: text }))}
    />
  )
  return (
    <form
      className="took"
      aria-label={tell('times.took.title', { garment: name })}
      onSubmit={(event) => void write(event)}
    >
      {field('cloth', tell('times.took.cloth.help'))}
      {isUsed(handThread) ? field('handThread') : null}
      {isUsed(machineThread) ? field('machineThread') : null}
      <Button type="submit" busy={doing.busy}>
        {tell('times.took.keep')}
      </Button>
      <Refusal sentence={doing.refused?.message} />
    </form>
  )
}
