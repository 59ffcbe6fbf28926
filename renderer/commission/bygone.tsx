import { useEffect, useRef, useState } from 'react'
import { printDayShort } from '../../core/words/dates.ts'
import { printMoney } from '../../core/words/money.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { useForWhom } from '../parts/for-whom.ts'
import { useInView } from '../parts/in-view.ts'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { sentenceOf, useHouse, useTell } from '../workroom.tsx'

type Listed = OutputOf<'commissions.list'>['commissions'][number]
type Row = { of: Listed; garment: Listed['garments'][number] }

/** As in `life.css`: a row is no higher, whatever its words. */
const ROW_PX = 44
/** Commissions asked for at once. */
const PAGE = 200

/** Everything that is delivered or called off, the newest first: as much of it is there as she scrolls to. */
export function Bygone() {
  const { reader } = useHouse()
  const tell = useTell()
  const forWhom = useForWhom()
  const body = useRef<HTMLTableSectionElement>(null)
  const { first, last } = useInView(body, ROW_PX)
  const { rows, all, refused } = useBygone(last)
  if (rows.length === 0) return <Refusal sentence={refused} />
  const shown = rows.slice(first, last)
  const empty = (count: number) =>
    count === 0 ? null : (
      <tr>
        <td colSpan={4} style={{ height: count * ROW_PX, padding: 0 }} />
      </tr>
    )
  return (
    <section className="stack">
      <h2>{tell('screen.commission.bygone')}</h2>
      <Refusal sentence={refused} />
      <table className="at-a-glance bygone" aria-rowcount={all ? rows.length + 1 : -1}>
        <thead>
          <tr aria-rowindex={1}>
            <th scope="col">{tell('paper.fact.commission')}</th>
            <th scope="col">{tell('screen.commission.garment')}</th>
            <th scope="col">{tell('screen.commission.became')}</th>
            <th scope="col" className="amount">
              {tell('life.money.agreed')}
            </th>
          </tr>
        </thead>
        <tbody ref={body}>
          {empty(first)}
          {shown.map(({ of, garment }, i) => (
            <tr key={garment.id} aria-rowindex={first + i + 2}>
              <td>
                <a href={addressOf('commissions', of.id)}>{of.number}</a>
              </td>
              <td>{forWhom([garment], of.customer)}</td>
              <td>
                {tell(of.state === 'cancelled' ? 'life.cancelled.short' : 'times.commission.deliveredShort')}{' '}
                {printDayShort(of.cancelledDay ?? of.deliveredDay ?? of.day, reader.locale)}
              </td>
              <td className="amount">
                {of.garments[0] === garment ? printMoney(of.agreed, reader.locale) : ''}
              </td>
            </tr>
          ))}
          {empty(rows.length - first - shown.length)}
        </tbody>
      </table>
    </section>
  )
}

/** The rows so far, a page more whenever she comes near the end of them. */
function useBygone(wanted: number) {
  const { workroom, turn } = useHouse()
  const [found, setFound] = useState<{ turn: number; rows: Row[]; all: boolean }>({
    turn,
    rows: [],
    all: false,
  })
  const [refused, setRefused] = useState<string>()
  const oldest = useRef<string>(undefined)
  const current = found.turn === turn ? found : { turn, rows: [], all: false }
  const { rows, all } = current
  const lacks = !all && wanted + PAGE > rows.length
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is there so far is what the next page is put to
  useEffect(() => {
    if (!lacks) return
    let here = true
    const before = rows.length === 0 ? undefined : oldest.current
    workroom
      .ask('commissions.list', { most: PAGE, ...(before === undefined ? {} : { before }) })
      .then(({ commissions }) => {
        if (!here) return
        oldest.current = commissions[0]?.id ?? oldest.current
        setFound({ turn, rows: [...rows, ...rowsOf(commissions)], all: commissions.length < PAGE })
      })
      .catch((error: unknown) => here && setRefused(sentenceOf(error)))
    return () => {
      here = false
    }
  }, [workroom, turn, lacks, rows.length])
  return { rows, all, refused }
}

const rowsOf = (commissions: readonly Listed[]): Row[] =>
  [...commissions]
    .reverse()
    .filter(({ state }) => state !== 'open')
    .flatMap((of) => of.garments.map((garment) => ({ of, garment })))
