import { useState } from 'react'
import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { TextField } from '../parts/field.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import type { Cloth } from './lengths.tsx'

const WAYS = ['warp', 'weft'] as const
const NOTHING = { before: '', after: '' }
type Marks = Record<(typeof WAYS)[number], (typeof NOTHING)[]>
type Square = OutputOf<'testSquare.read'>['square']

/** As many pairs of marks as a square has room for each way. */
const MOST = 3
/** How far apart marks should be, mm. */
const APART = 350

type Props = { cloth: Cloth; close: () => void; onKept: () => void }

/** The marks on a test square, what they say of the cloth's shrinking, and that kept if she agrees. */
export function TestSquare({ cloth: { id, revision, name, ...cloth }, close, onKept }: Props) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [marks, setMarks, forget] = useHalfFilled<Marks>('marks', { warp: [NOTHING], weft: [NOTHING] })
  const [square, setSquare] = useState<Square>()
  const write = (next: Marks) => {
    setMarks(next)
    setSquare(undefined)
  }
  const measured = () => {
    const written = (way: (typeof WAYS)[number]) =>
      marks[way].filter(({ before, after }) => before.trim() !== '' || after.trim() !== '')
    return { warp: written('warp'), weft: written('weft') }
  }
  const read = () =>
    doing.run(async () => setSquare((await workroom.ask('testSquare.read', measured())).square))
  const keep = async () => {
    if (!(await doing.run(() => workroom.ask('cloth.testSquare', { id, revision, ...measured() })))) return
    forget()
    close()
    onKept()
  }
  const percent = (part: number) => part * 100
  return (
    <form
      className="stack"
      aria-label={tell('life.doing', { doing: tell('cloth.square'), what: name })}
      onSubmit={(event) => {
        event.preventDefault()
        void read()
      }}
    >
      <p className="quiet">{tell('cloth.square.how', { apart: { mm: APART } })}</p>
      {WAYS.map((way) => (
        <fieldset key={way} className="stage">
          <legend>{tell(`cloth.square.${way}`)}</legend>
          {marks[way].map((pair, i) => (
            <MarksOf
              // biome-ignore lint/suspicious/noArrayIndexKey: the marks are known by their place on the square alone
              key={i}
              {...{ pair }}
              name={tell('cloth.square.pair', { way: tell(`cloth.square.${way}`), number: i + 1 })}
              onChange={(to) =>
                write({ ...marks, [way]: marks[way].map((one, at) => (at === i ? to : one)) })
              }
            />
          ))}
        </fieldset>
      ))}
      <Refusal sentence={doing.refused?.message} />
      {square === undefined ? null : (
        <div role="status">
          <p>
            <strong>
              {tell('cloth.square.says', {
                warp: percent(square.shrinkage.warp),
                weft: percent(square.shrinkage.weft),
              })}
            </strong>{' '}
            {tell('cloth.square.now', {
              warp: percent(cloth.warpShrinkage),
              weft: percent(cloth.weftShrinkage),
            })}
          </p>
          {square.told.map((one) => (
            <p key={one.code}>{say(one, reader)}</p>
          ))}
          <p className="quiet">{tell('cloth.change.quoted')}</p>
        </div>
      )}
      <div className="row">
        {square === undefined ? (
          <Button main type="submit" busy={doing.busy}>
            {tell('cloth.square.read')}
          </Button>
        ) : (
          <Button main busy={doing.busy} onPress={() => void keep()}>
            {tell('cloth.square.keep')}
          </Button>
        )}
        {marks.warp.length < MOST ? (
          <Button onPress={() => write({ warp: [...marks.warp, NOTHING], weft: [...marks.weft, NOTHING] })}>
            {tell('cloth.square.more')}
          </Button>
        ) : null}
        <Button onPress={close}>{tell('times.list.leave')}</Button>
      </div>
    </form>
  )
}

type MarksProps = { pair: typeof NOTHING; name: string; onChange: (pair: typeof NOTHING) => void }

function MarksOf({ pair, name, onChange }: MarksProps) {
  const tell = useTell()
  return (
    // biome-ignore lint/a11y/useSemanticElements: two fields side by side, in a fieldset already
    <div className="columns" role="group" aria-label={name}>
      {(['before', 'after'] as const).map((id) => (
        <TextField
          key={id}
          label={tell(`cloth.square.${id}`)}
          value={pair[id]}
          onChange={(text) => onChange({ ...pair, [id]: text })}
        />
      ))}
    </div>
  )
}
