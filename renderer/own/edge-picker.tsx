import { pathData } from '../../core/draw/svg.ts'
import { pathBox } from '../../core/geometry/segment.ts'
import { edgeWord } from '../../core/words/own-edges.ts'
import { say } from '../../core/words/say.ts'
import { useHouse, useTell } from '../workroom.tsx'
import { type Edge, sameEdge, type Tried } from './definition.ts'

type Props = {
  pieces: Tried['pieces']
  /** Edges that are in a seam or hem already. */
  sewn: readonly Edge[]
  chosen: readonly Edge[]
  onPick: (edge: Edge) => void
}

/** The tallest copy is drawn this high, px. */
const HIGH = 190
const AIR = 14

/** Every copy of every piece to one scale; each of its edges can be picked, by hand or by keyboard. */
export function EdgePicker({ pieces, sewn, chosen, onPick }: Props) {
  const { reader } = useHouse()
  const tell = useTell()
  const scale =
    HIGH /
    Math.max(1, ...pieces.map(({ outline }) => Math.max(pathBox(outline).height, pathBox(outline).width / 2)))
  return (
    <div className="drawn own-edges">
      {pieces.flatMap((piece) =>
        piece.copies.map(({ id, name, mirrored }) => {
          const { x, y, width, height } = pathBox(piece.outline)
          const called = say(name, reader)
          return (
            <figure key={`${piece.id}-${id}`}>
              {/* biome-ignore lint/a11y/useSemanticElements: a drawing with things to pick in it, and no set of fields */}
              <svg
                width={width * scale + 2 * AIR}
                height={height * scale + 2 * AIR}
                role="group"
                aria-label={called}
              >
                <g
                  transform={`translate(${AIR + (mirrored ? (x + width) * scale : -x * scale)} ${AIR + (y + height) * scale}) scale(${mirrored ? -scale : scale} ${scale})`}
                >
                  <path className="own-cloth" d={pathData(piece.outline)} />
                  {piece.edges.map((edge) => {
                    const here = { piece: piece.id, copy: Number(id), edge: edge.id }
                    const isChosen = chosen.some((one) => sameEdge(one, here))
                    const isSewn = sewn.some((one) => sameEdge(one, here))
                    const state = isChosen ? 'chosen' : isSewn ? 'sewn' : 'open'
                    const label = tell('own.screen.edgeOf', {
                      ...{ edge: say(edgeWord(edge.id), reader), piece: called },
                      length: { mm: edge.length },
                      state: tell(`own.screen.state.${state}`),
                    })
                    return (
                      // biome-ignore lint/a11y/useSemanticElements: an edge in a drawing cannot be a button element
                      <g
                        key={edge.id}
                        className={`own-edge ${state}`}
                        role="button"
                        tabIndex={0}
                        aria-label={label}
                        aria-pressed={isChosen}
                        onClick={() => onPick(here)}
                        onKeyDown={(event) => {
                          if (event.key !== 'Enter' && event.key !== ' ') return
                          event.preventDefault()
                          onPick(here)
                        }}
                      >
                        <title>{label}</title>
                        <path className="own-edge-touch" d={pathData(edge.path)} />
                        <path className="own-edge-line" d={pathData(edge.path)} />
                      </g>
                    )
                  })}
                </g>
              </svg>
              <figcaption>{called}</figcaption>
            </figure>
          )
        }),
      )}
    </div>
  )
}
