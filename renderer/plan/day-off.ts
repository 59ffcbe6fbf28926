import { closedBy } from '../../core/plan/schedule/days-off.ts'
import { useQuery } from '../workroom.tsx'
import { useSaidDayOff } from './reasons.ts'

/** Says of a day as it is named, `YYYY-MM-DD`, that nobody is there on it; nothing of any other, or of none. */
export function useDayOff(): (day: string) => string | undefined {
  const { value } = useQuery('people.list', {})
  const said = useSaidDayOff()
  return (day) => {
    if (value === undefined || day === '') return undefined
    const away = value.away.map(({ personId, ...one }) => ({ ...one, person: personId }))
    const off = closedBy(day, away, value.people)
    return off === undefined ? undefined : said(day, off.note)
  }
}
