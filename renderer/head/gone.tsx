import { useCallback, useEffect, useState, useSyncExternalStore } from 'react'
import { Button } from '../parts/button.tsx'
import { hasMissedRooms } from '../rooms/later.tsx'
import { useHouse, useTell } from '../workroom.tsx'

/** How often it is looked whether the planner answers again, ms. */
const AGAIN = 3000

/** Said wherever she is when nobody answers any more; the page goes on once somebody does. */
export function Gone() {
  const { workroom, changed } = useHouse()
  const tell = useTell()
  const { reached, hearReached, tryAgain } = workroom.reach
  const how = useSyncExternalStore(hearReached, reached)
  const [busy, setBusy] = useState(false)
  const again = useCallback(async () => {
    if (!(await tryAgain())) return
    if (hasMissedRooms()) location.reload()
    else changed()
  }, [tryAgain, changed])
  useEffect(() => {
    if (how === 'here') return
    const timer = setInterval(() => void again(), AGAIN)
    return () => clearInterval(timer)
  }, [how, again])
  useEffect(() => {
    workroom.sayUnreached = (which) => tell(`shell.gone.${which}`)
  }, [workroom, tell])
  if (how === 'here') return null
  const press = async () => {
    setBusy(true)
    await again()
    setBusy(false)
  }
  return (
    <div className="gone refusal" role="alert">
      <p>{tell(`shell.gone.${how}`)}</p>
      <Button busy={busy} onPress={() => void press()}>
        {tell('shell.gone.again')}
      </Button>
    </div>
  )
}
