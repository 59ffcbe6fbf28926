import { useEffect, useState, useSyncExternalStore } from 'react'
import { Button } from '../parts/button.tsx'
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
  useEffect(() => {
    if (how === 'here') return
    const timer = setInterval(() => void tryAgain().then((back) => back && changed()), AGAIN)
    return () => clearInterval(timer)
  }, [how, tryAgain, changed])
  useEffect(() => {
    workroom.sayUnreached = (which) => tell(`shell.gone.${which}`)
  }, [workroom, tell])
  if (how === 'here') return null
  const again = async () => {
    setBusy(true)
    if (await tryAgain()) changed()
    setBusy(false)
  }
  return (
    <div className="gone refusal" role="alert">
      <p>{tell(`shell.gone.${how}`)}</p>
      <Button busy={busy} onPress={() => void again()}>
        {tell('shell.gone.again')}
      </Button>
    </div>
  )
}
