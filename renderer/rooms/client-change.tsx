import type { OutputOf } from '../../core/workroom.ts'
import { ActForm, Acts } from '../parts/acts.tsx'
import { TextArea, TextField } from '../parts/field.tsx'
import { useTyped } from '../parts/typed.ts'
import { useHouse, useTell } from '../workroom.tsx'

type Client = OutputOf<'client.get'>['client']

/** The way to change what the book says of a client: her name, where she lives, how she is reached, what is noted. */
export function ClientChange({ client, onChanged }: { client: Client; onChanged: () => void }) {
  const tell = useTell()
  return (
    <div>
      <Acts
        plain
        acts={[
          {
            ...{ id: 'change', words: tell('client.change') },
            form: (close) => <Change {...{ client, close, onChanged }} />,
          },
        ]}
      />
    </div>
  )
}

function Change({ client, close, onChanged }: { client: Client; close: () => void; onChanged: () => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { id, revision } = client
  const { typed, field } = useTyped({
    ...{ name: client.name, address: client.address.join(', '), email: client.email, phone: client.phone },
    ...{ birthDay: client.birthDay ?? '', note: client.note },
  })
  const work = async () => {
    const { address, birthDay, ...plain } = typed
    const lines = address.split(',').map((line) => line.trim())
    await workroom.ask('client.change', {
      ...{ id, revision },
      client: {
        ...plain,
        address: lines.filter((line) => line !== ''),
        birthDay: birthDay === '' ? null : birthDay,
      },
    })
    onChanged()
  }
  return (
    <ActForm label={tell('client.change')} keep={tell('client.change.keep')} {...{ close, work }}>
      <div className="columns">
        <TextField label={tell('client.name')} {...field('name')} required />
        <TextField label={tell('screen.settings.address')} {...field('address')} />
        <TextField label={tell('screen.client.email')} type="email" {...field('email')} />
        <TextField label={tell('client.phone')} type="tel" {...field('phone')} />
        <TextField
          label={tell('client.birthDay')}
          type="date"
          help={tell('client.birthDay.help')}
          {...field('birthDay')}
        />
      </div>
      <TextArea label={tell('client.note')} {...field('note')} />
    </ActForm>
  )
}
