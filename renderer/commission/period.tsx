import { daysOf, daysOfMonth, PERIODS, type PeriodId, printMonth } from '../../core/words/period.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { useHouse, useKept, useTell } from '../workroom.tsx'

/** What is chosen: one of the usual stretches, a month (`2026-11`), or days of her own. */
export type Period = { id: PeriodId | 'days' | (string & {}); from: string; to: string }

/** What is chosen, and how another is; it outlives the screen. Until one is, it is a month such as `2026-11`. */
export const usePeriod = (month: string, today: string) =>
  useKept<Period>('period', { id: today.startsWith(month) ? 'thisMonth' : month, from: '', to: '' })

/** The days that are asked of, as a request takes them. */
export function asked({ id, from, to }: Period, today: string): { from?: string; to?: string } {
  if (id === 'days') return { ...(from === '' ? {} : { from }), ...(to === '' ? {} : { to }) }
  return /^\d{4}-\d{2}$/.test(id) ? daysOfMonth(id) : daysOf(id as PeriodId, today)
}

type Props = { period: Period; months: readonly string[]; onChange: (period: Period) => void }

/** Of which time the figures are to be: all of it, a month, a year, or from one day to another. */
export function PeriodFields({ period, months, onChange }: Props) {
  const { reader } = useHouse()
  const tell = useTell()
  const { id, from, to } = period
  const named = [...new Set([...months, ...(/^\d{4}-\d{2}$/.test(id) ? [id] : [])])]
  return (
    <div className="row beside-field">
      <SelectField
        label={tell('period.of')}
        value={id}
        onChange={(chosen) => onChange({ ...period, id: chosen })}
        options={[
          ...PERIODS.map((one) => ({ id: one as string, name: tell(`period.${one}`) })),
          ...named.map((month) => ({ id: month, name: printMonth(month, reader.locale) })),
          { id: 'days', name: tell('period.days') },
        ]}
      />
      {id === 'days' ? (
        <>
          <TextField
            label={tell('period.from')}
            type="date"
            value={from}
            onChange={(day) => onChange({ ...period, from: day })}
          />
          <TextField
            label={tell('period.to')}
            type="date"
            value={to}
            onChange={(day) => onChange({ ...period, to: day })}
          />
        </>
      ) : null}
      {id === 'all' ? null : (
        <div>
          <Button onPress={() => onChange({ ...period, id: 'all' })}>{tell('period.toAll')}</Button>
        </div>
      )}
    </div>
  )
}
