import { useTell } from '../workroom.tsx'
import type { Promised } from './use-promise.ts'

/** What the day that can be promised rests on. Its line is there from the first, so that nothing moves when it is filled. */
export function RestsOn({ readyBy, old }: Promised) {
  const tell = useTell()
  return (
    <p className={old ? 'rests-on old' : 'rests-on'}>{readyBy === undefined ? '' : said(readyBy, tell)}</p>
  )
}

function said(
  { day, answerBy, clothThere }: NonNullable<Promised['readyBy']>,
  tell: ReturnType<typeof useTell>,
) {
  if (day === null) return ''
  const days = { day: { date: day }, answer: { date: answerBy } }
  return clothThere === answerBy
    ? tell('weeks.bill.yes', days)
    : tell('weeks.bill.yesAndCloth', { ...days, cloth: { date: clothThere } })
}
