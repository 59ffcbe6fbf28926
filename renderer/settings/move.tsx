import { useState } from 'react'
import type { OutputOf } from '../../core/workroom.ts'
import { ActForm } from '../parts/acts.tsx'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useHouse, useQuery, useTell } from '../workroom.tsx'

type Place = OutputOf<'place.look'>['place']

/** Puts the book into another folder; it is opened there at once. */
export function Move({ close, onMoved }: { close: () => void; onMoved: () => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const [folder, setFolder] = useState<string>()
  const [far, setFar] = useState('')
  const { value: house } = useQuery('workroom.describe', {})
  const { value, refused } = useQuery('place.look', folder === undefined ? {} : { folder })
  if (house === undefined || (value === undefined && refused === undefined)) return null
  const shown = folder ?? value?.place.folder ?? ''
  return (
    <ActForm
      label={tell('safe.move')}
      keep={tell('safe.move.keep')}
      close={close}
      then={onMoved}
      work={async () => {
        await workroom.ask('store.move', { folder: shown }, ({ done }) =>
          setFar(tell('safe.percent', { percent: Math.round(100 * done) })),
        )
        const entered = await workroom.bridge.enter(house.kind === 'sample' ? 'sample' : 'own')
        if (!entered.ok) throw new Error(entered.error.message)
      }}
    >
      {value === undefined ? null : (
        <p className="quiet">{tell('safe.move.about', { folder: value.present })}</p>
      )}
      <TextField label={tell('safe.move.folder')} value={shown} onChange={setFolder} required />
      {value === undefined ? null : <Within place={value.place} go={setFolder} />}
      <Refusal sentence={refused} />
      <p role="status">{far}</p>
    </ActForm>
  )
}

/** The folders in a folder, to go into one or up, and whether it will do. */
function Within({ place, go }: { place: Place; go: (folder: string) => void }) {
  const tell = useTell()
  const { above, folder, folders, writable, room, cares } = place
  const mark = folder.includes('\\') ? '\\' : '/'
  const inside = (name: string) => `${folder.replace(/[\\/]$/, '')}${mark}${name}`
  const into =
    folders.length === 0 ? tell('safe.place.intoNone') : tell('safe.place.into', { count: folders.length })
  return (
    <>
      <div className="row beside-field">
        <SelectField
          label={tell('safe.place.inside')}
          value=""
          onChange={(name) => name !== '' && go(inside(name))}
          options={[{ id: '', name: into }, ...folders.map((name) => ({ id: name, name }))]}
        />
        {above === null ? null : <Button onPress={() => go(above)}>{tell('safe.place.above')}</Button>}
      </div>
      <p className="quiet">
        {writable ? tell('safe.place.room', { free: Math.floor(room / 1e6) }) : tell('safe.place.shut')}
      </p>
      {cares.map((care) => (
        <p key={care}>
          <strong>{tell(`safe.care.${care}`)}</strong>
        </p>
      ))}
    </>
  )
}
