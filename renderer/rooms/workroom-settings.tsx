import { Button } from '../parts/button.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Mark } from '../settings/emblem.tsx'
import { changesOf, type Settings, type Typed, type Usual, written } from '../settings/form.ts'
import { WorkMoney } from '../settings/money.tsx'
import { Notions } from '../settings/notions.tsx'
import { Papers } from '../settings/papers.tsx'
import { People } from '../settings/people.tsx'
import { Safekeeping } from '../settings/safekeeping.tsx'
import { TakeOut } from '../settings/take-out.tsx'
import { Threads } from '../settings/threads.tsx'
import { Year } from '../settings/year.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

/** What the maker sets once: what stands on her papers, and what her work costs. */
export function WorkroomSettings({ onKept }: { onKept: () => void }) {
  const { value, refused, reload } = useQuery('settings.get', {})
  if (value === undefined) return <Refusal sentence={refused} />
  const kept = () => {
    reload()
    onKept()
  }
  return (
    <div className="stack">
      <SettingsForm key={value.revision} {...value} onKept={kept} />
      <Mark revision={value.revision} onKept={kept} />
      <People />
      <Safekeeping onRestored={onKept} />
      <TakeOut />
    </div>
  )
}

type Props = { settings: Settings; revision: number; usual: Usual; onKept: () => void }

function SettingsForm({ settings, revision, usual, onKept }: Props) {
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
      <Papers form={form} />
      <WorkMoney form={form} />
      <Year form={form} />
      <Threads form={form} usual={usual} />
      <Notions form={form} />
      <Refusal sentence={doing.refused?.message} />
      <div>
        <Button main type="submit" busy={doing.busy}>
          {tell('screen.settings.keep')}
        </Button>
      </div>
    </form>
  )
}
