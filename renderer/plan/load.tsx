import { printMinutes } from '../../core/words/time.ts'
import { useTell } from '../workroom.tsx'
import { LEFT, type Scale, type Week } from './scale.ts'

type Props = { weeks: readonly Week[]; scale: Scale; top: number; foot: number }

/** Each week's hours as an empty measure, and how far it is filled. A week that cannot hold its work is madder. */
export function Load({ weeks, scale, top, foot }: Props) {
  const tell = useTell()
  const shown = weeks.slice(0, scale.weeks)
  const most = Math.max(60, ...shown.flatMap(({ hours, planned }) => [hours, planned]))
  const up = (minutes: number) => ((foot - top) * minutes) / most
  const width = scale.xOfWeek(1) - scale.xOfWeek(0)
  return (
    <g>
      <text x={0} y={top + 5}>
        {printMinutes(most)}
      </text>
      <text x={0} y={foot}>
        {tell('weeks.load')}
      </text>
      <line className="plan-week" x1={LEFT} x2={scale.xOfWeek(scale.weeks)} y1={foot} y2={foot} />
      {shown.map(({ begins, hours, planned, needed }, week) => (
        <g key={begins}>
          <rect
            className={needed > hours + 1 ? 'plan-planned late' : 'plan-planned'}
            x={scale.xOfWeek(week) + 3}
            y={foot - up(planned)}
            width={width - 6}
            height={up(planned)}
          />
          <rect
            className="plan-hours"
            x={scale.xOfWeek(week) + 3}
            y={foot - up(hours)}
            width={width - 6}
            height={up(hours)}
          />
        </g>
      ))}
    </g>
  )
}
