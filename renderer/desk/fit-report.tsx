import { memo } from 'react'
import { printLength } from '../../core/words/length.ts'
import { say } from '../../core/words/say.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { Estimate } from './use-estimate.ts'

/** Every question of the fit report, those that fail first and with what would mend them. */
export const FitReport = memo(({ draft: { fit, cautions } }: { draft: Estimate['draft'] }) => {
  const { reader } = useHouse()
  const tell = useTell()
  const order = ['fails', 'unchecked', 'good']
  const length = (mm: number | undefined) =>
    mm === undefined ? '–' : printLength(mm, reader.unit, reader.locale)
  const sorted = [...fit].sort((a, b) => order.indexOf(a.status) - order.indexOf(b.status))
  return (
    <section className="stack">
      <h2>{tell('paper.order.fit')}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{tell('paper.fit.column.check')}</th>
            <th scope="col">{tell('screen.fit.garment')}</th>
            <th scope="col">{tell('screen.fit.needs')}</th>
            <th scope="col">{tell('paper.fit.column.result')}</th>
          </tr>
        </thead>
        <tbody>
          {sorted.map((check) => (
            <tr key={check.id} className={check.status}>
              <td>{say(check.name, reader)}</td>
              <td className="figure">{length(check.garment)}</td>
              <td className="figure">
                {check.needs === undefined
                  ? '–'
                  : tell(check.bound === 'least' ? 'paper.fit.atLeast' : 'paper.fit.atMost', {
                      size: length(check.needs),
                    })}
              </td>
              <td>
                {tell(
                  check.status === 'good'
                    ? 'paper.fit.good'
                    : check.status === 'fails'
                      ? 'paper.fit.failing'
                      : 'paper.fit.unchecked',
                )}
                {check.mend === undefined ? null : <p>{say(check.mend, reader)}</p>}
                {check.missing === undefined ? null : (
                  <p className="quiet">
                    {tell('screen.fit.missing', {
                      measures: check.missing.map((id) => tell(`measure.name.${id}`)).join(', '),
                    })}
                  </p>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {cautions.map((caution) => (
        <p key={caution.code} className="quiet">
          {say(caution, reader)}
        </p>
      ))}
      {cautions.length === 0 ? null : <p className="quiet">{tell('caution.localRules')}</p>}
    </section>
  )
})
