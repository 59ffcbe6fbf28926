import type { ReactNode } from 'react'
import { SCREENS, whereIs } from '../../core/words/places.ts'
import { Button } from '../parts/button.tsx'
import { goBack } from '../router.ts'
import { useUndoing } from '../undo/undoing.tsx'
import { useTell } from '../workroom.tsx'

type Props = {
  path: string
  onKeys: () => void
  /** What else can be done from everywhere. */
  children: ReactNode
}

/** Under the head: the way back out of one thing, and the screens of the place she is in. */
export function Strip({ path, onKeys, children }: Props) {
  const tell = useTell()
  const undoing = useUndoing()
  const { place, screen, exact } = whereIs(path)
  const screens = SCREENS[place]
  return (
    <div className="strip">
      {exact ? null : (
        <Button onPress={() => goBack(`#/${screen}`)} shortcut="back">
          ‹ {tell('rooms.back')}
        </Button>
      )}
      <nav className="screens" aria-label={tell('rooms.within', { place: tell(`screen.room.${place}`) })}>
        {exact && screens.length === 1
          ? null
          : screens.map(({ at, name }) => (
              <a
                key={at}
                href={`#/${at}`}
                {...(at === screen ? { 'aria-current': exact ? ('page' as const) : ('true' as const) } : {})}
              >
                {tell(name)}
              </a>
            ))}
      </nav>
      {undoing.last === undefined ? null : (
        <Button
          busy={undoing.busy}
          onPress={undoing.undo}
          shortcut="undo"
          label={tell('undo.last', { what: undoing.last })}
        >
          {tell('undo.undo')}
          <span className="undo-what">: {undoing.last}</span>
        </Button>
      )}
      <Button onPress={onKeys} shortcut="help">
        {tell('keys.title')}
      </Button>
      {children}
    </div>
  )
}
