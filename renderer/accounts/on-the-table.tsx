import type { OutputOf } from '../../core/workroom.ts'
import { addressOf } from '../router.ts'
import { useTell } from '../workroom.tsx'

/** So many commissions are named. */
const NAMED = 5

type Props = { work: OutputOf<'accounts.list'>['onTheTable']; ever: boolean }

/** Time logged on what is not delivered yet: no part of what was earned. @param ever whether it is that of all time */
export function OnTheTable({ work: { minutes, commissions }, ever }: Props) {
  const tell = useTell()
  if (minutes === 0) return null
  const more = commissions.length - NAMED
  return (
    <p>
      <strong>{tell('times.table.on')}:</strong>{' '}
      {tell(ever ? 'times.table.aboutAll' : 'times.table.about', { time: { minutes } })}{' '}
      {commissions.slice(0, NAMED).map(({ id, number }, i) => (
        <span key={id}>
          {i === 0 ? '' : ', '}
          <a className="number" href={addressOf('commissions', id)}>
            {number}
          </a>
        </span>
      ))}
      {more > 0 ? ` ${tell('screen.more', { count: more })}` : ''}
    </p>
  )
}
