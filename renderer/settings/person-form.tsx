import { type FormEvent, useEffect, useRef } from 'react'
import { Button } from '../parts/button.tsx'
import { TextField } from '../parts/field.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { useDoing, useTell } from '../workroom.tsx'
import { type Given, type Person, readHours, SKILLS, type TypedPerson, writtenHours } from './person.ts'
import { useWeekdays, useWeekOrder } from './weekdays.ts'

type Props = {
  /** Somebody who is here already; nobody, to enter one. */
  person: Person | undefined
  onKeep: (given: Given) => Promise<unknown>
  onDone: () => void
  onLeave: () => void
}

const NOBODY: TypedPerson = { name: '', skills: SKILLS, week: ['', '', '', '', '', '', ''], handCap: '' }

/** Name, hours of each day, kinds of work, and how long the hands hold out. */
export function PersonForm({ person, onKeep, onDone, onLeave }: Props) {
  const tell = useTell()
  const doing = useDoing()
  const order = useWeekOrder()
  const days = useWeekdays('long')
  const [typed, setTyped, forget] = useHalfFilled(`person ${person?.id ?? 'new'}`, () =>
    person === undefined ? NOBODY : written(person),
  )
  const form = useRef<HTMLFormElement>(null)
  useEffect(() => form.current?.querySelector('input')?.focus(), [])
  const set = (changes: Partial<TypedPerson>) => setTyped((before) => ({ ...before, ...changes }))
  const hours = (text: string): number => {
    const minutes = sayingHours(text)
    if (minutes > 24 * 60) throw new Error(tell('people.hours.tooMany'))
    return minutes
  }
  const sayingHours = (text: string): number => {
    try {
      return readHours(text)
    } catch {
      throw new Error(tell('people.hours.unreadable', { text }))
    }
  }
  const given = (): Given => {
    const { name, skills, week, handCap } = typed
    if (skills.length === 0) throw new Error(tell('people.noSkill'))
    const most = hours(handCap)
    return { name, skills: [...skills], week: week.map(hours), handCap: most === 0 ? null : most }
  }
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    if (!(await doing.run(async () => onKeep(given())))) return
    forget()
    onDone()
  }
  return (
    <form
      ref={form}
      className="stack person-form"
      aria-label={
        person === undefined ? tell('people.form.add') : tell('people.form.change', { name: person.name })
      }
      onSubmit={(event) => void keep(event)}
      onKeyDown={(event) => event.key === 'Escape' && onLeave()}
    >
      <div className="narrow-field">
        <TextField
          label={tell('people.name')}
          value={typed.name}
          required
          onChange={(name) => set({ name })}
        />
      </div>
      <fieldset className="grouped">
        <legend>{tell('people.week')}</legend>
        <p className="quiet">{tell('people.week.help')}</p>
        <div className="person-week">
          {order.map((i) => (
            <TextField
              key={i}
              label={tell('people.day', { day: days[i]! })}
              value={typed.week[i]!}
              onChange={(text) => set({ week: typed.week.with(i, text) })}
            />
          ))}
        </div>
      </fieldset>
      <fieldset className="grouped">
        <legend>{tell('people.skills')}</legend>
        <div className="columns">
          {SKILLS.map((skill) => (
            <Tick
              key={skill}
              wanted
              name={tell(`price.skill.${skill}`)}
              done={typed.skills.includes(skill)}
              onChange={(does) =>
                set({ skills: SKILLS.filter((one) => (one === skill ? does : typed.skills.includes(one))) })
              }
            />
          ))}
        </div>
      </fieldset>
      <div className="narrow-field">
        <TextField
          label={tell('people.handCap')}
          help={tell('people.handCap.help')}
          value={typed.handCap}
          onChange={(handCap) => set({ handCap })}
        />
      </div>
      <Refusal sentence={doing.refused?.message} />
      <div className="row">
        <Button main type="submit" busy={doing.busy}>
          {tell('people.keep')}
        </Button>
        <Button
          onPress={() => {
            forget()
            onLeave()
          }}
        >
          {tell('people.leave')}
        </Button>
      </div>
    </form>
  )
}

const written = ({ name, skills, week, handCap }: Person): TypedPerson => ({
  ...{ name, skills },
  week: week.map(writtenHours),
  handCap: handCap === null ? '' : writtenHours(handCap),
})
