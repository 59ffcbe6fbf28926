import { type KeyboardEvent, type PointerEvent, useMemo, useRef, useState } from 'react'
import { laidCopies } from '../../core/draw/laid.ts'
import { placePath } from '../../core/draw/placed.ts'
import { pointAt } from '../../core/geometry/segment.ts'
import type { Path } from '../../core/geometry/types.ts'
import { say } from '../../core/words/say.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import type { Asked } from './lay-room.tsx'
import type { Estimate } from './use-estimate.ts'
import type { LayTable, Placement } from './use-lay.ts'

type Props = { estimate: Estimate; table: LayTable; asked: Asked }
type Drag = { copy: string; from: { x: number; y: number }; by: { x: number; y: number } }

/** How far an arrow key moves a piece, mm, and with Shift. */
const NUDGE = 10
const NUDGE_FINE = 1
/** Cloth shown beyond the end of the lay, so that a piece can be put there, mm. */
const BEYOND = 700

/**
 * The cloth for laying by hand: cut end at the left, near selvedge below. Every place is judged by the
 * workroom before it is taken.
 */
export function HandLay({ estimate: { lay, draft }, table, asked }: Props) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const cloth = useRef<SVGSVGElement>(null)
  const [chosen, setChosen] = useState<string>()
  const [drag, setDrag] = useState<Drag>()
  const [wrong, setWrong] = useState<{ copies: string[]; sentence: string }>()
  const doing = useDoing()
  const placements = lay.placements as Placement[]
  const names = useMemo(() => {
    const all = draft.pieces.flatMap(({ id, copies }) =>
      copies.map((c) => [`${id}/${c.id}`, say(c.name, reader)] as const),
    )
    return new Map<string, string>(all)
  }, [draft, reader])
  const numbers = useMemo(() => {
    const copies = laidCopies(lay, draft.pieces)
    return new Map(copies.map(({ placement, number }) => [placement, number]))
  }, [lay, draft])
  const isHeld = (copy: string) => table.locked.some((one) => nameOf(one) === copy)
  const width = lay.usableWidth
  const length = lay.length + BEYOND

  const take = (moved: Placement) =>
    void doing.run(async () => {
      const copy = nameOf(moved)
      const next = placements.map((one) => (nameOf(one) === copy ? moved : one))
      const { faults } = await workroom.ask('lay.judge', {
        ...asked,
        lay: { manner: 'single', flaws: table.flaws, placements: next },
      })
      const fault = faults[0]
      setWrong(
        fault === undefined ? undefined : { copies: fault.copies, sentence: say(fault.sentence, reader) },
      )
      if (fault === undefined)
        table.place(next, [...table.locked.filter((one) => nameOf(one) !== copy), moved])
    })
  const hold = (placement: Placement) => {
    const others = table.locked.filter((one) => nameOf(one) !== nameOf(placement))
    table.place(placements, isHeld(nameOf(placement)) ? others : [...others, placement])
  }
  const turn = (placement: Placement) =>
    take(turnedInPlace(placement, draft.pieces.find(({ id }) => id === placement.piece)!.cut))
  const onKey = (placement: Placement) => (event: KeyboardEvent) => {
    const step = event.shiftKey ? NUDGE_FINE : NUDGE
    const by = { ArrowRight: [0, step], ArrowLeft: [0, -step], ArrowUp: [step, 0], ArrowDown: [-step, 0] }[
      event.key
    ]
    const key = event.key.toLowerCase()
    if (by !== undefined) take({ ...placement, x: placement.x + by[0]!, y: placement.y + by[1]! })
    else if (key === 't') turn(placement)
    else if (key === 'l') hold(placement)
    else return
    event.preventDefault()
  }
  /** Where the pointer is on the cloth, mm. */
  const at = ({ clientX, clientY }: PointerEvent) => {
    const { left, top, width: w } = cloth.current!.getBoundingClientRect()
    const scale = length / w
    return { x: width - (clientY - top) * scale, y: (clientX - left) * scale }
  }
  const onDown = (copy: string) => (event: PointerEvent) => {
    setChosen(copy)
    setWrong(undefined)
    event.currentTarget.setPointerCapture(event.pointerId)
    setDrag({ copy, from: at(event), by: { x: 0, y: 0 } })
  }
  const onMove = (event: PointerEvent) => {
    if (drag === undefined) return
    const { x, y } = at(event)
    setDrag({ ...drag, by: { x: x - drag.from.x, y: y - drag.from.y } })
  }
  const onUp = (placement: Placement) => () => {
    const by = drag?.by
    setDrag(undefined)
    if (by === undefined || Math.hypot(by.x, by.y) < 2) return
    take({ ...placement, x: placement.x + by.x, y: placement.y + by.y })
  }
  const current = placements.find((one) => nameOf(one) === chosen)
  return (
    <>
      <p className="quiet">{tell('screen.lay.hand.help')}</p>
      <div className="drawn long">
        {/* biome-ignore lint/a11y/useSemanticElements: a drawing that is worked on has no element of its own */}
        <svg
          ref={cloth}
          className="hand-lay"
          viewBox={`0 0 ${length} ${width}`}
          role="group"
          aria-label={tell('screen.lay.byHand')}
        >
          <rect className="cloth" width={length} height={width} />
          <line className="end" x1={lay.length} x2={lay.length} y1={0} y2={width} />
          {lay.flaws?.map((flaw) => (
            <rect
              key={`${flaw.x} ${flaw.y}`}
              className="flaw"
              x={flaw.y}
              y={width - flaw.x - flaw.width}
              width={flaw.height}
              height={flaw.width}
            />
          ))}
          {placements.map((placement) => {
            const copy = nameOf(placement)
            const piece = draft.pieces.find(({ id }) => id === placement.piece)!
            const by = drag?.copy === copy ? drag.by : { x: 0, y: 0 }
            const moved = { ...placement, x: placement.x + by.x, y: placement.y + by.y }
            const points = onScreen(placePath(piece.cut, moved), width)
            const classes = [
              'piece',
              isHeld(copy) ? 'held' : '',
              wrong?.copies.includes(copy) ? 'wrong' : '',
              copy === chosen ? 'chosen' : '',
            ]
            const where = {
              piece: names.get(copy) ?? copy,
              x: { mm: Math.round(moved.x) },
              y: { mm: Math.round(moved.y) },
            }
            const [labelX, labelY] = middleOf(points)
            return (
              // biome-ignore lint/a11y/useSemanticElements: a piece of cloth in a drawing cannot be a button element
              <g
                key={copy}
                className={classes.join(' ')}
                role="button"
                tabIndex={0}
                aria-label={tell('screen.lay.hand.piece', where)}
                aria-pressed={isHeld(copy)}
                onFocus={() => setChosen(copy)}
                onKeyDown={onKey(placement)}
                onPointerDown={onDown(copy)}
                onPointerMove={onMove}
                onPointerUp={onUp(placement)}
              >
                <polygon points={points.map((p) => p.join(',')).join(' ')} />
                <text x={labelX} y={labelY} fontSize={Math.min(60, width / 14)}>
                  {numbers.get(placement)}
                </text>
              </g>
            )
          })}
        </svg>
      </div>
      <Refusal sentence={wrong?.sentence ?? doing.refused?.message} />
      <div className="lay-tools">
        {current === undefined ? null : (
          <>
            <strong>{names.get(nameOf(current))}</strong>
            <Button onPress={() => turn(current)}>{tell('screen.lay.hand.turn')}</Button>
            <Button onPress={() => hold(current)} pressed={isHeld(nameOf(current))}>
              {tell(isHeld(nameOf(current)) ? 'screen.lay.hand.free' : 'screen.lay.hand.lock')}
            </Button>
          </>
        )}
        {table.locked.length === 0 ? null : (
          <Button onPress={table.search}>{tell('screen.lay.hand.rest')}</Button>
        )}
      </div>
    </>
  )
}

const nameOf = ({ piece, copy }: Placement): string => `${piece}/${copy}`

type Spot = [x: number, y: number]

/** Chords to an arc on the screen. */
const CHORDS = 16

/** As seen on the table: the cut end at the left, the near selvedge below. */
const onScreen = (path: Path, width: number): Spot[] =>
  path.flatMap((s) =>
    Array.from({ length: s.kind === 'line' ? 1 : CHORDS }, (_, i): Spot => {
      const { x, y } = pointAt(s, i / CHORDS)
      return [y, width - x]
    }),
  )

function middleOf(points: readonly Spot[]): Spot {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2]
}

/** Turned by half about the middle of its box. */
function turnedInPlace(placement: Placement, cut: Path): Placement {
  const [x, y] = middleOf(onScreen(placePath(cut, placement), 0))
  const turned = { ...placement, angle: ((placement.angle + 180) % 360) as Placement['angle'] }
  const [newX, newY] = middleOf(onScreen(placePath(cut, turned), 0))
  return { ...turned, x: turned.x - (y - newY), y: turned.y + (x - newX) }
}
