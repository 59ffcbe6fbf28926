import { useState } from 'react'
import { printMinutes } from '../../core/words/time.ts'
import { Button } from '../parts/button.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'
import { At } from './at.tsx'
import { DaysOff } from './days-off.tsx'
import { type Given, isUnentered, type Person } from './person.ts'
import { PersonForm } from './person-form.tsx'
import { useWeekdays } from './weekdays.ts'

/** Who works here with the hours of each day, and the days on which nobody does. */
export function People() {
  const { value, refused, reload } = useQuery('people.list', {})
  if (value === undefined) return <Refusal sentence={refused} />
  return (
    <section className="sheet stack people">
      <Bench people={value.people} onChanged={reload} />
      <At sheet="daysOff">
        <div className="stack">
          <DaysOff people={value.people} away={value.away} onChanged={reload} />
        </div>
      </At>
    </section>
  )
}

function Bench({ people, onChanged }: { people: readonly Person[]; onChanged: () => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  /** Id of the person whose form is open, or `new`. */
  const [open, setOpen] = useHalfFilled<string | undefined>('person', undefined)
  const alone = people.every(isUnentered)
  const named = (person: Person) => (person.name === '' ? tell('people.myself') : person.name)
  const add = async (given: Given) => {
    // The maker stays when the first helper is entered: until then nobody but she stood in the list, unwritten.
    for (const one of people.filter(isUnentered)) {
      const { skills, week, handCap } = one
      await workroom.ask('person.add', { name: named(one), skills: [...skills], week: [...week], handCap })
    }
    await workroom.ask('person.add', given)
  }
  const change = async (person: Person, given: Given) =>
    isUnentered(person)
      ? workroom.ask('person.add', given)
      : workroom.ask('person.change', { id: person.id, revision: person.revision, person: given })
  const done = () => {
    setOpen(undefined)
    onChanged()
  }
  return (
    <>
      <h2>{tell('people.title')}</h2>
      <p className="quiet">{tell(alone ? 'people.alone' : 'people.about')}</p>
      <ul className="entries">
        {people.map((person) => (
          <li key={person.id}>
            {open === person.id ? (
              <PersonForm
                person={{ ...person, name: named(person) }}
                onKeep={(given) => change(person, given)}
                onDone={done}
                onLeave={() => setOpen(undefined)}
              />
            ) : (
              <One
                person={person}
                name={named(person)}
                only={people.length === 1}
                onOpen={() => setOpen(person.id)}
                onRetired={onChanged}
              />
            )}
          </li>
        ))}
      </ul>
      {open === 'new' ? (
        <PersonForm person={undefined} onKeep={add} onDone={done} onLeave={() => setOpen(undefined)} />
      ) : (
        <div>
          <Button onPress={() => setOpen('new')}>{tell('people.add')}</Button>
        </div>
      )}
    </>
  )
}

type OneProps = { person: Person; name: string; only: boolean; onOpen: () => void; onRetired: () => void }

function One({ person, name, only, onOpen, onRetired }: OneProps) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [sure, setSure] = useState(false)
  const { id, revision, skills, handCap } = person
  const facts = [
    useHoursSaid(person),
    skills.map((skill) => tell(`price.skill.${skill}`)).join(', '),
    ...(handCap === null ? [] : [tell('people.cap', { time: printMinutes(handCap) })]),
  ]
  const retire = () =>
    doing
      .run(() => workroom.ask('person.retire', { id, revision }))
      .then((done) => (done ? onRetired() : setSure(false)))
  return (
    <div className="person">
      <div>
        <p>
          <strong>{name}</strong>
        </p>
        {facts.map((fact) => (
          <p key={fact} className="quiet">
            {fact}
          </p>
        ))}
        <Refusal sentence={doing.refused?.message} />
      </div>
      {sure ? (
        <div className="row">
          <p>{tell('people.off.sure', { name })}</p>
          <Button busy={doing.busy} onPress={() => void retire()}>
            {tell('people.off.yes', { name })}
          </Button>
          <Button onPress={() => setSure(false)}>{tell('people.leave')}</Button>
        </div>
      ) : (
        <div className="row">
          <Button label={tell('people.changeFor', { name })} onPress={onOpen}>
            {tell('people.change')}
          </Button>
          {only ? null : (
            <Button label={tell('people.offFor', { name })} onPress={() => setSure(true)}>
              {tell('people.off')}
            </Button>
          )}
        </div>
      )}
    </div>
  )
}

/** The hours of a week and of its days: alike days next to each other are said together. */
function useHoursSaid({ week }: Person): string {
  const tell = useTell()
  const names = useWeekdays('short')
  const runs: { from: number; to: number; minutes: number }[] = []
  week.forEach((minutes, day) => {
    const before = runs.at(-1)
    if (before !== undefined && before.minutes === minutes) before.to = day
    else runs.push({ from: day, to: day, minutes })
  })
  const days = runs
    .filter(({ minutes }) => minutes > 0)
    .map(({ from, to, minutes }) => {
      const when = from === to ? names[from]! : `${names[from]}–${names[to]}`
      return `${when} ${printMinutes(minutes)}`
    })
  if (days.length === 0) return tell('people.hours.none')
  const minutes = week.reduce((sum, one) => sum + one, 0)
  return tell('people.hours', { hours: { minutes }, days: days.join(', ') })
}
