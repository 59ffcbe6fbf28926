import { Button } from '../parts/button.tsx'
import { TextField } from '../parts/field.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import type { LayTable } from './use-lay.ts'

const SIDES = ['x', 'y', 'width', 'height'] as const
const EMPTY = { x: '', y: '', width: '', height: '' }

/** A distance of none, as typed. */
const NOTHING = /^\s*0\s*$/

/** Holes and stains in the cloth that the pieces must keep off. */
export function Flaws({ table }: { table: LayTable }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const [typed, setTyped] = useHalfFilled('flaw', EMPTY)
  const doing = useDoing()
  const length = async (text: string) => (await workroom.ask('length.read', { text })).mm
  const distance = (text: string) => (NOTHING.test(text) ? 0 : length(text))
  const mark = () =>
    doing
      .run(async () => {
        const [x, y] = [await distance(typed.x), await distance(typed.y)]
        const [width, height] = [await length(typed.width), await length(typed.height)]
        table.setFlaws([...table.flaws, { x, y, width, height }])
      })
      .then((done) => done && setTyped(EMPTY))
  return (
    <details>
      <summary>{tell('screen.lay.flaws')}</summary>
      <div className="stack">
        <p className="quiet">{tell('screen.lay.flaws.about')}</p>
        <form
          className="lay-tools"
          onSubmit={(event) => {
            event.preventDefault()
            void mark()
          }}
        >
          {SIDES.map((side) => (
            <TextField
              key={side}
              label={tell(`screen.lay.flaw.${side}`)}
              value={typed[side]}
              onChange={(text) => setTyped((before) => ({ ...before, [side]: text }))}
              required
            />
          ))}
          <Button type="submit" busy={doing.busy}>
            {tell('screen.lay.flaw.mark')}
          </Button>
        </form>
        <Refusal sentence={doing.refused?.message} />
        <div className="lay-tools">
          {table.flaws.map((flaw) => (
            <Button
              key={JSON.stringify(flaw)}
              onPress={() => table.setFlaws(table.flaws.filter((one) => one !== flaw))}
            >
              {tell('screen.lay.flaw.take', {
                ...{ across: { mm: flaw.width }, along: { mm: flaw.height } },
                ...{ x: { mm: flaw.x }, y: { mm: flaw.y } },
              })}
            </Button>
          ))}
        </div>
      </div>
    </details>
  )
}
