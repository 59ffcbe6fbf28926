import { say } from '../../core/words/say.ts'
import { Acts } from '../parts/acts.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useHouse, useQuery, useTell } from '../workroom.tsx'
import { amountSaid, type Supply } from './amounts.ts'
import { AmountForm } from './drawer-forms.tsx'

/** Threads and notions, and how much of each is there. */
export function Drawer() {
  const tell = useTell()
  const { value, refused, reload } = useQuery('supplies.list', {})
  return (
    <section className="sheet stack">
      <h2>{tell('drawer.title')}</h2>
      <p className="quiet">{tell('drawer.about')}</p>
      <Refusal sentence={refused} />
      <ul className="entries drawer">
        {value?.supplies.map((supply) => (
          <Thing key={supply.id} {...{ supply }} onDone={reload} />
        ))}
      </ul>
    </section>
  )
}

function Thing({ supply, onDone }: { supply: Supply; onDone: () => void }) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { id, soldBy, pack, counted, left } = supply
  const name = say(supply.name, reader)
  const act = (does: 'came' | 'count') => {
    const words = tell(`drawer.${does}`)
    const label = tell('life.doing', { doing: words, what: name })
    return {
      ...{ id: does, words, label },
      form: (close: () => void) => (
        <AmountForm
          {...{ soldBy, pack, label, close, onDone }}
          keep={tell(`drawer.${does}.keep`)}
          {...(does === 'count' ? { help: tell('drawer.count.help') } : {})}
          work={(amount) =>
            workroom.ask(does === 'came' ? 'supply.add' : 'supply.count', { supply: id, amount })
          }
        />
      ),
    }
  }
  return (
    <li>
      <p>
        <strong>{name}</strong>
      </p>
      <p className={counted && left > 0 ? '' : 'quiet'}>
        {!counted
          ? tell('drawer.uncounted')
          : left === 0
            ? tell('drawer.none')
            : tell('drawer.some', { amount: amountSaid(tell, soldBy, left) })}
      </p>
      <div>
        <Acts plain acts={[act('came'), act('count')]} />
      </div>
    </li>
  )
}
