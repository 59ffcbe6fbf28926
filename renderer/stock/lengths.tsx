import { useState } from 'react'
import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Acts } from '../parts/acts.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Tick } from '../parts/tick.tsx'
import { useHouse, useQuery, useTell } from '../workroom.tsx'
import { AddLength } from './add-length.tsx'
import { LengthEntry } from './length-entry.tsx'

/** A length in stock and what is free of it, and a cloth of the book; mm. */
export type Length = OutputOf<'stock.list'>['lengths'][number]
export type Cloth = OutputOf<'cloths.list'>['cloths'][number]

/** Lengths of cloth in the house and on their way: what is free, what is promised, what was cut. */
export function Lengths({ cloths }: { cloths: readonly Cloth[] }) {
  const tell = useTell()
  const [used, setUsed] = useState(false)
  const { value, refused, reload } = useQuery('stock.list', { used })
  const garmentOf = useGarmentsById()
  if (cloths.length === 0) return null
  const waiting = (arrived: boolean) =>
    value?.lengths.filter(({ arrivedDay }) => (arrivedDay !== null) === arrived) ?? []
  return (
    <section className="sheet stack">
      <h2>{tell('life.stock')}</h2>
      <Refusal sentence={refused} />
      {value?.lengths.length === 0 ? <p className="quiet">{tell('life.stock.none')}</p> : null}
      <ul className="entries life">
        {[...waiting(true), ...waiting(false)].map((length) => (
          <LengthEntry key={length.id} {...{ length, garmentOf }} onChanged={reload} />
        ))}
      </ul>
      {value === undefined || value.value.minor === 0 ? null : (
        <p>{tell('life.stock.value', { value: value.value })}</p>
      )}
      <Tick wanted name={tell('life.stock.used')} done={used} onChange={setUsed} />
      <Acts
        acts={[
          {
            ...{ id: 'add', words: tell('life.stock.add') },
            form: (close) => <AddLength {...{ cloths, close }} onDone={reload} />,
          },
        ]}
      />
    </section>
  )
}

/** Names a garment of any commission, with the commission's number. */
function useGarmentsById(): (id: string) => string {
  const { reader } = useHouse()
  const tell = useTell()
  const { value } = useQuery('commissions.list', { most: 500 })
  const names = new Map(
    (value?.commissions ?? []).flatMap(({ number, garments }) =>
      garments.map(({ id, title, wearer }) => {
        const garment = tell('paper.garment.forWhom', { title: say(title, reader), wearer })
        return [id, tell('life.stock.ofCommission', { garment, number })] as const
      }),
    ),
  )
  return (id) => names.get(id) ?? '–'
}
