import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import { useHouse, useTell } from '../workroom.tsx'
import { printRate, type Rate } from './figures.ts'
import { Plot, PlotKey } from './plot.tsx'
import { Standard } from './standard.tsx'

type Props = { rates: readonly Rate[]; onKept: () => void }

/** Kinds of work that were logged, what is done most first: standard, her own pace, and the times it rests on. */
export function Paces({ rates, onKept }: Props) {
  const { reader } = useHouse()
  const tell = useTell()
  const figure = (minutes: number) => printRate(minutes, reader.locale)
  return (
    <>
      <PlotKey />
      <table className="paces">
        <thead>
          <tr>
            <th scope="col">{tell('times.column.work')}</th>
            <th scope="col">{tell('times.column.standard')}</th>
            <th scope="col">{tell('times.column.yours')}</th>
            <th scope="col">{tell('times.column.logged')}</th>
          </tr>
        </thead>
        <tbody>
          {[...rates]
            .sort((a, b) => b.hours - a.hours)
            .map((rate) => (
              <tr key={rate.id}>
                <th scope="row">
                  {say(rate.name, reader)}
                  <p className="quiet">{tell('times.rests', { time: printMinutes(60 * rate.hours) })}</p>
                </th>
                <td>
                  <Standard key={rate.standard} rate={rate} onKept={onKept} />
                </td>
                <td>
                  <p>
                    <strong className="paces-yours">{figure(rate.hers)}</strong> {tell('times.min')}
                  </p>
                  <p className="quiet figure">
                    {tell('times.yours.range', { least: figure(rate.least), most: figure(rate.most) })}
                  </p>
                </td>
                <td className="paces-picture">
                  {rate.points.length === 0 ? (
                    <p className="quiet">{tell('times.amongOthers')}</p>
                  ) : (
                    <Plot rate={rate} />
                  )}
                </td>
              </tr>
            ))}
        </tbody>
      </table>
    </>
  )
}

/** Kinds of work that were never logged: their standards, and the pace borrowed from work like it. */
export function Standards({ rates, onKept }: Props) {
  const { reader } = useHouse()
  const tell = useTell()
  return (
    <>
      <p className="quiet">{tell('times.standards.about')}</p>
      <table className="paces">
        <thead>
          <tr>
            <th scope="col">{tell('times.column.work')}</th>
            <th scope="col">{tell('times.column.standard')}</th>
            <th scope="col">{tell('times.column.yours')}</th>
            <th scope="col">{tell('times.column.family')}</th>
          </tr>
        </thead>
        <tbody>
          {rates.map((rate) => (
            <tr key={rate.id}>
              <th scope="row">{say(rate.name, reader)}</th>
              <td>
                <Standard key={rate.standard} rate={rate} onKept={onKept} />
              </td>
              <td className="figure">
                {printRate(rate.hers, reader.locale)} {tell('times.standard.per', { per: rate.per })}
              </td>
              <td>{tell(`times.family.${rate.family}`)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}
