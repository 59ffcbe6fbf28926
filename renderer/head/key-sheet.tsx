import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components'
import { KEYS, type KeyName, OF_THE_WINDOW } from '../../core/words/keys.ts'
import { PLACES } from '../../core/words/places.ts'
import { Button } from '../parts/button.tsx'
import { useTell } from '../workroom.tsx'
import { useKeyNames } from './keys.tsx'

/** All keys on one sheet, by what they do. */
export function KeySheet({ open, onOpen }: { open: boolean; onOpen: (open: boolean) => void }) {
  const tell = useTell()
  const shown = useKeyNames()
  const does = (name: KeyName): string => {
    const place = /^place(\d)$/.exec(name)?.[1]
    if (place === undefined) return tell(`keys.${name as Exclude<KeyName, `place${number}`>}`)
    return tell('keys.place', { place: tell(`screen.room.${PLACES[Number(place) - 1]!}`) })
  }
  const names = (Object.keys(KEYS) as KeyName[]).filter(
    (name) => window.ellwand !== undefined || !OF_THE_WINDOW.includes(name),
  )
  return (
    <ModalOverlay className="over" isOpen={open} onOpenChange={onOpen} isDismissable>
      <Modal className="over-sheet">
        <Dialog className="stack">
          <Heading slot="title" level={2}>
            {tell('keys.title')}
          </Heading>
          <p className="quiet">{tell('keys.about')}</p>
          <table className="keys">
            <thead>
              <tr>
                <th scope="col">{tell('keys.column.does')}</th>
                <th scope="col">{tell('keys.column.key')}</th>
              </tr>
            </thead>
            <tbody>
              {names.map((name) => (
                <tr key={name}>
                  <td>{does(name)}</td>
                  <td>
                    <kbd>{shown(name)}</kbd>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          <p className="quiet">{tell('keys.everywhere')}</p>
          <div>
            <Button onPress={() => onOpen(false)}>{tell('keys.close')}</Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  )
}
