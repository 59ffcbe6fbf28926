import { languageOf, regionOf } from '../../core/words/languages.ts'
import { WORKROOM_UNITS } from '../../core/words/units.ts'
import { TextArea } from '../parts/field.tsx'
import { Tick } from '../parts/tick.tsx'
import { useTell } from '../workroom.tsx'
import { Choosing, Typing } from './fields.tsx'
import type { Form } from './form.ts'
import { TongueFields } from './region.tsx'

/** What stands on the workroom's papers. */
export function Papers({ form }: { form: Form }) {
  const tell = useTell()
  const { typed, set } = form
  const locale = typed.text.locale ?? 'en-GB'
  const year = new Date().getFullYear()
  return (
    <section className="sheet stack">
      <h2>{tell('screen.settings.papers')}</h2>
      <div className="columns">
        <Typing form={form} id="name" at="letterhead.name" />
        <Typing form={form} id="address" />
        <Typing form={form} id="email" />
        <Typing form={form} id="phone" />
        <Choosing form={form} id="paper" options={['A4', 'Letter'].map((id) => ({ id, name: id }))} />
        <Choosing
          form={form}
          id="unit"
          options={WORKROOM_UNITS.map((id) => ({ id, name: tell(`screen.unit.${id}`) }))}
        />
        <TongueFields
          language={languageOf(locale)}
          region={regionOf(locale)}
          currency={typed.text.currency ?? 'EUR'}
          onChange={({ language, region }) =>
            set({ text: { ...typed.text, locale: `${language}-${region}` } })
          }
        />
        <Typing form={form} id="validityDays" at="validityDays" />
        <Typing form={form} id="quotePrefix" at="numbering.quote" />
        <Typing form={form} id="commissionPrefix" at="numbering.commission" />
        <Choosing
          form={form}
          id="numbered"
          options={[
            {
              id: 'yearly',
              name: tell('screen.settings.numbered.yearly', {
                example: `${typed.text.quotePrefix}-${year}-001`,
              }),
            },
            {
              id: 'never',
              name: tell('screen.settings.numbered.never', { example: `${typed.text.quotePrefix}-001` }),
            },
          ]}
        />
      </div>
      <p className="quiet narrow">{tell('screen.settings.region.about')}</p>
      {(['terms', 'woolTerm', 'broughtTerm'] as const).map((id) => (
        <TextArea
          key={id}
          label={tell(`screen.settings.${id}`)}
          value={typed.text[id] ?? ''}
          onChange={(text) => set({ text: { ...typed.text, [id]: text } })}
          wrong={form.wrongAt(`changes.${id}`)}
        />
      ))}
      <Tick
        wanted
        name={tell('screen.settings.keepDeposit')}
        done={typed.keepDeposit}
        onChange={(keepDeposit) => set({ keepDeposit })}
      />
      <p className="quiet narrow">{tell('screen.settings.keepDeposit.help')}</p>
    </section>
  )
}
