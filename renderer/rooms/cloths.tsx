import { useState } from 'react'
import { printLength } from '../../core/words/length.ts'
import { amountOf, numberOf } from '../parts/amount.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { Lengths } from '../stock/lengths.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'
import { Remnants } from './remnants.tsx'

const EMPTY = { name: '', fibre: '', width: '', price: '', increment: '', warp: '5', weft: '3' }
type Charged = 'bought' | 'used'

/** Cloths one can buy, and a form for another. */
export function Cloths() {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { value, refused, reload } = useQuery('cloths.list', {})
  const { value: house } = useQuery('settings.get', {})
  const [typed, setTyped] = useState(EMPTY)
  const [charged, setCharged] = useState<Charged>('bought')
  const doing = useDoing()
  const field = (id: keyof typeof EMPTY, at = id as string, required = false) => (
    <TextField
      label={tell(`screen.cloth.${id}`)}
      value={typed[id]}
      onChange={(text) => setTyped((before) => ({ ...before, [id]: text }))}
      required={required}
      wrong={doing.refused?.field === at ? doing.refused.message : undefined}
    />
  )
  const add = () =>
    doing
      .run(() => {
        const currency = house?.settings.rates.currency ?? 'GBP'
        return workroom.ask('cloth.add', {
          name: typed.name,
          fibre: typed.fibre,
          width: typed.width,
          warpShrinkage: numberOf(typed.warp || '0') / 100,
          weftShrinkage: numberOf(typed.weft || '0') / 100,
          pricePerMetre: amountOf(typed.price, currency),
          charged,
          ...(typed.increment.trim() === '' ? {} : { increment: typed.increment }),
        })
      })
      .then((done) => {
        if (!done) return
        setTyped(EMPTY)
        reload()
      })
  return (
    <div className="stack">
      <h1>{tell('screen.room.cloths')}</h1>
      <form
        className="sheet stack"
        onSubmit={(event) => {
          event.preventDefault()
          void add()
        }}
      >
        <h2>{tell('screen.cloth.new')}</h2>
        <div className="columns">
          {field('name', 'name', true)}
          {field('fibre')}
          {field('width', 'width', true)}
          {field('price', 'pricePerMetre', true)}
          {field('increment')}
          {field('warp', 'warpShrinkage')}
          {field('weft', 'weftShrinkage')}
          <SelectField
            label={tell('screen.cloth.charged')}
            value={charged}
            onChange={(to) => setCharged(to as Charged)}
            options={(['bought', 'used'] as const).map((id) => ({
              ...{ id, name: tell(`screen.cloth.charged.${id}`) },
            }))}
          />
        </div>
        <Refusal sentence={doing.refused?.message} />
        <div>
          <Button main type="submit" busy={doing.busy}>
            {tell('screen.cloth.keep')}
          </Button>
        </div>
      </form>
      <Refusal sentence={refused} />
      <ul className="entries">
        {value?.cloths.map((cloth) => (
          <li key={cloth.id} className="entry">
            <strong>{cloth.name}</strong>
            <span className="quiet">
              {tell('screen.cloth.line', {
                width: { mm: cloth.width },
                warp: cloth.warpShrinkage * 100,
                weft: cloth.weftShrinkage * 100,
                step: printLength(cloth.increment, reader.unit, reader.locale),
              })}
              {cloth.charged === 'used' ? ` · ${tell('screen.cloth.charged.used')}` : ''}
            </span>
            <span className="amount">
              {tell('screen.cloth.perMetre', {
                price: { minor: cloth.priceMinor, currency: cloth.currency },
              })}
            </span>
          </li>
        ))}
      </ul>
      {value === undefined ? null : <Lengths cloths={value.cloths} />}
      <Remnants />
    </div>
  )
}
