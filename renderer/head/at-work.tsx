import { useEffect, useState, useSyncExternalStore } from 'react'
import type { PhraseCode } from '../../core/words/phrase.ts'
import { Button } from '../parts/button.tsx'
import { useHouse, useTell } from '../workroom.tsx'

/** What is done sooner is not spoken of, ms. */
const SOON = 700

/** Work that takes long, wherever she went meanwhile: how far it is, and a way to stop it. */
export function AtWork() {
  const { workroom } = useHouse()
  const tell = useTell()
  const running = useSyncExternalStore(workroom.hearRunning, workroom.running)
  const [now, setNow] = useState(() => performance.now())
  const waiting = running.some(({ since }) => since + SOON > now)
  useEffect(() => {
    if (!waiting) return
    const timer = setTimeout(() => setNow(performance.now()), SOON)
    return () => clearTimeout(timer)
  }, [waiting])
  const long = running.filter(({ name, since }) => name !== 'lay.best' && since + SOON <= now)
  return long.map(({ job, name, done, stop }) => (
    <section key={job} className="timer" aria-label={tell(`jobs.${name}` as PhraseCode)}>
      <p className="timer-what">
        <strong>{tell(`jobs.${name}` as PhraseCode)}</strong>
      </p>
      <progress value={done} max={1} aria-label={tell(`jobs.${name}` as PhraseCode)} />
      <Button onPress={stop}>{tell('jobs.stop')}</Button>
    </section>
  ))
}
