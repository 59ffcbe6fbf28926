import { useTell } from '../workroom.tsx'
import { Choosing, Typing } from './fields.tsx'
import { type Form, SKILLS } from './form.ts'

/** What an hour costs, what it is to earn, and how a price is made of it. */
export function WorkMoney({ form }: { form: Form }) {
  const tell = useTell()
  const { currency = '' } = form.typed.text
  return (
    <section className="sheet stack">
      <h2>{tell('screen.settings.money', { currency })}</h2>
      <p className="quiet">{tell('screen.settings.moneyAbout')}</p>
      <div className="columns">
        {SKILLS.map((skill) => (
          <Typing
            key={skill}
            form={form}
            id={skill}
            label={tell('screen.settings.hourOf', { skill: tell(`price.skill.${skill}`) })}
            at={`rates.perHour.${skill}.minor`}
          />
        ))}
        <Typing
          form={form}
          id="target"
          help={tell('screen.settings.target.help')}
          at="rates.targetPerHour.minor"
        />
        <Typing form={form} id="hoursPerWeek" at="hoursPerWeek" />
        <Choosing
          form={form}
          id="profitKind"
          options={(['margin', 'markup'] as const).map((id) => ({ id, name: tell(`screen.settings.${id}`) }))}
        />
        <Typing form={form} id="profit" at="rates.profit.basisPoints" />
        <Typing form={form} id="taxName" />
        <Typing form={form} id="tax" help={tell('screen.settings.tax.help')} at="rates.tax.basisPoints" />
        <Typing form={form} id="rounding" at="rates.rounding.step" />
        <Choosing
          form={form}
          id="roundingTo"
          options={(['up', 'nearest', 'down'] as const).map((id) => ({
            ...{ id, name: tell(`screen.settings.rounding.${id}`) },
          }))}
        />
        <Typing
          form={form}
          id="clothMargin"
          help={tell('screen.settings.clothMargin.help')}
          at="buying.margin"
        />
        <Typing form={form} id="deposit" at="rates.depositBasisPoints" />
        <Typing form={form} id="atCutting" />
        <Typing form={form} id="atFitting" />
        <Typing form={form} id="currency" at="rates.currency" />
      </div>
    </section>
  )
}
