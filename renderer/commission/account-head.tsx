import type { PhraseCode } from '../../core/words/phrase.ts'
import { useTell } from '../workroom.tsx'

type Props = { difference?: boolean; title?: string | undefined }

/** Head of a table that holds what was quoted against what it came to. */
export function AccountHead({ difference = false, title }: Props) {
  const tell = useTell()
  const columns = ['quoted', 'actual', ...(difference ? ['difference'] : [])]
  return (
    <thead>
      <tr>
        {title === undefined ? <td /> : <th scope="col">{title}</th>}
        {columns.map((column) => (
          <th key={column} scope="col" className="amount">
            {tell(`times.account.${column}` as PhraseCode)}
          </th>
        ))}
      </tr>
    </thead>
  )
}
