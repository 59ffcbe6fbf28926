import { printLength } from '../../core/words/length.ts'
import { writeNumber } from '../../core/words/typed-number.ts'
import { ActForm } from '../parts/acts.tsx'
import { numberOf } from '../parts/amount.ts'
import { TextField } from '../parts/field.tsx'
import { useTyped } from '../parts/typed.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { Supply } from './amounts.ts'

type Props = Pick<Supply, 'soldBy' | 'pack'> & {
  label: string
  keep: string
  /** Helps with the amount. */
  help?: string
  /** What stands in the field before anything is typed; nothing where it is left out. */
  first?: number
  work: (amount: number) => Promise<unknown>
  close: () => void
  onDone: () => void
}

/** So much of a thread or notion: metres of thread, pieces, or a length as it is measured. */
export function AmountForm({ soldBy, pack, label, keep, help, first, work, close, onDone }: Props) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const printed =
    first === undefined
      ? ''
      : soldBy === 'metre'
        ? printLength(first, reader.unit, reader.locale)
        : writeNumber(first, reader.locale)
  const { typed, field } = useTyped({ amount: printed })
  const amount = async () => {
    if (soldBy !== 'metre' || /^\s*0*[.,]?0*\s*$/.test(typed.amount)) return numberOf(typed.amount)
    return (await workroom.ask('length.read', { text: typed.amount })).mm
  }
  const full = soldBy === 'reel' || soldBy === 'skein' ? tell(`drawer.one.${soldBy}`, { pack }) : undefined
  const said = [help, full].filter((one) => one !== undefined).join(' ')
  return (
    <ActForm
      {...{ label, keep, close }}
      work={async () => {
        await work(await amount())
        onDone()
      }}
    >
      <div className="columns">
        <TextField
          label={tell(`drawer.by.${soldBy}`)}
          required
          {...(said === '' ? {} : { help: said })}
          {...field('amount')}
        />
      </div>
    </ActForm>
  )
}
