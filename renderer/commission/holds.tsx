import type { ReactNode } from 'react'
import { say } from '../../core/words/say.ts'
import { Button } from '../parts/button.tsx'
import { leadTo } from '../parts/lead-to.ts'
import { addressOf } from '../router.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { Garment } from './logged.ts'

/** Parts of the commission's page that what holds a garment up leads to, by the ids of their headings. */
export const MONEY = 'commission-money'
export const FITTINGS = 'commission-fittings'
/** @param garmentId of the garment whose cloth it is */
export const clothOf = (garmentId: string): string => `cloth-${garmentId}`

/** What has to come before a garment goes on, and where each of it is seen to. */
export function Holds({ garment, name }: { garment: Garment; name: string }) {
  const { reader } = useHouse()
  const tell = useTell()
  // Washing is a step like any other, with a box of its own to tick.
  const waits = garment.waits.filter(({ code }) => code !== 'waits.wash')
  if (waits.length === 0) return null
  const there = (words: string, id: string) => (
    <Button label={tell('life.doing', { doing: words, what: name })} onPress={() => leadTo(id)}>
      {words}
    </Button>
  )
  const away = (words: string, ...to: Parameters<typeof addressOf>) => (
    <a className="button" href={addressOf(...to)}>
      {words}
    </a>
  )
  const seenTo: Record<string, () => ReactNode> = {
    'waits.deposit': () => there(tell('waits.go.money'), MONEY),
    'waits.toBuy': () => away(tell('today.go.waits.toBuy'), 'cloths', 'shopping'),
    'waits.unpromised': () => there(tell('waits.go.cloth'), clothOf(garment.id)),
    'waits.unpromised.coming': () => there(tell('waits.go.cloth'), clothOf(garment.id)),
    'waits.coming': () => away(tell('waits.go.cloths'), 'cloths'),
    'waits.coming.noDay': () => away(tell('waits.go.cloths'), 'cloths'),
    'waits.fitting': () => there(tell('waits.go.fittings'), FITTINGS),
    'waits.fittingNotBooked': () => there(tell('waits.go.fittings'), FITTINGS),
    'waits.fittingNotWritten': () => there(tell('waits.go.fittings'), FITTINGS),
  }
  return (
    <div className="holds">
      <strong>{tell('waits.holds')}</strong>
      <ul className="plain">
        {waits.map((wait) => (
          <li key={wait.code} className="between">
            <span>{say(wait, reader)}</span>
            {seenTo[wait.code]?.()}
          </li>
        ))}
      </ul>
    </div>
  )
}
