import { printDate } from '../../core/words/dates.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { ActForm, Acts } from '../parts/acts.tsx'
import { SelectField, TextArea, TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { todayHere } from '../parts/today.ts'
import { useTyped } from '../parts/typed.ts'
import { type Loaded, useHouse, useTell } from '../workroom.tsx'

/** Notes and pictures of a commission, oldest first. */
export type Kept = OutputOf<'notes.list'>
type Note = Kept['notes'][number]
type Props = { commissionId: string; kept: Loaded<Kept> }
const KINDS = ['note', 'message'] as const

/** Notes on a commission, and what was written to the client. */
export function Notes({ commissionId, kept: { value, refused, reload } }: Props) {
  const tell = useTell()
  return (
    <section className="sheet stack">
      <h2>{tell('life.notes')}</h2>
      <Refusal sentence={refused} />
      {value?.notes.length === 0 ? <p className="quiet">{tell('life.notes.none')}</p> : null}
      <ul className="entries life">
        {value?.notes.map((note) => (
          <Entry key={note.id} note={note} onChanged={reload} />
        ))}
      </ul>
      <Acts
        acts={[
          {
            ...{ id: 'add', words: tell('life.note.add') },
            form: (close) => <Write {...{ commissionId, close }} onDone={reload} />,
          },
        ]}
      />
    </section>
  )
}

function Entry({ note, onChanged }: { note: Note; onChanged: () => void }) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { id, revision, text, kind } = note
  const day = printDate(note.day, reader.locale)
  const act = (name: 'change' | 'remove') => {
    const words = tell(`life.note.${name}`)
    return {
      id: name,
      words,
      label: tell('life.doing', { doing: words, what: `${day}, ${text.slice(0, 40)}` }),
    }
  }
  return (
    <li>
      <p className="quiet">
        {day}
        {kind === 'message' ? ` · ${tell('life.note.message')}` : ''}
      </p>
      <p className="written">{text}</p>
      <Acts
        plain
        acts={[
          { ...act('change'), form: (close) => <Write {...{ note, close }} onDone={onChanged} /> },
          {
            ...act('remove'),
            form: (close) => (
              <ActForm
                label={act('remove').label}
                keep={tell('life.note.remove')}
                close={close}
                work={async () => {
                  await workroom.ask('note.remove', { id, revision })
                  onChanged()
                }}
              >
                <p>{tell('life.note.remove.sure', { day })}</p>
              </ActForm>
            ),
          },
        ]}
      />
    </li>
  )
}

type WriteProps = { close: () => void; onDone: () => void } & ({ commissionId: string } | { note: Note })

/** A note to be written, or one to be put right; what kind it is stays. */
function Write({ close, onDone, ...of }: WriteProps) {
  const { workroom } = useHouse()
  const tell = useTell()
  const note = 'note' in of ? of.note : undefined
  const { typed, field } = useTyped({
    ...{ kind: note?.kind ?? 'note', day: note?.day ?? todayHere(), text: note?.text ?? '' },
  })
  const work = async () => {
    const { day, text } = typed
    if ('note' in of)
      await workroom.ask('note.change', { id: of.note.id, revision: of.note.revision, day, text })
    else {
      const kind = typed.kind as Note['kind']
      await workroom.ask('note.add', { commissionId: of.commissionId, kind, day, text })
    }
    onDone()
  }
  return (
    <ActForm
      label={tell(note === undefined ? 'life.note.add' : 'life.note.change')}
      keep={tell('life.note.keep')}
      {...{ close, work }}
    >
      <TextArea label={tell('life.note.text')} {...field('text')} />
      <div className="columns">
        {note === undefined ? (
          <SelectField
            label={tell('life.note.kind')}
            options={KINDS.map((id) => ({ id, name: tell(`life.note.kind.${id}`) }))}
            {...field('kind')}
          />
        ) : null}
        <TextField label={tell('life.note.day')} type="date" required {...field('day')} />
      </div>
    </ActForm>
  )
}
