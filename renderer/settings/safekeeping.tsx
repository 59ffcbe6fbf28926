import { useState } from 'react'
import { printDate } from '../../core/words/dates.ts'
import { momentFormat, numberFormat } from '../../core/words/formats.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { ActForm, Acts } from '../parts/acts.tsx'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'
import { Move } from './move.tsx'
import { Seal, Unseal } from './sealed.tsx'

type Backup = OutputOf<'backups.list'>['backups'][number]

/** The copies of the book: how they are made, one made now, and the way back to any of them. */
export function Safekeeping({ onRestored }: { onRestored: () => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [said, setSaid] = useState('')
  const { value, refused, reload } = useQuery('backups.list', {})
  const percent = ({ done }: { done: number }) =>
    setSaid(tell('safe.percent', { percent: Math.round(100 * done) }))
  const make = () =>
    doing.run(async () => {
      await workroom.ask('backup.make', {}, percent)
      setSaid(tell('safe.made'))
      reload()
    })
  const forget = () =>
    doing.run(async () => {
      const { backups } = await workroom.ask('backups.forget', {}, percent)
      setSaid(tell('safe.forget.done', { count: backups }))
      reload()
    })
  const sayAnew = (sentence: string) => {
    setSaid(sentence)
    reload()
  }
  return (
    <section className="sheet stack">
      <h2>{tell('safe.title')}</h2>
      <p className="quiet">{tell('safe.about')}</p>
      <div className="row">
        <Button busy={doing.busy} onPress={() => void make()}>
          {tell('safe.make')}
        </Button>
      </div>
      <Acts
        acts={[
          {
            ...{ id: 'seal', words: tell('safe.seal') },
            form: (close) => <Seal close={close} onSealed={sayAnew} />,
          },
          {
            ...{ id: 'unseal', words: tell('safe.unseal') },
            form: (close) => <Unseal close={close} onOpened={sayAnew} />,
          },
          {
            ...{ id: 'move', words: tell('safe.move') },
            form: (close) => <Move {...{ close, onMoved: onRestored }} />,
          },
        ]}
      />
      <p role="status">{said}</p>
      <Refusal sentence={doing.refused?.message ?? refused} />
      {value?.backups.length === 0 ? <p>{tell('safe.none')}</p> : null}
      {value?.backups.some(({ forgotten }) => (forgotten ?? 0) > 0) ? (
        <>
          <p>{tell('safe.forget.about')}</p>
          <div className="row">
            <Button busy={doing.busy} onPress={() => void forget()}>
              {tell('safe.forget')}
            </Button>
          </div>
        </>
      ) : null}
      <ul className="entries life">
        {value?.backups.map((backup) => (
          <Kept key={backup.name} backup={backup} onRestored={onRestored} />
        ))}
      </ul>
    </section>
  )
}

function Kept({ backup, onRestored }: { backup: Backup; onRestored: () => void }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { at, why, bytes, forgotten } = backup
  const moment = new Date(at)
  const when = tell('safe.when', {
    day: printDate(at.slice(0, 10), reader.locale),
    time: momentFormat(reader.locale, { timeStyle: 'short' }).format(moment),
  })
  const size = numberFormat(reader.locale, { maximumFractionDigits: 1 }).format(bytes / 1e6)
  return (
    <li>
      <p>
        <strong>{when}</strong>{' '}
        <span className="quiet">
          {tell(`safe.why.${why}`)} · {tell('safe.size', { size })}
        </span>
      </p>
      {forgotten !== null && forgotten > 0 ? <p>{tell('safe.forgotten', { count: forgotten })}</p> : null}
      <Acts
        plain
        acts={[
          {
            ...{ id: 'back', words: tell('safe.look'), label: tell('safe.look.of', { when }) },
            form: (close) => <GoBack {...{ backup, when, close, onRestored }} />,
          },
        ]}
      />
    </li>
  )
}

type GoBackProps = { backup: Backup; when: string; close: () => void; onRestored: () => void }

/** What going back would change, and the step itself: the store is opened anew, and is the copy then. */
function GoBack({ backup: { name }, when, close, onRestored }: GoBackProps) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { value, refused } = useQuery('backup.preview', { name })
  const { value: house } = useQuery('workroom.describe', {})
  if (value === undefined || house === undefined) return <Refusal sentence={refused} />
  const columns = ['what', 'here', 'there', 'lost', 'back'] as const
  return (
    <ActForm
      label={tell('safe.look.of', { when })}
      keep={tell('safe.restore')}
      close={close}
      work={async () => {
        await workroom.ask('backup.restore', { name })
        await workroom.bridge.enter(house.kind === 'sample' ? 'sample' : 'own')
        onRestored()
      }}
    >
      <table className="ledger">
        <caption>{tell('safe.preview')}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col" className={column === 'what' ? '' : 'amount'}>
                {tell(`safe.column.${column}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {value.counted.map(({ what, here, there, onlyHere, onlyThere }) => (
            <tr key={what}>
              <th scope="row">{tell(`safe.what.${what}`)}</th>
              <td className="amount">{here}</td>
              <td className="amount">{there}</td>
              <td className={onlyHere > 0 ? 'amount under' : 'amount'}>{onlyHere}</td>
              <td className="amount">{onlyThere}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{tell('safe.sure')}</p>
    </ActForm>
  )
}
