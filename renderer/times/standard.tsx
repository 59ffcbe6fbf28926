import type { FormEvent } from 'react'
import { Refusal as Refused } from '../../core/words/refusal.ts'
import { say } from '../../core/words/say.ts'
import { readMinutes } from '../../core/words/time.ts'
import { Button } from '../parts/button.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import { type Rate, writtenRate } from './figures.ts'

/** The standard of one kind of work, to write over; emptied, it is the common one again. */
export function Standard({ rate, onKept }: { rate: Rate; onKept: () => void }) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const written = writtenRate(rate.standard, reader.locale)
  const [typed, setTyped, forget] = useHalfFilled(`standard ${rate.id}`, written)
  const names = { work: say(rate.name, reader), per: rate.per }
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    if (typed === written) return
    const kept = await doing.run(async () => {
      const minutes = typed.trim() === '' ? null : sayingRefusals(() => readMinutes(typed))
      const { settings, revision } = await workroom.ask('settings.get', {})
      await workroom.ask('settings.set', { revision, changes: { ways: waysWith(rate, minutes, settings) } })
    })
    if (!kept) return
    forget()
    onKept()
  }
  const sayingRefusals = <T,>(read: () => T): T => {
    try {
      return read()
    } catch (error) {
      throw error instanceof Refused ? new Error(say(error.phrase, reader)) : error
    }
  }
  return (
    <form className="standard" onSubmit={(event) => void keep(event)}>
      <span className="field">
        <input
          type="text"
          inputMode="decimal"
          autoComplete="off"
          aria-label={tell('times.standard.label', names)}
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
        />
      </span>
      <span className="quiet">{tell('times.standard.per', names)}</span>
      {typed === written ? null : (
        <Button type="submit" busy={doing.busy} label={tell('times.standard.keepFor', names)}>
          {tell('times.standard.keep')}
        </Button>
      )}
      {rate.set ? <span className="quiet standard-own">{tell('times.standard.own')}</span> : null}
      <Refusal sentence={doing.refused?.message} />
    </form>
  )
}

type Settings = { ways: { perMinute: Record<string, number>; minutes: Record<string, number> } }

/** The group of settings that holds this standard, with the one entry changed. A stitch is kept as stitches a minute. */
function waysWith({ id, perMetre }: Rate, minutes: number | null, { ways }: Settings) {
  const group = perMetre === null ? 'minutes' : 'perMinute'
  const { [id]: _, ...others } = ways[group]
  if (minutes === null) return { [group]: others }
  return { [group]: { ...others, [id]: perMetre === null ? minutes : perMetre / minutes } }
}
