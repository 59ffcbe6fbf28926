import { Button } from '../parts/button.tsx'
import { TextField } from '../parts/field.tsx'
import { useTell } from '../workroom.tsx'
import { Typing } from './fields.tsx'
import type { Form, TypedCost } from './form.ts'

/** What the workroom costs in a year, and so its part of every hour. */
export function Year({ form }: { form: Form }) {
  const tell = useTell()
  const { typed, set } = form
  const { currency = '' } = typed.text
  const change = (key: string, to: Partial<TypedCost>) =>
    set({ costs: typed.costs.map((one) => (one.key === key ? { ...one, ...to } : one)) })
  const worked = typed.costs.some(({ amount }) => amount.trim() !== '')
  return (
    <section className="sheet stack">
      <h2>{tell('screen.settings.year', { currency })}</h2>
      <p className="quiet">{tell('screen.settings.yearAbout')}</p>
      {typed.costs.map(({ key, name, amount }) => (
        <div key={key} className="listed">
          <TextField
            label={tell('screen.settings.cost')}
            value={name}
            onChange={(text) => change(key, { name: text })}
          />
          <TextField
            label={tell('screen.settings.costAmount')}
            value={amount}
            onChange={(text) => change(key, { amount: text })}
          />
          <Button onPress={() => set({ costs: typed.costs.filter((one) => one.key !== key) })}>
            {tell('screen.settings.costDrop', { name })}
          </Button>
        </div>
      ))}
      <div>
        <Button
          onPress={() => set({ costs: [...typed.costs, { key: crypto.randomUUID(), name: '', amount: '' }] })}
        >
          {tell('screen.settings.costAdd')}
        </Button>
      </div>
      <div className="columns">
        <Typing form={form} id="soldHours" at="yearly.soldHours" />
        <Typing
          form={form}
          id="overhead"
          help={worked ? tell('screen.settings.overhead.worked') : undefined}
          at="rates.overheadPerHour.minor"
        />
      </div>
    </section>
  )
}
