import { addDays, dayOfNumber } from '../../core/words/dates.ts'
import { dayFormat } from '../../core/words/formats.ts'
import { useHouse, useTell } from '../workroom.tsx'
import { Load } from './load.tsx'
import { dueOf, isLate, type Planned } from './reasons.ts'
import { LEFT, type Scale, scaleOf, type Week, WIDTH } from './scale.ts'

/** Room for the load of the weeks with their days, and for each commission. */
const LOAD = 96
const DAYS = 24
const ROW = 26
const BAR = 12

type Props = { day: string; weeks: readonly Week[]; planned: readonly Planned[] }

/** The coming weeks: above how full they are, beneath from today to its end each commission. */
export function Picture({ day, weeks, planned }: Props) {
  const tell = useTell()
  const scale = scaleOf(weeks, planned)
  const height = LOAD + DAYS + ROW * planned.length + 6
  const last = dayOfNumber(scale.begins + 7 * scale.weeks - 1)
  const total = (of: 'hours' | 'planned') => ({ minutes: weeks.reduce((sum, week) => sum + week[of], 0) })
  const cut = planned.some((one) => [one.p80, dueOf(one)].some((day) => day !== null && scale.beyond(day)))
  return (
    <>
      <svg
        className="plan"
        viewBox={`0 0 ${WIDTH} ${height}`}
        role="img"
        aria-label={tell('weeks.picture', {
          ...{ first: { date: day }, last: { date: addDays(weeks.at(-1)!.begins, 6) } },
          ...{ planned: total('planned'), hours: total('hours') },
          ...{ open: planned.length, late: planned.filter(isLate).length },
        })}
      >
        <Load weeks={weeks} scale={scale} top={18} foot={LOAD} />
        <Grid scale={scale} height={height} />
        <line className="plan-now" x1={scale.x(day)} x2={scale.x(day)} y1={LOAD + DAYS - 4} y2={height} />
        {planned.map((one, row) => (
          <Row key={one.id} one={one} from={day} y={LOAD + DAYS + ROW * row} scale={scale} />
        ))}
      </svg>
      {cut ? <p className="quiet">{tell('weeks.beyond', { last: { date: last } })}</p> : null}
    </>
  )
}

/** A thin line where each week begins, with its day where there is room for it. */
function Grid({ scale, height }: { scale: Scale; height: number }) {
  const { reader } = useHouse()
  const short = dayFormat(reader.locale, { day: 'numeric', month: 'short' })
  const every = Math.ceil(scale.weeks / 13)
  return Array.from({ length: scale.weeks }, (_, week) => week).map((week) => (
    <g key={week}>
      <line className="plan-week" x1={scale.xOfWeek(week)} x2={scale.xOfWeek(week)} y1={LOAD} y2={height} />
      {week % every === 0 ? (
        <text x={scale.xOfWeek(week) + 3} y={LOAD + 15}>
          {short.format(new Date((scale.begins + 7 * week) * 86_400_000))}
        </text>
      ) : null}
    </g>
  ))
}

type RowProps = { one: Planned; from: string; y: number; scale: Scale }

function Row({ one, from, y, scale }: RowProps) {
  const tell = useTell()
  const due = dueOf(one)
  const [start, likely, sure] = [from, one.p50 ?? one.finish, one.p80 ?? one.p50 ?? one.finish]
  const top = y + (ROW - BAR) / 2
  // A day's work is done by its evening.
  const end = (day: string) => scale.x(addDays(day, 1))
  const bar = (className: string, x1: number, x2: number) =>
    x2 <= x1 ? null : <rect className={className} x={x1} y={top} width={x2 - x1} height={BAR} />
  return (
    <g className={isLate(one) ? 'plan-row late' : 'plan-row'}>
      <text className="plan-name" x={0} y={y + ROW / 2 + 4}>
        {short(`${one.number} ${one.garments[0]?.wearer ?? one.customer}`)}
      </text>
      {likely === null || sure === null ? (
        <text x={scale.x(start) + 4} y={y + ROW / 2 + 4}>
          {tell('weeks.never')}
        </text>
      ) : (
        <>
          {bar('plan-likely', scale.x(start), end(likely))}
          {bar('plan-sure', end(likely), end(sure))}
        </>
      )}
      {due === null || scale.beyond(due) ? null : (
        <DueMark x={due < from ? scale.x(from) : end(due)} y={y + ROW / 2} />
      )}
    </g>
  )
}

/** As on a calendar, a stroke through the row, and a point on it so that it is seen upon a bar. */
function DueMark({ x, y }: { x: number; y: number }) {
  return (
    <>
      <line className="plan-due" x1={x} x2={x} y1={y - ROW / 2 + 2} y2={y + ROW / 2 - 2} />
      <circle className="plan-due-point" cx={x} cy={y - ROW / 2 + 4} r={3.5} />
    </>
  )
}

/** As much of a name as stands left of the bars. */
const FITS = Math.floor((LEFT - 8) / 7.6)
const short = (name: string): string => (name.length <= FITS ? name : `${name.slice(0, FITS - 1)}…`)

/** What the marks in the picture mean. */
export function PictureKey() {
  const tell = useTell()
  const rect = (className: string) => <rect className={className} x="1" y="3" width="22" height="12" />
  const marks = [
    ['hours', rect('plan-hours')],
    ['planned', rect('plan-planned')],
    ['over', rect('plan-planned late')],
    ['p50', rect('plan-likely')],
    ['p80', rect('plan-sure')],
    ['due', <DueMark key="due" x={12} y={13} />],
    [
      'late',
      <g key="late" className="late">
        {rect('plan-likely')}
      </g>,
    ],
  ] as const
  return (
    <ul className="plot-key quiet">
      {marks.map(([id, mark]) => (
        <li key={id}>
          <svg className="plan-mark" width="24" height="18" viewBox="0 0 24 18" aria-hidden="true">
            {mark}
          </svg>
          {tell(`weeks.key.${id}`)}
        </li>
      ))}
    </ul>
  )
}
