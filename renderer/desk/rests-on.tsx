import { memo } from 'react'
import { printDayShort } from '../../core/words/dates.ts'
import { settingAt } from '../settings/place.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { Promised } from './use-promise.ts'

/** What the day that can be promised rests on. Its line is there from the first, so that nothing moves when it is filled. */
export const RestsOn = memo(({ readyBy, old }: Promised) => {
  const { reader } = useHouse()
  const tell = useTell()
  const said = () => {
    if (readyBy === undefined || readyBy.day === null) return ''
    const { day, answerBy, clothThere, cloth } = readyBy
    const short = (of: string) => printDayShort(of, reader.locale)
    const days = { day: short(day), answer: short(answerBy) }
    if (clothThere !== answerBy) return tell('weeks.bill.yesAndCloth', { ...days, cloth: short(clothThere) })
    return tell(cloth === 'here' || cloth === 'coming' ? `weeks.bill.yes.${cloth}` : 'weeks.bill.yes', days)
  }
  return (
    <p className={old ? 'rests-on old' : 'rests-on'}>
      {said()} {readyBy === undefined ? null : <a href={settingAt('people')}>{tell('weeks.bill.hours')}</a>}
    </p>
  )
})
