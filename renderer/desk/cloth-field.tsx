import { memo } from 'react'
import { fibresOf } from '../../core/lay/fibres.ts'
import { printLength } from '../../core/words/length.ts'
import { printMoney } from '../../core/words/money.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { SelectField } from '../parts/field.tsx'
import { useHouse, useQuery, useTell } from '../workroom.tsx'

type Cloth = OutputOf<'cloths.list'>['cloths'][number]
/** What a garment is usually made of; null where nothing prevails, undefined until it is known. */
type Usual = OutputOf<'construction.describe'>['usualFibre'] | undefined

const isOf = ({ fibre }: Cloth, usual: NonNullable<Usual>): boolean => fibresOf(fibre).includes(usual)

/** The cloth to begin with while she has chosen none: the first that is of what the garment is usually made of. */
export const firstCloth = (cloths: readonly Cloth[], usual: Usual): Cloth =>
  cloths.find((cloth) => usual != null && isOf(cloth, usual)) ?? cloths[0]!

type Props = {
  cloths: readonly Cloth[]
  chosen: Cloth
  usual: Usual
  onChange: (id: string) => void
}

/** The cloth of the garment, with what one chooses by: its width, its price, and what of it lies in the house. */
export const ClothField = memo(({ cloths, chosen, usual, onChange }: Props) => {
  const { reader } = useHouse()
  const tell = useTell()
  const { value: stock } = useQuery('stock.list', {})
  const length = (mm: number) => printLength(mm, reader.unit, reader.locale)
  const price = printMoney({ minor: chosen.priceMinor, currency: chosen.currency }, reader.locale)
  const lengths = stock?.lengths.filter(({ clothId }) => clothId === chosen.id) ?? []
  const free = (here: boolean) =>
    lengths.reduce((sum, one) => ((one.arrivedDay !== null) === here ? sum + one.free : sum), 0)
  const said = [
    tell('desk.cloth.sold', { width: length(chosen.width), price }),
    // Its line keeps its room until it is known what lies there.
    stock === undefined
      ? ''
      : tell(`desk.cloth.${free(true) > 0 ? 'here' : 'none'}`, { free: length(free(true)) }),
    ...(free(false) > 0 ? [tell('desk.cloth.coming', { free: length(free(false)) })] : []),
    ...(usual != null && !isOf(chosen, usual) ? [tell(`desk.cloth.usual.${usual}`)] : []),
  ]
  return (
    <SelectField
      label={tell('screen.desk.cloth')}
      value={chosen.id}
      onChange={onChange}
      options={cloths}
      help={said.join(' ')}
    />
  )
})
