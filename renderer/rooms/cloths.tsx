import { useState } from 'react'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useTyped } from '../parts/typed.ts'
import { addressOf } from '../router.ts'
import { ClothEntry } from '../stock/cloth-entry.tsx'
import { ClothFields, clothTexts, clothTyped } from '../stock/cloth-fields.tsx'
import { Drawer } from '../stock/drawer.tsx'
import { Lengths } from '../stock/lengths.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'
import { Remnants } from './remnants.tsx'

/** Cloths one can buy, and a form for another. */
export function Cloths() {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { value, refused, reload } = useQuery('cloths.list', {})
  const { value: house } = useQuery('settings.get', {})
  const nothing = clothTexts(undefined, reader)
  const { typed, field, write, forget } = useTyped(nothing)
  const doing = useDoing()
  const [kept, setKept] = useState<{ id: string; name: string }>()
  const add = async () => {
    const currency = house?.settings.rates.currency ?? 'GBP'
    const work = async () => setKept((await workroom.ask('cloth.add', clothTyped(typed, currency))).cloth)
    if (!(await doing.run(work))) return
    write(nothing)
    forget()
    reload()
  }
  return (
    <div className="stack">
      <h1>{tell('screen.room.cloths')}</h1>
      <form
        className="sheet stack"
        onSubmit={(event) => {
          event.preventDefault()
          void add()
        }}
      >
        <h2>{tell('screen.cloth.new')}</h2>
        <ClothFields {...{ field }} refused={doing.refused} />
        <Refusal sentence={doing.refused?.message} />
        <div>
          <Button main type="submit" busy={doing.busy}>
            {tell('screen.cloth.keep')}
          </Button>
        </div>
        <p role="status">
          {kept === undefined ? null : (
            <>
              {tell('cloth.kept', { cloth: kept.name })}{' '}
              <a href={addressOf('desk', undefined, { cloth: kept.id })}>{tell('cloth.kept.quote')}</a>
            </>
          )}
        </p>
      </form>
      <Refusal sentence={refused} />
      {value?.cloths.length === 0 ? <p className="narrow">{tell('guiding.empty.cloths')}</p> : null}
      <ul className="entries bolts">
        {value?.cloths.map((cloth) => (
          <ClothEntry key={cloth.id} {...{ cloth }} onChanged={reload} />
        ))}
      </ul>
      {value === undefined ? null : <Lengths cloths={value.cloths} />}
      <Remnants />
      <Drawer />
    </div>
  )
}
