import { printLengthBare } from '../../core/words/length.ts'
import type { Phrase } from '../../core/words/phrase.ts'
import { say } from '../../core/words/say.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { AtTable } from './stations.ts'

/** The seams and hems of a step with their lengths and stitches, as on the work order. */
export function Sewn({ sewn }: { sewn: AtTable['steps'][number]['sewn'] }) {
  const { reader } = useHouse()
  const tell = useTell()
  if (sewn.length === 0) return null
  return (
    <table className="table-sewn">
      <caption>{tell('table.sewn', { unit: reader.unit })}</caption>
      <tbody>
        {sewn.map(({ id, name, length, stitches }) => (
          <tr key={id}>
            <th scope="row">{say(name, reader)}</th>
            <td className="amount">{printLengthBare(length, reader.unit, reader.locale)}</td>
            <td>{stitches.map((stitch) => tell(`sew.stitch.${stitch}`)).join(', ')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** What is to be minded here. */
export function Minded({ cautions }: { cautions: readonly Phrase[] }) {
  const { reader } = useHouse()
  const tell = useTell()
  if (cautions.length === 0) return null
  return (
    <div className="table-care">
      <h2>{tell('caution.title')}</h2>
      <ul>
        {cautions.map((caution) => (
          <li key={caution.code}>{say(caution, reader)}</li>
        ))}
      </ul>
    </div>
  )
}
