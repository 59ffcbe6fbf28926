import { addDays, printDayShort } from '../../core/words/dates.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { settingAt } from '../settings/place.ts'
import { useHouse, useTell } from '../workroom.tsx'

type Plan = OutputOf<'plan.show'>

/** Less than so much between the work is no room, minutes. */
const LEAST = 60

/** In words, before any picture: from when on she is free, and which days off the weeks are counted with. */
export function Head({ plan }: { plan: Plan }) {
  return (
    <section className="sheet stack">
      <p>
        <FreeFrom {...plan} />
      </p>
      <p>
        <DaysOff {...plan} />
      </p>
    </section>
  )
}

function FreeFrom({ free: { begins, last, between, from }, commissions }: Plan) {
  const tell = useTell()
  const promised = commissions.flatMap(({ dueDay }) => dueDay ?? []).sort()
  const said = [
    begins === null ? '' : tell('weeks.free.before', { day: { date: begins } }),
    from === null
      ? tell('weeks.free.never')
      : last === null
        ? tell('weeks.free.now', { from: { date: from } })
        : tell('weeks.free.after', { last: { date: last }, from: { date: from } }),
    between < LEAST ? '' : tell('weeks.free.between', { time: { minutes: between } }),
    promised.length === 0 ? '' : tell('weeks.free.promised', { day: { date: promised.at(-1)! } }),
    commissions.some(({ never }) => never.length > 0) ? tell('weeks.free.endless') : '',
  ]
  return said.filter((one) => one !== '').join(' ')
}

function DaysOff({ weeks, daysOff: { days, spans } }: Plan) {
  const { reader } = useHouse()
  const tell = useTell()
  const short = (day: string) => printDayShort(day, reader.locale)
  const last = short(addDays(weeks.at(-1)!.begins, 6))
  const which = spans.map(({ from, to, note, who }) => {
    const when = from === to ? short(from) : tell('people.away.line', { from: short(from), to: short(to) })
    const what = [note, who ?? ''].filter((text) => text !== '').join(', ')
    return what === '' ? when : `${when} (${what})`
  })
  return (
    <>
      {days === 0
        ? tell('weeks.off.none', { last })
        : tell(days === 1 ? 'weeks.off.day' : 'weeks.off.some', { days, last, which: which.join('; ') })}{' '}
      <a href={settingAt('daysOff')}>{tell('weeks.off.write')}</a>
    </>
  )
}
