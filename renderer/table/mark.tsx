import { useMemo, useState } from 'react'
import { chalkWriting } from '../../core/draw/chalk.ts'
import { captionOf, drawPiece, fittingScale } from '../../core/draw/piece.ts'
import { drawWhere } from '../../core/draw/where.ts'
import { printLength, printLengthBare } from '../../core/words/length.ts'
import { say } from '../../core/words/say.ts'
import { Button } from '../parts/button.tsx'
import { SheetDrawing } from '../parts/sheet-drawing.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import type { AtTable, TablePiece } from './stations.ts'

/** Drawn smaller than on paper and then shown large, so that its letters are large too. */
const SMALLER = 0.5
/** Sizes nearer than this are the same, mm. */
const SAME_SIZE = 0.5

type Props = { piece: TablePiece; spread: AtTable['spread'] }

/** A piece to mark: its drawing, its sizes very large, and where each copy of it is chalked. */
export function Mark({ piece, spread }: Props) {
  const { reader } = useHouse()
  const tell = useTell()
  const [shown, setShown] = useState(0)
  const copy = piece.laid[shown] ?? piece.laid[0]
  const drawing = useMemo(
    () => drawPiece(piece.piece, reader, fittingScale(piece.piece) * SMALLER, copy?.firstCorner),
    [piece, reader, copy?.firstCorner],
  )
  const where = useMemo(() => {
    const cloth = copy === undefined ? undefined : spread[copy.on]
    return cloth === undefined ? undefined : drawWhere(cloth, copy!.number, reader)
  }, [copy, spread, reader])
  const { unit, locale } = reader
  const { width, height } = piece.finishedSize
  const further = piece.sizes.filter(({ mm }) =>
    [width, height].every((told) => Math.abs(told - mm) > SAME_SIZE),
  )
  const size = (of: TablePiece['cutSize']) =>
    `${printLengthBare(of.width, unit, locale)} × ${printLengthBare(of.height, unit, locale)}`
  return (
    <div className="table-mark">
      <div className="drawn">
        <SheetDrawing drawing={drawing} />
      </div>
      <div className="table-figures">
        <p className="table-count">{say(captionOf(piece.piece), reader)}</p>
        {piece.cloth === 'main' ? null : (
          <p>{tell('table.mark.role', { role: tell(`paper.cutting.role.${piece.cloth}`) })}</p>
        )}
        <dl>
          <dt>{tell('table.cut.size', { unit })}</dt>
          <dd className="table-size">{size(piece.cutSize)}</dd>
          <dt>{tell('table.finished.size', { unit })}</dt>
          <dd className="table-finished">{size(piece.finishedSize)}</dd>
          {further.map(({ name, mm }) => (
            <div key={name.code}>
              <dt>{say(name, reader)}</dt>
              <dd className="table-finished">{printLength(mm, unit, locale)}</dd>
            </div>
          ))}
        </dl>
        {piece.alike ? <p>{tell('table.alike')}</p> : null}
        {piece.piece.grain === 'bias' ? <p>{tell('table.bias')}</p> : null}
        {where === undefined ? null : (
          <div className="drawn table-where">
            <SheetDrawing drawing={where} />
          </div>
        )}
      </div>
      <Chalk {...{ piece, copy }} onShow={setShown} />
    </div>
  )
}

type Corner = TablePiece['laid'][number]['corners'][number]

type ChalkProps = {
  piece: TablePiece
  copy: TablePiece['laid'][number] | undefined
  onShow: (place: number) => void
}

/** Where the copies lie on their cloth, one at a time. */
function Chalk({ piece, copy, onShow }: ChalkProps) {
  const { reader } = useHouse()
  const tell = useTell()
  if (copy === undefined) return <p>{tell('table.chalk.none')}</p>
  const name = say(copy.name, reader)
  const lies = [
    ...(copy.angle === 0 ? [] : [tell('table.chalk.turned', { angle: copy.angle })]),
    ...(copy.flipped ? [tell('table.chalk.faceDown')] : []),
  ]
  return (
    <section
      className="table-chalk"
      aria-label={tell('table.chalk.copyName', { number: copy.number, piece: name })}
    >
      <h2>{tell('table.chalk', { unit: chalkWriting(reader).unit })}</h2>
      {piece.laid.length < 2 ? null : (
        <div className="row">
          {piece.laid.map((one, i) => (
            <Button
              key={one.number}
              pressed={one === copy}
              label={tell('table.chalk.copyName', { number: one.number, piece: one.name })}
              onPress={() => onShow(i)}
            >
              {tell('table.chalk.copy', { number: one.number })}
            </Button>
          ))}
        </div>
      )}
      <p>
        <strong>{[name, ...lies].join(', ')}</strong>
      </p>
      <Corners corners={copy.corners} />
      {copy.openings.map((corners) => (
        <Corners key={keyOf(corners)} title={tell('table.chalk.opening')} corners={corners} />
      ))}
      {copy.slits.map((corners) => (
        <Corners key={keyOf(corners)} title={tell('table.chalk.slit')} corners={corners} />
      ))}
    </section>
  )
}

const keyOf = (corners: readonly Corner[]): string =>
  corners.map(({ fromSelvedge, fromCutEnd }) => `${fromSelvedge}/${fromCutEnd}`).join(' ')

function Corners({ title, corners }: { title?: string; corners: readonly Corner[] }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { figure: bare } = chalkWriting(reader)
  return (
    <>
      {title === undefined ? null : <h3>{title}</h3>}
      <ol className="table-corners">
        {corners.map(({ fromSelvedge, fromCutEnd, arc }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: corners have no other name than their place
          <li key={i}>
            <span className="table-pair">
              {bare(fromSelvedge)} / {bare(fromCutEnd)}
            </span>
            {arc === null ? null : (
              <span>
                {tell('table.chalk.arc', {
                  ...{
                    radius: bare(arc.radius),
                    through: `${bare(arc.fromSelvedge)} / ${bare(arc.fromCutEnd)}`,
                  },
                })}
              </span>
            )}
          </li>
        ))}
      </ol>
    </>
  )
}
