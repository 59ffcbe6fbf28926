import { useState } from 'react'
import { laidCopies } from '../../core/draw/laid.ts'
import { printLength } from '../../core/words/length.ts'
import { say } from '../../core/words/say.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { Estimate } from './use-estimate.ts'

/** What a drawing shows, as a table: for whoever cannot see it, or wants a figure at a glance. */
function Behind({ summary, head, rows }: { summary: string; head: string[]; rows: () => string[][] }) {
  const [open, setOpen] = useState(false)
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {open ? (
        <table className="ledger">
          <thead>
            <tr>
              {head.map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows().map(([first, ...rest], i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two copies of a piece may have the same name
              <tr key={i}>
                <th scope="row">{first}</th>
                {rest.map((text, j) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a column has no other name
                  <td key={j}>{text}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
    </details>
  )
}

/** The pieces with how many of each are cut, and their finished sizes. */
export function PieceSizes({ pieces }: Pick<Estimate['draft'], 'pieces'>) {
  const { reader } = useHouse()
  const tell = useTell()
  return (
    <Behind
      summary={tell('screen.desk.sizes')}
      head={[
        tell('screen.desk.sizes.piece'),
        tell('screen.desk.sizes.cut'),
        tell('screen.desk.sizes.finished'),
      ]}
      rows={() =>
        pieces.map(({ name, copies, sizes }) => [
          say(name, reader),
          String(copies.length),
          sizes
            .map(
              ({ name: size, mm }) => `${say(size, reader)} ${printLength(mm, reader.unit, reader.locale)}`,
            )
            .join(', '),
        ])
      }
    />
  )
}

/** The finished sizes that stand beside the drawn garment, by the way they run. */
export function FinishedSizes({ sizes }: Pick<NonNullable<Estimate['draft']['flat']>, 'sizes'>) {
  const { reader } = useHouse()
  const tell = useTell()
  const way = ({ from, to }: (typeof sizes)[number]) =>
    from.y === to.y ? 'across' : from.x === to.x ? 'along' : 'aslant'
  return (
    <Behind
      summary={tell('screen.desk.sizes.flat')}
      head={[tell('screen.desk.sizes.way'), tell('screen.desk.sizes.size')]}
      rows={() =>
        sizes.map((size) => [
          tell(`screen.desk.sizes.${way(size)}`),
          printLength(size.mm, reader.unit, reader.locale),
        ])
      }
    />
  )
}

/** Where each copy lies on the cloth: from the cut end, and from the near selvedge. */
export function LaySizes({ lay, draft }: { lay: Estimate['lay']; draft: Estimate['draft'] }) {
  const { reader } = useHouse()
  const tell = useTell()
  const span = (from: number, size: number) =>
    tell('screen.lay.table.span', { from: { mm: from }, to: { mm: from + size } })
  return (
    <Behind
      summary={tell('screen.lay.table')}
      head={[
        tell('screen.desk.sizes.piece'),
        tell('screen.lay.table.end'),
        tell('screen.lay.table.selvedge'),
      ]}
      rows={() =>
        laidCopies(lay, draft.pieces).map(({ number, name, box }) => [
          `${number} ${say(name, reader)}`,
          span(box.y, box.height),
          span(box.x, box.width),
        ])
      }
    />
  )
}
