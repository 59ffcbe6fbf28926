import { printDayShort } from '../../core/words/dates.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { useHalfFilled } from '../parts/kept.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf, goTo } from '../router.ts'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

type Client = OutputOf<'clients.list'>['clients'][number]

/** Everyone in the book, and a line to enter someone new. */
export function Clients() {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { value, refused } = useQuery('clients.list', {})
  const doing = useDoing()
  const [name, setName, forgetName] = useHalfFilled('name', '')
  const [email, setEmail, forgetEmail] = useHalfFilled('email', '')
  const enter = () =>
    doing.run(async () => {
      const { client } = await workroom.ask('client.add', { name, email })
      forgetName()
      forgetEmail()
      goTo('clients', client.id)
    })
  const standing = ({ measured, open, had }: Client) =>
    [
      measured === null
        ? tell('client.unmeasured')
        : tell('client.measured', { day: printDayShort(measured, reader.locale) }),
      ...(open === 0 ? [] : [tell(open === 1 ? 'client.open.one' : 'client.open', { count: open })]),
      ...(had === null
        ? []
        : [
            tell(had.garments === 1 ? 'client.had.one' : 'client.had', {
              ...{ count: had.garments, day: printDayShort(had.last, reader.locale) },
            }),
          ]),
    ].join(' · ')
  return (
    <div className="stack">
      <h1>{tell('screen.room.clients')}</h1>
      <form
        className="sheet row"
        onSubmit={(event) => {
          event.preventDefault()
          void enter()
        }}
      >
        <TextField label={tell('screen.client.new')} value={name} onChange={setName} required />
        <TextField label={tell('screen.client.email')} value={email} onChange={setEmail} type="email" />
        <Button main type="submit" busy={doing.busy}>
          {tell('screen.client.enter')}
        </Button>
      </form>
      <StockSize />
      <Refusal sentence={doing.refused?.message ?? refused} />
      {value?.clients.length === 0 ? <p>{tell('screen.client.none')}</p> : null}
      <ul className="entries">
        {value?.clients.map((client) => (
          <li key={client.id}>
            <a className="entry client" href={addressOf('clients', client.id)}>
              <strong>{client.name}</strong>
              <span className="quiet">{client.address.join(', ')}</span>
              <span className="quiet">{standing(client)}</span>
            </a>
          </li>
        ))}
      </ul>
    </div>
  )
}

/** A size to make for stock: a wearer in the book whom nobody measured. */
function StockSize() {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [of, setOf] = useHalfFilled<'women' | 'men'>('of', 'women')
  const [chest, setChest, forgetChest] = useHalfFilled('chest', '')
  const [stature, setStature, forgetStature] = useHalfFilled('stature', '')
  const enter = () =>
    doing.run(async () => {
      const { client } = await workroom.ask('stockSize.add', { of, chest, stature })
      forgetChest()
      forgetStature()
      goTo('clients', client.id)
    })
  return (
    <details open={chest !== '' || stature !== '' ? true : undefined}>
      <summary>{tell('screen.stock.title')}</summary>
      <form
        className="sheet stack"
        onSubmit={(event) => {
          event.preventDefault()
          void enter()
        }}
      >
        <p className="quiet">{tell('screen.stock.about')}</p>
        <div className="row">
          <SelectField
            label={tell('screen.stock.of')}
            value={of}
            onChange={(id) => setOf(id as typeof of)}
            options={(['women', 'men'] as const).map((id) => ({ id, name: tell(`screen.measure.of.${id}`) }))}
          />
          <TextField label={tell('screen.stock.chest')} value={chest} onChange={setChest} required />
          <TextField label={tell('screen.stock.stature')} value={stature} onChange={setStature} required />
          <Button type="submit" busy={doing.busy}>
            {tell('screen.stock.enter')}
          </Button>
        </div>
        <Refusal sentence={doing.refused?.message} />
      </form>
    </details>
  )
}
