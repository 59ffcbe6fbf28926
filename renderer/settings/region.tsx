import { printDate } from '../../core/words/dates.ts'
import { numberFormat } from '../../core/words/formats.ts'
import { LANGUAGES, type Language, REGIONS } from '../../core/words/languages.ts'
import { printMoney } from '../../core/words/money.ts'
import { SelectField } from '../parts/field.tsx'
import { useHouse, useTell } from '../workroom.tsx'

/** What the planner speaks; `region` is an ISO 3166-1 code of two letters. */
export type Tongue = { language: Language; region: string }

/** A language by its own name, for who cannot read the one that is set. */
const ownName = (language: Language): string =>
  new Intl.DisplayNames([language], { type: 'language' }).of(language) ?? language

/** The region that each language was last left with, so that a look at the other language costs nothing. */
const leftWith = new Map<Language, string>()

type Props = Tongue & { onChange: (tongue: Tongue) => void; currency?: string }

/** The language of the planner, and the region by whose manner it writes days, numbers and amounts. */
export function TongueFields({ language, region, onChange, currency }: Props) {
  const { reader } = useHouse()
  const tell = useTell()
  const names = new Intl.DisplayNames([reader.locale], { type: 'region' })
  // A region that was set in another way is kept, and offered as long as it is.
  const regions = [...new Set([...REGIONS[language], region])]
  const locale = `${language}-${region}`
  const example = tell('screen.settings.region.example', {
    date: printDate('2026-11-25', locale),
    number: numberFormat(locale).format(1234.5),
    money: printMoney({ minor: 123450, currency: currency ?? 'EUR' }, locale),
  })
  return (
    <>
      <SelectField
        label={tell('screen.settings.language')}
        value={language}
        onChange={(id) => {
          const next = id as Language
          leftWith.set(language, region)
          const spoken = REGIONS[next].includes(region) ? region : REGIONS[next][0]!
          onChange({ language: next, region: leftWith.get(next) ?? spoken })
        }}
        options={LANGUAGES.map((id) => ({ id, name: ownName(id) }))}
      />
      <SelectField
        label={tell('screen.settings.region')}
        help={currency === undefined ? undefined : example}
        value={region}
        onChange={(id) => onChange({ language, region: id })}
        options={regions.map((id) => ({ id, name: names.of(id) ?? id }))}
      />
    </>
  )
}
