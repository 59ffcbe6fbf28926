import { useEffect, useState } from 'react'
import { printDayShort } from '../../core/words/dates.ts'
import { printLength } from '../../core/words/length.ts'
import { printMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { SelectField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'

/** In what an option differs from the garment on the desk. */
export type Variation = NonNullable<NonNullable<InputOf<'quote.save'>['lines'][number]['options']>[number]>
type Asked = InputOf<'garment.alternatives'>
type Row = OutputOf<'garment.alternatives'>['alternatives'][number]

type Props = {
  asked: Omit<Asked, 'clothIds'>
  /** Cloths of the book, of which one may be tried in the place of the garment's own. */
  cloths: readonly { id: string; name: string }[]
  offered: readonly Variation[]
  onOffer: (offered: Variation[]) => void
}

/** Between the last key and the reckoning, ms. */
const PAUSE = 250

const COLUMNS = ['way', 'cloth', 'hours', 'price', 'earned', 'day', 'offer'] as const

/** The same garment sewn otherwise, on other cloths, lined or not, in one table; what is ticked goes on the quote. */
export function Alternatives({ asked, cloths, offered, onOffer }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const others = cloths.filter(({ id }) => id !== asked.clothId)
  const [chosen, setChosen] = useState<string>()
  const other = others.find(({ id }) => id === chosen) ?? others[0]
  const key = JSON.stringify({ ...asked, clothIds: other === undefined ? [] : [other.id] })
  const [open, setOpen] = useState(false)
  const [rows, setRows] = useState<Row[]>()
  const doing = useDoing()
  const { run } = doing
  // While she types only the last wish is reckoned; the rows before it stay until then.
  useEffect(() => {
    if (!open) return
    let current = true
    const wait = setTimeout(() => {
      void run(async () => {
        const found = await workroom.ask('garment.alternatives', JSON.parse(key) as Asked)
        if (current) setRows(found.alternatives)
      })
    }, PAUSE)
    return () => {
      current = false
      clearTimeout(wait)
    }
  }, [open, key, run, workroom])
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {tell('selling.ways')}
        {offered.length === 0 ? '' : ` · ${tell('selling.ways.offered', { count: offered.length })}`}
      </summary>
      <Refusal sentence={doing.refused?.message} />
      {rows === undefined ? null : (
        <>
          <p className="quiet">{tell('selling.ways.about')}</p>
          {other === undefined ? null : (
            <div className="narrow-field">
              <SelectField
                label={tell('selling.ways.other')}
                value={other.id}
                onChange={setChosen}
                options={others}
              />
            </div>
          )}
          <div className="wide" aria-busy={doing.busy}>
            <table className="ways">
              <thead>
                <tr>
                  {COLUMNS.map((column) => (
                    <th key={column} scope="col" className={isFigure(column) ? 'figure' : ''}>
                      {tell(`selling.ways.column.${column}`)}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {rows.map((row) => (
                  <Way key={JSON.stringify(row.change)} {...{ row, offered, onOffer }} />
                ))}
              </tbody>
            </table>
          </div>
        </>
      )}
    </details>
  )
}

const isFigure = (column: (typeof COLUMNS)[number]): boolean => column !== 'way' && column !== 'offer'

function Way({ row, offered, onOffer }: { row: Row } & Pick<Props, 'offered' | 'onOffer'>) {
  const { reader } = useHouse()
  const tell = useTell()
  const { change, figures, refused } = row
  const name = row.name.map((phrase) => say(phrase, reader)).join(', ')
  const plain = Object.keys(change).length === 0
  const same = (one: Variation) => JSON.stringify(one) === JSON.stringify(change)
  return (
    <tr>
      <th scope="row">
        {name}
        {plain ? <span className="quiet"> · {tell('selling.ways.asked')}</span> : null}
      </th>
      {figures === undefined ? (
        <td colSpan={6}>{refused === undefined ? null : say(refused, reader)}</td>
      ) : (
        <>
          <td className="figure">{printLength(figures.toBuy, reader.unit, reader.locale)}</td>
          <td className="figure">{printMinutes(figures.hours.mean)}</td>
          <td className="figure">{printMoney(figures.total, reader.locale)}</td>
          <td className="figure">{printMoney(figures.earnedPerHour, reader.locale)}</td>
          <td className="figure">
            {figures.doneBy === null ? '–' : printDayShort(figures.doneBy, reader.locale)}
          </td>
          <td>
            {plain ? null : (
              <Tick
                wanted
                name={tell('selling.ways.offer', { way: name })}
                done={offered.some(same)}
                onChange={(wanted) =>
                  onOffer(wanted ? [...offered, change] : offered.filter((one) => !same(one)))
                }
              />
            )}
          </td>
        </>
      )}
    </tr>
  )
}
