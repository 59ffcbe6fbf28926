import { type ReactNode, useState } from 'react'
import { printLength } from '../../core/words/length.ts'
import { printMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import type { Asked } from './lay-room.tsx'
import type { Manner } from './use-lay.ts'

/**
 * Widths as looms and shops have had them, mm: 560 and 686 (narrow linens), 914 and 1143 (a yard, an ell), 1400
 * and 1500 today (common practice).
 */
const WIDTHS = [560, 686, 914.4, 1143, 1400, 1500]

type Ways = OutputOf<'lay.manners'>['manners']
type Cloths = OutputOf<'lay.compare'>['rows']

/** Flat, doubled, torn: the same garment, each with its cost in cloth. */
export function WaysOfLaying({ asked }: { asked: Asked }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const key = JSON.stringify(asked)
  const [found, setFound] = useState<{ for: string; ways: Ways }>()
  const doing = useDoing()
  const compare = () =>
    void doing.run(async () =>
      setFound({ for: key, ways: (await workroom.ask('lay.manners', asked)).manners }),
    )
  return (
    <details onToggle={(event) => event.currentTarget.open && found?.for !== key && compare()}>
      <summary>{tell('screen.lay.ways')}</summary>
      <Refusal sentence={doing.refused?.message} />
      {found?.for === key ? (
        <Trials first={[tell('screen.lay.column.way')]}>
          {found.ways.map((way) => (
            <tr key={way.manner}>
              <td>{tell(`screen.lay.manner.${way.manner}`)}</td>
              <Comes of={way} />
            </tr>
          ))}
        </Trials>
      ) : (
        <Button onPress={compare} busy={doing.busy}>
          {tell('screen.lay.ways')}
        </Button>
      )}
    </details>
  )
}

/** Every cloth in the book, and this one in other widths. */
export function OtherCloths({ asked, manner }: { asked: Asked; manner: Manner }) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const key = JSON.stringify([asked, manner])
  const [found, setFound] = useState<{ for: string; rows: Cloths }>()
  const [done, setDone] = useState(0)
  const doing = useDoing()
  const compare = () =>
    void doing.run(async () => {
      const { rows } = await workroom.ask(
        'lay.compare',
        { ...asked, lay: { manner }, widths: WIDTHS },
        (progress) => setDone(progress.done),
      )
      setFound({ for: key, rows })
    })
  return (
    <details>
      <summary>{tell('screen.lay.others')}</summary>
      <Refusal sentence={doing.refused?.message} />
      {doing.busy ? <progress aria-label={tell('screen.lay.others')} max={1} value={done} /> : null}
      {found?.for === key ? (
        <Trials first={[tell('screen.lay.column.cloth'), tell('screen.lay.column.width')]}>
          {found.rows.map((row) => (
            <tr key={`${row.id} ${row.width}`}>
              <td>{row.name}</td>
              <td className="figure">{printLength(row.width, reader.unit, reader.locale)}</td>
              <Comes of={row} />
            </tr>
          ))}
        </Trials>
      ) : (
        <Button onPress={compare} busy={doing.busy}>
          {tell('screen.lay.compare')}
        </Button>
      )}
    </details>
  )
}

function Trials({ first, children }: { first: string[]; children: ReactNode }) {
  const tell = useTell()
  const columns = ['length', 'buy', 'cost', 'waste'] as const
  return (
    <table>
      <thead>
        <tr>
          {first.map((name) => (
            <th key={name} scope="col">
              {name}
            </th>
          ))}
          {columns.map((column) => (
            <th key={column} scope="col">
              {tell(`screen.lay.column.${column}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>{children}</tbody>
    </table>
  )
}

/** What one trial comes to, or the sentence of why it cannot be. */
function Comes({ of }: { of: Ways[number] | Cloths[number] }) {
  const { reader } = useHouse()
  if ('refused' in of) return <td colSpan={4}>{say(of.refused, reader)}</td>
  return (
    <>
      <td className="figure">{printLength(of.length, reader.unit, reader.locale)}</td>
      <td className="figure">{printLength(of.toBuy, reader.unit, reader.locale)}</td>
      <td className="amount">{printMoney(of.cost, reader.locale)}</td>
      <td className="figure">{Math.round((1 - of.used) * 100)} %</td>
    </>
  )
}
