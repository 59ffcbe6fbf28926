import { useState } from 'react'
import { printDayShort } from '../../core/words/dates.ts'
import { type Money, printMoney, sumMoney } from '../../core/words/money.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { invoiceAt } from '../commission/invoices.tsx'
import { Button } from '../parts/button.tsx'
import { SelectField } from '../parts/field.tsx'
import { useForWhom } from '../parts/for-whom.ts'
import { Refusal } from '../parts/refusal.tsx'
import { saved } from '../parts/saved.ts'
import { todayHere } from '../parts/today.ts'
import { addressOf } from '../router.ts'
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
      <NotInvoiced />
      {value === undefined ? null : value.rows.length === 0 ? (
        <p>{tell('life.books.none', { year })}</p>
      ) : (
        <Rows rows={value.rows} />
      )}
    </div>
  )
}

/** What was handed over and is on no invoice yet; nothing where there is none. */
function NotInvoiced() {
  const { reader } = useHouse()
  const tell = useTell()
  const forWhom = useForWhom()
  const { value, refused } = useQuery('money.notInvoiced', {})
  if (value === undefined || value.commissions.length === 0) return <Refusal sentence={refused} />
  return (
    <section className="sheet stack">
      <h2>{tell('books.open')}</h2>
      <table className="books">
        <thead>
          <tr>
            <th scope="col">{tell('times.accounts.delivered')}</th>
            <th scope="col">{tell('paper.fact.commission')}</th>
            <th scope="col">{tell('screen.commission.garment')}</th>
            <th scope="col" className="amount">
              {tell('life.money.agreed')}
            </th>
            <td />
          </tr>
        </thead>
        <tbody>
          {value.commissions.map(({ id, number, customer, deliveredDay, agreed, garments }) => (
            <tr key={id}>
              <td className="figure">
                {deliveredDay === null ? '' : printDayShort(deliveredDay, reader.locale)}
              </td>
              <td className="figure">
                <a href={addressOf('commissions', id)}>{number}</a>
              </td>
              <td>{forWhom(garments, customer)}</td>
              <td className="amount">{printMoney(agreed, reader.locale)}</td>
              <td className="figure">
                <a href={invoiceAt(id)} aria-label={tell('books.open.makeFor', { number })}>
                  {tell('life.invoice.make')}
                </a>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

const COLUMNS = ['day', 'number', 'kind', 'customer'] as const
const AMOUNTS = ['net', 'total', 'paid'] as const

function Rows({ rows }: { rows: readonly Row[] }) {
  const { reader } = useHouse()
  const tell = useTell()
  const kindOf = ({ kind, method }: Row) =>
    method === null
      ? tell(`money.kind.${kind}`)
      : tell('money.column.kindHow', {
          kind: tell(`money.kind.${kind}`),
          how: tell(`money.method.${method}`),
        })
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
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.number}>
            <td className="figure">{printDayShort(row.day, reader.locale)}</td>
            <td className="figure">{row.number}</td>
            <td>{kindOf(row)}</td>
            <td>{row.customer}</td>
            {AMOUNTS.map((id) => (
              <td key={id} className="amount">
                {print(row[id])}
              </td>
            ))}
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
        </tr>
      </tfoot>
    </table>
  )
}
