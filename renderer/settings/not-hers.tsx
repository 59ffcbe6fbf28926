import { useQuery, useTell } from '../workroom.tsx'
import { settingAt } from './place.ts'

/** Said at a price: what it is made of is not the maker's own yet, each with the way to where it is set. */
export function NotHers() {
  const tell = useTell()
  const { value } = useQuery('settings.get', {})
  if (value === undefined) return null
  const { starting, settings } = value
  return (
    <>
      {starting ? (
        <p className="quiet">
          {tell('guiding.rates')} <a href={settingAt('money')}>{tell('guiding.rates.set')}</a>
        </p>
      ) : null}
      {settings.letterhead.address.length === 0 ? (
        <p className="quiet">
          {tell('guiding.address')} <a href={settingAt('address')}>{tell('guiding.address.set')}</a>
        </p>
      ) : null}
    </>
  )
}
