import type { InputOf } from '../../core/workroom.ts'
import { ActForm, Acts } from '../parts/acts.tsx'
import { TextField } from '../parts/field.tsx'
import { useTyped } from '../parts/typed.ts'
import { useDayOff } from '../plan/day-off.ts'
import { goTo } from '../router.ts'
import { useHouse, useTell } from '../workroom.tsx'

type Props = {
  /** What stands on the desk and on the quote. */
  order: () => InputOf<'quote.save'>
  onEntered: () => void
}

/** The quiet second way off the desk: work the client has said yes to already becomes a commission at once. */
export function AgreedAlready(props: Props) {
  const tell = useTell()
  return (
    <div>
      <Acts
        plain
        acts={[
          {
            ...{ id: 'agreed', words: tell('desk.agreed') },
            form: (close) => <Enter {...props} close={close} />,
          },
        ]}
      />
    </div>
  )
}

function Enter({ order, onEntered, close }: Props & { close: () => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const dayOff = useDayOff()
  const { typed, field } = useTyped({ due: '', note: '' })
  const work = async () => {
    const asked = { ...order(), dueDay: typed.due || null, note: typed.note }
    const { commission } = await workroom.ask('commission.enter', asked)
    onEntered()
    goTo('commissions', commission.id)
  }
  return (
    <ActForm
      label={tell('desk.agreed')}
      final="commission.enter"
      keep={tell('desk.agreed.keep')}
      {...{ close, work }}
    >
      <p>{tell('desk.agreed.about')}</p>
      <div className="columns">
        <TextField label={tell('life.days.due')} type="date" {...field('due')} help={dayOff(typed.due)} />
        <TextField label={tell('life.days.note')} {...field('note')} />
      </div>
    </ActForm>
  )
}
