import { useState } from 'react'
import { printDate } from '../../core/words/dates.ts'
import { momentFormat } from '../../core/words/formats.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Refused } from '../bridge/ask.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'

type Book = NonNullable<OutputOf<'damaged.describe'>['damaged']>
type Props = Book & { sample: boolean; onLook: () => void; onMended: () => void }

/** What the maker sees of a book that is damaged or gone: what is left of it, and what she can go on with. */
export function Damaged({ sample, onLook, onMended, ...book }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [chosen, setChosen] = useState<'saved' | 'backup'>()
  const goOn = async (choice: 'saved' | 'backup') => {
    setChosen(choice)
    const done = await doing.run(async () => {
      await workroom.ask('damaged.goOn', { with: choice })
      const entered = await workroom.bridge.enter(sample ? 'sample' : 'own')
      if (!entered.ok) throw new Refused(entered.error)
    })
    if (done) onMended()
  }
  const { path, missing, parts, backup } = book
  const nothing = parts.every(({ saved }) => saved === 0)
  return (
    <main className="narrow stack">
      <h1>{tell(missing ? 'damaged.missing.title' : 'damaged.title')}</h1>
      <p>{tell(missing ? 'damaged.missing.about' : 'damaged.about', { path })}</p>
      {missing ? null : <p className="quiet">{tell('damaged.copyFirst')}</p>}
      <Refusal sentence={doing.refused?.message} />
      {missing ? null : (
        <section className="sheet stack">
          <h2>{tell('damaged.saved.title')}</h2>
          <Saved {...book} />
          {nothing ? null : (
            <div className="row">
              <Button busy={doing.busy && chosen === 'saved'} onPress={() => void goOn('saved')}>
                {tell('damaged.goOn.saved')}
              </Button>
              <Button onPress={onLook}>{tell('damaged.look')}</Button>
            </div>
          )}
        </section>
      )}
      <section className="sheet stack">
        <h2>{tell('damaged.backup.title')}</h2>
        {backup === null ? (
          <p>{tell('damaged.backup.none')}</p>
        ) : (
          <>
            <Against {...book} at={backup.at} />
            <div className="row">
              <Button
                main={nothing}
                busy={doing.busy && chosen === 'backup'}
                onPress={() => void goOn('backup')}
              >
                {tell('damaged.goOn.backup')}
              </Button>
            </div>
          </>
        )}
      </section>
    </main>
  )
}

/** How much could be saved, part by part, and what does not fit any more. */
function Saved({ parts, fromBackup, standIns, apart }: Book) {
  const tell = useTell()
  const saved = parts.reduce((sum, one) => sum + one.saved, 0)
  const lost = parts.some((one) => one.lost === null)
    ? null
    : parts.reduce((sum, one) => sum + (one.lost ?? 0), 0)
  if (saved === 0) return <p>{tell('damaged.saved.nothing')}</p>
  const how = lost === null ? 'perhaps' : lost > 0 ? 'some' : 'all'
  return (
    <>
      <p>
        <strong>{tell(`damaged.saved.${how}`, { saved, lost: lost ?? 0 })}</strong>
      </p>
      <table className="ledger">
        <caption>{tell('damaged.parts')}</caption>
        <thead>
          <tr>
            <th scope="col">{tell('damaged.column.part')}</th>
            <th scope="col" className="amount">
              {tell('damaged.column.saved')}
            </th>
            <th scope="col" className="amount">
              {tell('damaged.column.lost')}
            </th>
          </tr>
        </thead>
        <tbody>
          {parts.map((one) => (
            <tr key={one.part}>
              <th scope="row">{tell(`damaged.part.${one.part}`)}</th>
              <td className="amount">{one.saved}</td>
              <td className={one.lost === 0 ? 'amount' : 'amount under'}>
                {one.lost ?? tell('damaged.lost.unknown')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {fromBackup > 0 ? <p>{tell('damaged.saved.fromBackup', { fromBackup })}</p> : null}
      {standIns > 0 ? <p>{tell('damaged.saved.standIns', { standIns })}</p> : null}
      {apart === null ? null : <p>{tell('damaged.saved.apart', { apart: apart.rows, path: apart.path })}</p>}
      {lost === 0 ? null : <p>{tell('damaged.saved.numbers')}</p>}
    </>
  )
}

/** The newest sound copy, held against what could be saved. */
function Against({ counted, missing, at }: Book & { at: string }) {
  const { reader } = useHouse()
  const tell = useTell()
  const time = momentFormat(reader.locale, { timeStyle: 'short' }).format(new Date(at))
  const columns = missing
    ? (['what', 'there'] as const)
    : (['what', 'here', 'there', 'onlyHere', 'onlyThere'] as const)
  return (
    <>
      <p>{tell('damaged.backup.when', { day: printDate(at.slice(0, 10), reader.locale), time })}</p>
      <table className="ledger">
        <caption>{tell('damaged.backup.against')}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col" className={column === 'what' ? '' : 'amount'}>
                {tell(`damaged.column.${column}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {counted.map((one) => (
            <tr key={one.what}>
              {columns.map((column) =>
                column === 'what' ? (
                  <th key={column} scope="row">
                    {tell(`safe.what.${one.what}`)}
                  </th>
                ) : (
                  <td key={column} className="amount">
                    {one[column]}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}

/** Above every room, while what was saved is only looked at. */
export function SavedStrip({ onBack }: { onBack: () => void }) {
  const tell = useTell()
  return (
    <p className="between strip" role="status">
      {tell('damaged.looking')}
      <Button onPress={onBack}>{tell('damaged.back')}</Button>
    </p>
  )
}
