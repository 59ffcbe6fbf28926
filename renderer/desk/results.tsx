import type { ReactNode } from 'react'
import { printDayShort } from '../../core/words/dates.ts'
import { printLength } from '../../core/words/length.ts'
import { printMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import { Refusal } from '../parts/refusal.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import { FinishedDrawing, OtherLays, PieceDrawings } from './drawings.tsx'
import { FitReport } from './fit-report.tsx'
import { Reasons } from './reasons.tsx'
import { RestsOn } from './rests-on.tsx'
import type { Estimate } from './use-estimate.ts'
import type { Promised } from './use-promise.ts'

type Props = {
  estimate: Estimate | undefined
  refused: string | undefined
  busy: boolean
  promised: Promised
  /** The lay, and what is done about it. */
  lay: (estimate: Estimate) => ReactNode
  /** What stands beside the bill, and what beneath it. */
  children: ReactNode
  beneath: ReactNode
}

/** What comes of the choices: the bill in one line, then pieces, lay, fit, and the reasons for every figure. */
export function Results(props: Props) {
  const { estimate, refused, busy, promised, lay, children, beneath } = props
  const { reader } = useHouse()
  const tell = useTell()
  return (
    <section className="desk-results" aria-label={tell('screen.desk.results')} aria-busy={busy}>
      <Refusal sentence={refused} />
      {estimate === undefined ? null : (
        <>
          <div className="bill">
            <Figure
              name={tell('screen.bill.price')}
              value={printMoney(estimate.price.total, reader.locale)}
            />
            <Figure
              name={tell('screen.bill.cloth')}
              value={printLength(estimate.purchase.toBuy, reader.unit, reader.locale)}
            />
            <Figure
              name={tell('screen.bill.hours')}
              value={printMinutes(hoursOf(estimate).mean)}
              aside={tell('screen.bill.late', { late: { minutes: hoursOf(estimate).p80 } })}
            />
            <PromisedDay promised={promised} />
            <Figure
              name={tell('screen.bill.earned')}
              value={printMoney(estimate.price.earnedPerHour, reader.locale)}
            />
            <Figure
              name={tell('screen.bill.thread')}
              // Each kind rounded up, as the lines of the price are, so that these come to this.
              value={`${estimate.sewing.threads.reduce((sum, { metres }) => sum + Math.ceil(metres), 0)} m`}
            />
            <div className="bill-do">{children}</div>
          </div>
          <RestsOn {...promised} />
          {beneath}
          <Misfits fit={estimate.draft.fit} />
          <FinishedDrawing draft={estimate.draft} />
          {/* Work on a garment that is there already may have no pieces, and so no lay. */}
          {estimate.draft.pieces.length === 0 ? null : (
            <>
              <PieceDrawings draft={estimate.draft} />
              {lay(estimate)}
            </>
          )}
          <OtherLays estimate={estimate} />
          <div className="desk-pair">
            <FitReport draft={estimate.draft} />
            <Reasons estimate={estimate} />
          </div>
        </>
      )}
    </section>
  )
}

/** What does not fit, at once and with what would mend it. */
function Misfits({ fit }: { fit: Estimate['draft']['fit'] }) {
  const { reader } = useHouse()
  const failing = fit.filter(({ status }) => status === 'fails')
  return failing.length === 0 ? null : (
    <ul className="refusal misfits">
      {failing.map(({ id, name, mend }) => (
        <li key={id}>
          {say(name, reader)}: {mend === undefined ? '' : say(mend, reader)}
        </li>
      ))}
    </ul>
  )
}

/** All hours of a garment: its making, and what goes on around it. */
const hoursOf = ({ price, sewing }: Estimate) => price.earning?.hours ?? sewing.total

/** The day that can be promised; grey while it still answers what was wanted before. */
function PromisedDay({ promised: { readyBy, old } }: { promised: Promised }) {
  const { reader } = useHouse()
  const tell = useTell()
  const said =
    readyBy === undefined
      ? tell('weeks.bill.wait')
      : readyBy.day === null
        ? tell('weeks.bill.none')
        : printDayShort(readyBy.day, reader.locale)
  return <Figure name={tell('weeks.bill')} value={said} old={old} />
}

type FigureProps = { name: string; value: string; aside?: string; old?: boolean }

function Figure({ name, value, aside, old = false }: FigureProps) {
  return (
    <dl className={old ? 'old' : ''} aria-busy={old}>
      <dt>{name}</dt>
      <dd>{value}</dd>
      {aside === undefined ? null : <dd className="aside">{aside}</dd>}
    </dl>
  )
}
