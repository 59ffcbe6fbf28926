import { useState } from 'react'
import { printDayShort } from '../../core/words/dates.ts'
import { type Money, printMoney, sumMoney } from '../../core/words/money.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { SelectField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { saved } from '../parts/saved.ts'
import { todayHere } from '../parts/today.ts'
import { useHouse, useQuery, useTell } from '../workroom.tsx'

type Row = OutputOf<'money.year'>['rows'][number]

/** How many years can be looked back on. */
const YEARS = 10

/** A year for the bookkeeper: invoices, credit notes and payments by day, and the same as a file. */
export function Books() {
  const tell = useTell()
  const now = Number(todayHere().slice(0, 4))
  const [year, setYear] = useState(String(now))
  const { value, refused } = useQuery('money.year', { year: Number(year) })
  const years = Array.from({ length: YEARS }, (_, back) => String(now - back))
  return (
    <div className="stack">
      <h1>{tell('life.books')}</h1>
      <div className="row beside-field">
        <SelectField
          label={tell('life.books.year')}
          value={year}
          onChange={setYear}
          options={years.map((id) => ({ id, name: id }))}
        />
        {value === undefined || value.rows.length === 0 ? null : (
          <Button main onPress={() => saved(`ellwand-${year}.csv`, value.csv, 'text/csv;charset=utf-8')}>
            {tell('life.books.save')}
          </Button>
        )}
      </div>
      <Refusal sentence={refused} />
      {value === undefined ? null : value.rows.length === 0 ? (
        <p>{tell('life.books.none', { year })}</p>
      ) : (
        <Rows rows={value.rows} />
      )}
    </div>
  )
}

const COLUMNS = ['day', 'number', 'kind', 'customer'] as const
const AMOUNTS = ['net', 'total', 'paid'] as const

function Rows({ rows }: { rows: readonly Row[] }) {
  const { reader } = useHouse()
  const tell = useTell()
  const print = (amount: Money | null) => (amount === null ? '' : printMoney(amount, reader.locale))
  const sum = (id: (typeof AMOUNTS)[number]) => {
    const amounts = rows.flatMap((row) => row[id] ?? [])
    return amounts.length === 0 ? '' : print(sumMoney(amounts, amounts[0]!.currency))
  }
  return (
    <table className="books">
      <thead>
        <tr>
          {COLUMNS.map((id) => (
            <th key={id} scope="col">
              {tell(`money.column.${id}`)}
            </th>
          ))}
          {AMOUNTS.map((id) => (
            <th key={id} scope="col" className="amount">
              {tell(`money.column.${id}`)}
            </th>
          ))}
          <th scope="col">{tell('money.column.method')}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.number}>
            <td className="figure">{printDayShort(row.day, reader.locale)}</td>
            <td className="figure">{row.number}</td>
            <td>{tell(`money.kind.${row.kind}`)}</td>
            <td>{row.customer}</td>
            {AMOUNTS.map((id) => (
              <td key={id} className="amount">
                {print(row[id])}
              </td>
            ))}
            <td>{row.method === null ? '' : tell(`money.method.${row.method}`)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr className="account-end">
          <td colSpan={COLUMNS.length}>{tell('life.books.sum')}</td>
          {AMOUNTS.map((id) => (
            <td key={id} className="amount">
              {sum(id)}
            </td>
          ))}
          <td />
        </tr>
      </tfoot>
    </table>
  )
}
