import { printLength } from '../../core/words/length.ts'
import type { Reader } from '../../core/words/say.ts'
import { writeNumber } from '../../core/words/typed-number.ts'
import type { InputOf } from '../../core/workroom.ts'
import { WordHelp } from '../help/help.tsx'
import { amountOf, amountText, numberOf } from '../parts/amount.ts'
import { SelectField, TextField } from '../parts/field.tsx'
import { useHouse, useQuery, useTell } from '../workroom.tsx'
import type { Cloth } from './lengths.tsx'

const EMPTY = {
  ...{ name: '', fibre: '', width: '', selvedge: '0', price: '', increment: '', warp: '5', weft: '3' },
  ...{ charged: 'bought', supplier: '', leadDays: '7' },
}
/** A cloth as typed: shrinkages in per cent, lengths and price in the maker's own manner. */
export type ClothTexts = typeof EMPTY
type Given = InputOf<'cloth.add'>

/** What stands in the fields: nothing yet, or a cloth of the book. */
export function clothTexts(cloth: Cloth | undefined, { unit, locale }: Reader): ClothTexts {
  if (cloth === undefined) return EMPTY
  const { name, fibre, width, selvedge, increment, warpShrinkage, weftShrinkage, priceMinor, currency } =
    cloth
  const percent = (part: number) => writeNumber(Math.round(part * 10_000) / 100, locale)
  return {
    ...{ name, fibre, charged: cloth.charged, supplier: cloth.supplier, leadDays: String(cloth.leadDays) },
    ...{ width: printLength(width, unit, locale), increment: printLength(increment, unit, locale) },
    selvedge: selvedge === 0 ? '0' : printLength(selvedge, unit, locale),
    ...{ warp: percent(warpShrinkage), weft: percent(weftShrinkage) },
    price: amountText({ minor: priceMinor, currency }, locale),
  }
}

/** The cloth that the fields say. */
export const clothTyped = (typed: ClothTexts, currency: string): Given => ({
  ...{ name: typed.name, fibre: typed.fibre, width: typed.width, supplier: typed.supplier },
  selvedge: Number(typed.selvedge) === 0 ? 0 : typed.selvedge,
  warpShrinkage: numberOf(typed.warp || '0') / 100,
  weftShrinkage: numberOf(typed.weft || '0') / 100,
  pricePerMetre: amountOf(typed.price, currency),
  charged: typed.charged as 'bought' | 'used',
  leadDays: numberOf(typed.leadDays),
  ...(typed.increment.trim() === '' ? {} : { increment: typed.increment }),
})

/**
 * A cloth of the book with what was written over. What was left as it was printed stays what it is to the last digit,
 * and what has no field stays too.
 */
export function clothChanged(cloth: Cloth, typed: ClothTexts, reader: Reader): Given {
  const printed = clothTexts(cloth, reader)
  const { width, increment, warpShrinkage, weftShrinkage, selvedge, rightSide, nap, thickness, note } = cloth
  const left = (id: keyof ClothTexts) => typed[id] === printed[id]
  return {
    ...clothTyped(typed, cloth.currency),
    ...{ rightSide, nap, thickness, note },
    ...(left('width') ? { width } : {}),
    ...(left('selvedge') ? { selvedge } : {}),
    ...(left('increment') ? { increment } : {}),
    ...(left('warp') ? { warpShrinkage } : {}),
    ...(left('weft') ? { weftShrinkage } : {}),
  }
}

type Props = {
  field: (id: keyof ClothTexts) => { value: string; onChange: (text: string) => void }
  /** What refused the cloth, shown at the field it speaks of. */
  refused: { message: string; field: string | undefined } | undefined
}

/** What cloth is usually of, to choose from. */
const FIBRES = ['linen', 'hemp', 'wool', 'silk', 'cotton', 'linenAndCotton'] as const

/** What is known of a cloth one can buy. */
export function ClothFields({ field, refused }: Props) {
  const { reader } = useHouse()
  const tell = useTell()
  const currency = useQuery('settings.get', {}).value?.settings.rates.currency ?? ''
  const charged = field('charged')
  const at = (id: keyof ClothTexts, name: string = id) => ({
    ...field(id),
    wrong: refused?.field?.split('.').at(-1) === name ? refused.message : undefined,
  })
  return (
    <div className="columns">
      <TextField label={tell('screen.cloth.name')} required {...at('name')} />
      <TextField
        label={tell('screen.cloth.fibre')}
        help={tell('cloth.fibre.help')}
        usual={FIBRES.map((id) => tell(`cloth.fibre.${id}`))}
        {...at('fibre')}
      />
      <TextField label={tell('screen.cloth.width', { unit: reader.unit })} required {...at('width')} />
      <TextField
        label={tell('screen.cloth.selvedge', { unit: reader.unit })}
        help={tell('screen.cloth.selvedge.help')}
        {...at('selvedge')}
      />
      <TextField
        label={tell('screen.cloth.price', { currency })}
        help={tell('screen.cloth.price.help')}
        required
        {...at('price', 'pricePerMetre')}
      />
      <TextField label={tell('screen.cloth.increment')} {...at('increment')} />
      <TextField
        label={tell('screen.cloth.warp')}
        mark={<WordHelp word="shrinkage" />}
        {...at('warp', 'warpShrinkage')}
      />
      <TextField label={tell('screen.cloth.weft')} {...at('weft', 'weftShrinkage')} />
      <SelectField
        label={tell('screen.cloth.charged')}
        options={(['bought', 'used'] as const).map((id) => ({
          ...{ id, name: tell(`screen.cloth.charged.${id}`) },
        }))}
        help={tell(`cloth.charged.${charged.value === 'used' ? 'used' : 'bought'}.help`)}
        {...charged}
      />
      <TextField label={tell('cloth.supplier')} help={tell('cloth.supplier.help')} {...at('supplier')} />
      <TextField
        label={tell('cloth.leadDays')}
        help={tell('cloth.leadDays.help')}
        required
        {...at('leadDays')}
      />
    </div>
  )
}
