import { ActForm } from '../parts/acts.tsx'
import { amountOf } from '../parts/amount.ts'
import { SelectField, TextField } from '../parts/field.tsx'
import { todayHere } from '../parts/today.ts'
import { useTyped } from '../parts/typed.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { Cloth } from './lengths.tsx'

const WAYS = ['bought', 'washed', 'ordered'] as const

type Props = { cloths: readonly Cloth[]; close: () => void; onDone: () => void }

/** A length to be entered: one that is here, or one that is ordered. */
export function AddLength({ cloths, close, onDone }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { typed, field } = useTyped({
    ...{ cloth: cloths[0]!.id, length: '', width: '', price: '', place: '', supplier: '' },
    ...{ came: 'bought', expected: '' },
  })
  const currency = cloths.find(({ id }) => id === typed.cloth)!.currency
  const given = (id: 'width' | 'price' | 'expected') => typed[id].trim() !== ''
  const ordered = typed.came === 'ordered'
  const work = async () => {
    await workroom.ask('stock.add', {
      ...{ clothId: typed.cloth, length: typed.length, place: typed.place, supplier: typed.supplier },
      washed: typed.came === 'washed',
      ...(given('width') ? { width: typed.width } : {}),
      ...(given('price') ? { pricePerMetre: amountOf(typed.price, currency) } : {}),
      ...(ordered ? { orderedDay: todayHere() } : {}),
      ...(ordered && given('expected') ? { expectedDay: typed.expected } : {}),
    })
    onDone()
  }
  return (
    <ActForm label={tell('life.stock.add')} keep={tell('life.stock.keep')} {...{ close, work }}>
      <div className="columns">
        <SelectField
          label={tell('life.stock.cloth')}
          options={cloths.map(({ id, name }) => ({ id, name }))}
          {...field('cloth')}
        />
        <TextField label={tell('life.stock.length')} required {...field('length')} />
        <SelectField
          label={tell('life.stock.came')}
          options={WAYS.map((id) => ({ id, name: tell(`life.stock.came.${id}`) }))}
          {...field('came')}
        />
        {ordered ? (
          <TextField label={tell('life.stock.expected')} type="date" {...field('expected')} />
        ) : null}
        <TextField label={tell('life.stock.place')} {...field('place')} />
        <TextField
          label={tell('life.stock.width')}
          help={tell('life.stock.width.help')}
          {...field('width')}
        />
        <TextField
          label={tell('life.stock.price')}
          help={tell('life.stock.price.help')}
          {...field('price')}
        />
        <TextField label={tell('life.stock.supplier')} {...field('supplier')} />
      </div>
    </ActForm>
  )
}
