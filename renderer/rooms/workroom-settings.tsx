import { useState } from 'react'
import { Button } from '../parts/button.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { useLedTo } from '../parts/led-to.ts'
import { Refusal } from '../parts/refusal.tsx'
import { At } from '../settings/at.tsx'
import { Mark } from '../settings/emblem.tsx'
import { changesOf, type Settings, type Typed, type Usual, written } from '../settings/form.ts'
import { LookRound } from '../settings/look-round.tsx'
import { WorkMoney } from '../settings/money.tsx'
import { Notions } from '../settings/notions.tsx'
import { Papers } from '../settings/papers.tsx'
import { People } from '../settings/people.tsx'
import { ON_PAGE } from '../settings/place.ts'
import { Safekeeping } from '../settings/safekeeping.tsx'
import { TakeOut } from '../settings/take-out.tsx'
import { Threads } from '../settings/threads.tsx'
import { Year } from '../settings/year.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

/** What the maker sets once: what stands on her papers, and what her work costs. */
export function WorkroomSettings({ onKept }: { onKept: () => void }) {
  const tell = useTell()
  const { value, refused, reload } = useQuery('settings.get', {})
  const [told, setTold] = useState(false)
  useLedTo(ON_PAGE)
  if (value === undefined) return <Refusal sentence={refused} />
  const kept = (form: boolean) => {
    setTold(form)
    reload()
    onKept()
  }
  return (
    <div className="stack">
      <SettingsForm
        key={value.revision}
        {...value}
        said={told ? tell('screen.settings.kept') : ''}
        onKept={() => kept(true)}
      />
      <At sheet="mark">
        <Mark revision={value.revision} onKept={() => kept(false)} />
      </At>
      <At sheet="people">
        <People />
      </At>
      <At sheet="safekeeping">
        <Safekeeping onRestored={onKept} />
      </At>
      <At sheet="takeOut">
        <TakeOut />
      </At>
      <At sheet="lookRound">
        <LookRound onEntered={onKept} />
      </At>
    </div>
  )
}

type Props = { settings: Settings; revision: number; usual: Usual; said: string; onKept: () => void }

function SettingsForm({ settings, revision, usual, said, onKept }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const [typed, setTyped, forget] = useHalfFilled<Typed>('settings', () => written(settings))
  const doing = useDoing()
  const form = {
    typed,
    set: (changes: Partial<Typed>) => setTyped((before) => ({ ...before, ...changes })),
    wrongAt: (place: string) => (doing.refused?.field === place ? doing.refused.message : undefined),
  }
  const keep = () =>
    doing
      .run(() => workroom.ask('settings.set', { revision, changes: changesOf(typed) }))
      .then((done) => {
        if (!done) return
        forget()
        onKept()
      })
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault()
        void keep()
      }}
    >
      <h1>{tell('screen.room.workroom')}</h1>
      <At sheet="papers">
        <Papers form={form} />
      </At>
      <At sheet="money">
        <WorkMoney form={form} />
      </At>
      <At sheet="year">
        <Year form={form} />
      </At>
      <At sheet="threads">
        <Threads form={form} usual={usual} />
      </At>
      <At sheet="notions">
        <Notions form={form} />
      </At>
      <Refusal sentence={doing.refused?.message} />
      <div className="keep-foot">
        <Button main type="submit" busy={doing.busy}>
          {tell('screen.settings.keep')}
        </Button>
        <span role="status" className="done">
          {said}
        </span>
      </div>
    </form>
  )
}
