import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import { garmentSaid } from './shopping-text.ts'

type Stock = OutputOf<'shopping.list'>['fromStock']

/** Cloth that would do for garments which nobody has promised it to yet. */
export function FromStock({ stock, onDone }: { stock: Stock; onDone: () => void }) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const promise = (id: string, garmentId: string, length: number) =>
    doing.run(() => workroom.ask('stock.reserve', { id, garmentId, length })).then((done) => done && onDone())
  return (
    <section className="sheet stack">
      <h2>{tell('shopping.fromStock')}</h2>
      <ul className="entries life">
        {stock.map((one) => {
          const { lengthId, garmentId, mm, cloth, place, here } = one
          const garment = garmentSaid(one, tell, reader)
          const said = { length: { mm }, cloth, place, garment }
          const words = here ? (place === '' ? 'here' : 'hereAt') : 'coming'
          return (
            <li key={`${lengthId} ${garmentId}`}>
              <div className="between">
                <p>{tell(`shopping.fromStock.${words}`, said)}</p>
                <Button
                  busy={doing.busy}
                  label={tell('life.doing', { doing: tell('shopping.fromStock.promise'), what: garment })}
                  onPress={() => void promise(lengthId, garmentId, mm)}
                >
                  {tell('shopping.fromStock.promise')}
                </Button>
              </div>
            </li>
          )
        })}
      </ul>
      <Refusal sentence={doing.refused?.message} />
    </section>
  )
}
