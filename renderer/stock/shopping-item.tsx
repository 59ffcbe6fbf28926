import { printLength } from '../../core/words/length.ts'
import { say } from '../../core/words/say.ts'
import { ActForm, Acts } from '../parts/acts.tsx'
import { TextField } from '../parts/field.tsx'
import { useTyped } from '../parts/typed.ts'
import { addressOf } from '../router.ts'
import { useHouse, useTell } from '../workroom.tsx'
import { amountSaid, buySaid, type Item } from './amounts.ts'
import { AmountForm } from './drawer-forms.tsx'

type Props = { item: Item; day: string; onDone: () => void }

/** One thing to buy: how much of it, by when, for whom; and that it is ordered, or has come. */
export function ShoppingItem({ item, day, onDone }: Props) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { article, soldBy, orderBy, neededBy, garments } = item
  const what = say(item.name, reader)
  const late = orderBy !== null && orderBy < day
  const when = [
    ...(orderBy !== null && !late && orderBy === neededBy
      ? []
      : orderBy === null
        ? [tell('shopping.noDay')]
        : [tell(late ? 'shopping.orderNow' : 'shopping.orderBy', { day: { date: orderBy } })]),
    ...(neededBy === null ? [] : [tell('shopping.neededBy', { day: { date: neededBy } })]),
  ]
  const ordered = tell('life.doing', { doing: tell('shopping.ordered'), what })
  const has = tell('life.doing', { doing: tell('shopping.has'), what })
  const act =
    soldBy === null
      ? {
          ...{ id: 'ordered', words: tell('shopping.ordered'), label: ordered },
          form: (close: () => void) => <Ordered {...{ item, day, close, onDone }} label={ordered} />,
        }
      : {
          ...{ id: 'has', words: tell('shopping.has'), label: has },
          form: (close: () => void) => (
            <AmountForm
              {...{ soldBy, close, onDone }}
              label={has}
              keep={tell('shopping.has.keep')}
              pack={article.step}
              first={item.buy}
              work={(amount) => workroom.ask('supply.add', { supply: article.id, amount })}
            />
          ),
        }
  return (
    <li>
      <div className="length">
        <p>
          <strong>{what}</strong>
          <br />
          <span className={late ? 'under' : 'quiet'}>{when.join(' · ')}</span>
        </p>
        <p>
          <strong>{buySaid(tell, item)}</strong>
        </p>
        <div>
          {garments.map((one) => (
            <p key={one.garmentId}>
              {tell('shopping.for', {
                amount: amountSaid(tell, soldBy, one.missing),
                garment: tell('paper.garment.forWhom', {
                  title: say(one.title, reader),
                  wearer: one.wearer,
                }),
              })}{' '}
              <a className="figure" href={addressOf('commissions', one.commissionId)}>
                {one.number}
              </a>
            </p>
          ))}
        </div>
      </div>
      <Acts acts={[act]} />
    </li>
  )
}

type OrderedProps = Props & { label: string; close: () => void }

function Ordered({ item: { article, buy, expectedDay }, day, label, close, onDone }: OrderedProps) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const first = {
    length: printLength(buy, reader.unit, reader.locale),
    ...{ orderedDay: day, expectedDay: expectedDay ?? '' },
  }
  const { typed, field } = useTyped(first)
  const work = async () => {
    const { orderedDay } = typed
    await workroom.ask('shopping.order', {
      ...{ clothId: article.id, orderedDay },
      // As listed it is to the last hundredth what is listed.
      ...(typed.length === first.length ? {} : { length: typed.length }),
      ...(typed.expectedDay === '' ? {} : { expectedDay: typed.expectedDay }),
    })
    onDone()
  }
  return (
    <ActForm keep={tell('shopping.ordered.keep')} {...{ label, close, work }}>
      <div className="columns">
        <TextField label={tell('shopping.ordered.length')} required {...field('length')} />
        <TextField label={tell('shopping.ordered.day')} type="date" required {...field('orderedDay')} />
        <TextField label={tell('shopping.ordered.expected')} type="date" {...field('expectedDay')} />
      </div>
      <p className="quiet">{tell('shopping.ordered.help')}</p>
    </ActForm>
  )
}
