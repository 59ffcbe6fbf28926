import { type ReactNode, useState } from 'react'
import { keyOfPlace } from '../../core/words/keys.ts'
import { PLACES, whereIs } from '../../core/words/places.ts'
import { toFind } from '../find/find.tsx'
import { goBack, goTo } from '../router.ts'
import { useUndoing } from '../undo/undoing.tsx'
import { useTell } from '../workroom.tsx'
import { KeySheet } from './key-sheet.tsx'
import { type Deeds, keepHere, pressed, useKeys } from './keys.tsx'
import { Strip } from './strip.tsx'

/** The strip under the head, and what the keys do wherever she is. */
export function Doing({ path, children }: { path: string; children: ReactNode }) {
  const tell = useTell()
  const undoing = useUndoing()
  const [sheet, setSheet] = useState(false)
  /** What is told where a key has nothing to do, and where that was. */
  const [said, setSaid] = useState({ path: '', words: '' })
  const orSay = (done: boolean, nothing: 'print' | 'timer' | 'keep') =>
    setSaid(done ? { path: '', words: '' } : { path, words: tell(`keys.nothing.${nothing}`) })
  const places = Object.fromEntries(PLACES.map((place, i) => [keyOfPlace(i), () => goTo(place)]))
  const deeds: Deeds = {
    ...places,
    command: toFind,
    find: toFind,
    help: () => setSheet(true),
    back: () => goBack(`#/${whereIs(path).screen}`),
    new: () => goTo('desk'),
    keep: () => orSay(keepHere(), 'keep'),
    print: () => orSay(pressed('print'), 'print'),
    undo: undoing.undo,
    timer: () => orSay(pressed('timer'), 'timer'),
  }
  useKeys(deeds)
  const words = undoing.said !== '' ? undoing.said : said.path === path ? said.words : ''
  return (
    <>
      <Strip path={path} onKeys={() => setSheet(true)}>
        {children}
      </Strip>
      <p role="status" className={words === '' ? 'unseen' : 'timer-said'}>
        {words}
      </p>
      <KeySheet open={sheet} onOpen={setSheet} />
    </>
  )
}
