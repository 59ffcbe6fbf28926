import type { FormEvent } from 'react'
import { Acts } from '../parts/acts.tsx'
import { Button } from '../parts/button.tsx'
import { TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useTyped } from '../parts/typed.ts'
import { useDayOff } from '../plan/day-off.ts'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import { CallOff } from './call-off.tsx'
import type { Followed } from './logged.ts'
import type { MoneyOf } from './money.tsx'

type Props = {
  commission: Followed
  money: MoneyOf | undefined
  onChanged: (commission: Followed) => void
}

/** The days a commission is due and worn, its note, and the way to call it off. */
export function Days({ commission, money, onChanged }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const dayOff = useDayOff()
  const { id, revision, dueDay, eventDay, note, state } = commission
  const { typed, field, forget } = useTyped({ due: dueDay ?? '', worn: eventDay ?? '', note })
  const changed = typed.due !== (dueDay ?? '') || typed.worn !== (eventDay ?? '') || typed.note !== note
  const off = state === 'open' ? dayOff(typed.due) : undefined
  const keep = (event: FormEvent) => {
    event.preventDefault()
    const days = { dueDay: typed.due || null, eventDay: typed.worn || null }
    void doing.run(async () => {
      const asked = { id, revision, ...days, note: typed.note }
      const { commission: next } = await workroom.ask('commission.change', asked)
      forget()
      onChanged(next)
    })
  }
  return (
    <div className="stack">
      <form className="days beside-field" aria-label={tell('life.days.title')} onSubmit={keep}>
        <TextField label={tell('life.days.due')} type="date" {...field('due')} />
        <TextField label={tell('life.days.worn')} type="date" {...field('worn')} />
        <TextField label={tell('life.days.note')} {...field('note')} />
        <Button main={changed} type="submit" busy={doing.busy || !changed}>
          {tell('life.days.keep')}
        </Button>
      </form>
      {off === undefined ? null : <p>{off}</p>}
      <Refusal sentence={doing.refused?.message} />
      {state !== 'open' || money === undefined ? null : (
        <Acts
          plain
          acts={[
            {
              ...{ id: 'cancel', words: tell('life.cancel') },
              form: (close) => (
                <CallOff commission={commission} money={money} close={close} onDone={onChanged} />
              ),
            },
          ]}
        />
      )}
    </div>
  )
}
