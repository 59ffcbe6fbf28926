import { useState } from 'react'
import { printDate, printDayShort } from '../../core/words/dates.ts'
import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

type Taken = OutputOf<'bin.list'>['taken'][number]

/** What was taken off lately, with the way back to its place. */
export function Bin() {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const { value, refused, reload } = useQuery('bin.list', {})
  const [back, setBack] = useState<Taken>()
  const putBack = async (one: Taken) => {
    const { kind, id } = one
    if (!(await doing.run(() => workroom.ask('bin.putBack', { kind, id })))) return
    setBack(one)
    reload()
  }
  const days = value?.days ?? 0
  return (
    <div className="stack">
      <h1>{tell('bin.title')}</h1>
      <Refusal sentence={refused ?? doing.refused?.message} />
      <p role="status">
        {back === undefined ? null : (
          <>
            {tell('bin.isBack', { what: back.what })}{' '}
            <a href={addressOf('commissions', back.commissionId)}>{back.number}</a>
          </>
        )}
      </p>
      {value === undefined ? null : value.taken.length === 0 ? (
        <p>{tell('bin.none', { days })}</p>
      ) : (
        <table>
          <thead>
            <tr>
              {(['what', 'of', 'when', 'until'] as const).map((id) => (
                <th key={id} scope="col">
                  {tell(`bin.${id}`)}
                </th>
              ))}
              <td />
            </tr>
          </thead>
          <tbody>
            {value.taken.map((one) => (
              <tr key={one.id}>
                <td className="taken-off">{say(one.what, reader)}</td>
                <td>
                  <a href={addressOf('commissions', one.commissionId)}>{one.number}</a> {one.customer}
                </td>
                <td className="figure">{printDayShort(one.day, reader.locale)}</td>
                <td className="figure">{printDate(one.until, reader.locale)}</td>
                <td>
                  <Button
                    label={tell('bin.putBack.what', { what: one.what })}
                    busy={doing.busy}
                    onPress={() => void putBack(one)}
                  >
                    {tell('bin.putBack')}
                  </Button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {value === undefined ? null : <p className="quiet narrow">{tell('bin.about', { days })}</p>}
    </div>
  )
}
