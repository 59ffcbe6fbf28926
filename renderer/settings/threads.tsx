import { STITCHES, type StitchId } from '../../core/words/stitches.ts'
import { writeNumber } from '../../core/words/typed-number.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { Tick } from '../parts/tick.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import { Typing } from './fields.tsx'
import type { Form, TypedThread, Usual } from './form.ts'

/** Hand stitches that are at times sewn with the thread double. */
const DOUBLED: readonly StitchId[] = [
  'running',
  'backstitch',
  'halfBackstitch',
  'felling',
  'hemming',
  'stab',
  'buttonhole',
  'gathering',
]

/** The thread she sews with, what else is in the drawer, and her habits with it. */
export function Threads({ form, usual }: { form: Form; usual: Usual }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { typed, set } = form
  const [hand, machine, ...others] = typed.threads
  const change = (id: string, to: Partial<TypedThread>) =>
    set({ threads: typed.threads.map((one) => (one.id === id ? { ...one, ...to } : one)) })
  const fresh = () => {
    const thread = { id: crypto.randomUUID(), work: 'hand', name: '', metres: '', price: '', soldAs: 'reel' }
    set({ threads: [...typed.threads, thread] })
  }
  return (
    <section className="sheet stack">
      <h2>{tell('screen.settings.threads')}</h2>
      <p className="quiet">{tell('screen.settings.threadsAbout')}</p>
      {[hand!, machine!].map((thread) => (
        <fieldset key={thread.id} className="grouped">
          <legend>{tell(`screen.settings.thread.${thread.id as 'hand'}`)}</legend>
          <ThreadFields {...{ form, thread }} onChange={(to) => change(thread.id, to)} />
        </fieldset>
      ))}
      {others.length === 0 ? null : <h3>{tell('screen.settings.thread.others')}</h3>}
      {others.map((thread) => (
        <div key={thread.id} className="grouped">
          <ThreadFields {...{ form, thread }} work onChange={(to) => change(thread.id, to)} />
          <Button onPress={() => set({ threads: typed.threads.filter(({ id }) => id !== thread.id) })}>
            {tell('screen.settings.thread.drop', { name: thread.name })}
          </Button>
        </div>
      ))}
      <div>
        <Button onPress={fresh}>{tell('screen.settings.thread.add')}</Button>
      </div>
      <div className="columns">
        <Typing form={form} id="needleful" at="threadRules.needleful" />
        <Typing form={form} id="waste" at="threadRules.machineWaste" />
      </div>
      <Tick
        wanted
        name={tell('screen.settings.waxed')}
        done={typed.waxed}
        onChange={(waxed) => set({ waxed })}
      />
      <details>
        <summary>{tell('screen.settings.density')}</summary>
        <p className="quiet">{tell('screen.settings.densityAbout')}</p>
        <div className="columns">
          {STITCHES.map((id) => (
            <Typing
              key={id}
              form={form}
              id={`density.${id}`}
              label={tell(`sew.stitch.${id}`)}
              placeholder={writeNumber(usual.density[id], reader.locale)}
              at={`ways.density.${id}`}
            />
          ))}
        </div>
      </details>
      <fieldset className="grouped">
        <legend>{tell('screen.settings.doubled')}</legend>
        <div className="columns">
          {DOUBLED.map((id) => (
            <Tick
              key={id}
              wanted
              name={tell(`sew.stitch.${id}`)}
              done={typed.doubled.includes(id)}
              onChange={(double) =>
                set({
                  doubled: double ? [...typed.doubled, id] : typed.doubled.filter((one) => one !== id),
                })
              }
            />
          ))}
        </div>
      </fieldset>
    </section>
  )
}

type FieldsProps = {
  form: Form
  thread: TypedThread
  /** Whether it is to be said what it is sewn with. */
  work?: boolean
  onChange: (to: Partial<TypedThread>) => void
}

function ThreadFields({ form, thread, work = false, onChange }: FieldsProps) {
  const tell = useTell()
  const { currency = '' } = form.typed.text
  return (
    <div className="columns">
      <TextField
        label={tell('screen.settings.thread.name')}
        value={thread.name}
        onChange={(name) => onChange({ name })}
      />
      <TextField
        label={tell('screen.settings.thread.metres')}
        value={thread.metres}
        onChange={(metres) => onChange({ metres })}
      />
      <TextField
        label={tell('screen.settings.thread.price', { currency })}
        value={thread.price}
        onChange={(price) => onChange({ price })}
      />
      <SelectField
        label={tell('screen.settings.thread.soldAs')}
        value={thread.soldAs}
        onChange={(soldAs) => onChange({ soldAs })}
        options={(['reel', 'skein'] as const).map((id) => ({
          ...{ id, name: tell(`screen.settings.thread.${id}`) },
        }))}
      />
      {work ? (
        <SelectField
          label={tell('screen.settings.thread.work')}
          value={thread.work}
          onChange={(to) => onChange({ work: to })}
          options={(['hand', 'machine'] as const).map((id) => ({
            ...{ id, name: tell(`screen.settings.thread.${id}`) },
          }))}
        />
      ) : null}
    </div>
  )
}
