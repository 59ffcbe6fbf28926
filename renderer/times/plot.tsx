import { type Day, printDate, printDayShort } from '../../core/words/dates.ts'
import { say } from '../../core/words/say.ts'
import { useHouse, useTell } from '../workroom.tsx'
import { printRate, type Rate } from './figures.ts'

const WIDTH = 320
const HEIGHT = 132
/** Room for figures at the left, for a dot at either end, and for days at the foot. */
const LEFT = 34
const RIGHT = WIDTH - 12
const TOP = 14
const FOOT = HEIGHT - 22
const DOT = 4
/** A time thought wrong is as likely wrong as right at this. */
const WRONG = 0.5

/** Logged times of one kind of work, day by day, with the standard and what is known of hers. */
export function Plot({ rate }: { rate: Rate }) {
  const { reader } = useHouse()
  const { points, standard, hers, least, most } = rate
  const right = points.filter((point) => point.right >= WRONG).map(({ minutes }) => minutes)
  // What is thought wrong may be many times too long: it stands at the upper edge, so that the rest can be read.
  const top = roundUp(1.1 * Math.max(standard, most, ...right))
  const days = points.map(({ day }) => day).sort()
  const [first, last] = [days[0]!, days.at(-1)!]
  const x = (day: Day) =>
    first === last
      ? (LEFT + RIGHT) / 2
      : LEFT +
        12 +
        ((RIGHT - LEFT - 24) * (dayNumber(day) - dayNumber(first))) / (dayNumber(last) - dayNumber(first))
  const y = (minutes: number) => FOOT - ((FOOT - TOP) * Math.min(minutes, top)) / top
  const figure = (minutes: number) => printRate(minutes, reader.locale)
  return (
    <svg
      className="plot"
      width={WIDTH}
      height={HEIGHT}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={useWords(rate)}
    >
      <rect className="plot-band" x={LEFT} y={y(most)} width={RIGHT - LEFT} height={y(least) - y(most)} />
      <line className="plot-yours" x1={LEFT} x2={RIGHT} y1={y(hers)} y2={y(hers)} />
      <line className="plot-standard" x1={LEFT} x2={RIGHT} y1={y(standard)} y2={y(standard)} />
      <path className="plot-axis" d={`M${LEFT} ${TOP}V${FOOT}H${RIGHT}`} />
      {[0, top / 2, top].map((minutes) => (
        <text key={minutes} className="plot-figure" x={LEFT - 6} y={y(minutes) + 4}>
          {figure(minutes)}
        </text>
      ))}
      <text x={LEFT} y={HEIGHT - 5}>
        {printDayShort(first, reader.locale)}
      </text>
      {first === last ? null : (
        <text className="plot-figure" x={RIGHT} y={HEIGHT - 5}>
          {printDayShort(last, reader.locale)}
        </text>
      )}
      {points.map(({ day, minutes, right }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: times have no name of their own here and never change places
        <g key={i}>
          <circle className={right < WRONG ? 'plot-open' : 'plot-dot'} cx={x(day)} cy={y(minutes)} r={DOT} />
          {minutes > top ? (
            <text
              className="plot-beyond"
              x={x(day) + (x(day) > WIDTH - 60 ? -9 : 9)}
              y={y(minutes) + 4}
              textAnchor={x(day) > WIDTH - 60 ? 'end' : 'start'}
            >
              {figure(minutes)}
            </text>
          ) : null}
        </g>
      ))}
    </svg>
  )
}

/** What the picture shows, for whoever does not see it. */
function useWords({ name, per, points, standard, hers }: Rate): string {
  const { reader } = useHouse()
  const tell = useTell()
  const figure = (minutes: number) => printRate(minutes, reader.locale)
  const sorted = [...points].sort((a, b) => (a.day < b.day ? -1 : 1))
  const minutes = points.map((point) => point.minutes)
  const told = tell(points.length === 1 ? 'times.plot.one' : 'times.plot', {
    ...{ work: capital(say(name, reader)), count: points.length, per },
    ...{ first: { date: sorted[0]!.day }, last: { date: sorted.at(-1)!.day } },
    ...{ least: figure(Math.min(...minutes)), most: figure(Math.max(...minutes)) },
    ...{ standard: figure(standard), yours: figure(hers) },
  })
  const wrong = sorted
    .filter(({ right }) => right < WRONG)
    .map(({ day, minutes }) =>
      tell('times.plot.wrong', { minutes: figure(minutes), day: printDate(day, reader.locale) }),
    )
  return [told, ...wrong].join(' ')
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
const dayNumber = (day: Day): number => Date.parse(`${day}T00:00:00Z`) / 86_400_000

/** The next number that is one, two, or five and so on, so that half of it reads well too. */
function roundUp(value: number): number {
  const unit = 10 ** Math.floor(Math.log10(value))
  return unit * [1, 2, 3, 4, 5, 6, 8, 10].find((times) => times * unit >= value)!
}

/** What the marks in the pictures mean. */
export function PlotKey() {
  const tell = useTell()
  const marks = [
    ['dot', <circle key="dot" className="plot-dot" cx="12" cy="9" r={DOT} />],
    ['open', <circle key="open" className="plot-open" cx="12" cy="9" r={DOT} />],
    ['standard', <line key="standard" className="plot-standard" x1="0" x2="24" y1="9" y2="9" />],
    [
      'yours',
      <g key="yours">
        <rect className="plot-band" x="0" y="3" width="24" height="12" />
        <line className="plot-yours" x1="0" x2="24" y1="9" y2="9" />
      </g>,
    ],
  ] as const
  return (
    <ul className="plot-key quiet">
      {marks.map(([id, mark]) => (
        <li key={id}>
          <svg width="24" height="18" aria-hidden="true">
            {mark}
          </svg>
          {tell(`times.key.${id}`)}
        </li>
      ))}
    </ul>
  )
}
