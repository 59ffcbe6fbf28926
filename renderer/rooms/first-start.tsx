import { useState } from 'react'
import { languageOf, localeOf, regionOf } from '../../core/words/languages.ts'
import { currencyName } from '../../core/words/money.ts'
import { WORKROOM_UNITS, type WorkroomUnit } from '../../core/words/units.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { type Tongue, TongueFields } from '../settings/region.tsx'
import { useEnterSample } from '../settings/sample.ts'
import { BringAlong } from '../settings/take-out-bring.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

/** The first start: a workroom of her own, or a look round the sample, which is another file altogether. */
export function FirstStart({ onBegun }: { onBegun: () => void }) {
  const { workroom, reader, speak } = useHouse()
  const tell = useTell()
  const { busy, refused, run } = useDoing()
  const enterSample = useEnterSample()
  const [name, setName] = useState('')
  const [chosenUnit, setUnit] = useState<string>()
  const [tongue, setTongue] = useState<Tongue>(() => ({
    ...{ language: languageOf(reader.locale), region: regionOf(reader.locale) },
  }))
  const locale = localeOf(tongue.language, tongue.region)
  const { value: begun } = useQuery('settings.begun', { locale })
  // That of the region, until she has chosen one herself.
  const unit = chosenUnit ?? begun?.unit ?? 'cm'
  const spoken = (next: Tongue) => {
    setTongue(next)
    speak(localeOf(next.language, next.region))
  }
  const begin = () =>
    run(() =>
      workroom.ask('settings.set', {
        revision: 0,
        changes: {
          letterhead: { name, unit: unit as WorkroomUnit, locale },
          timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
        },
      }),
    ).then((done) => done && onBegun())
  const [entering, setEntering] = useState(false)
  const look = () => {
    setEntering(true)
    return run(enterSample).then((done) => (done ? onBegun() : setEntering(false)))
  }
  return (
    <main className="stack">
      <h1>{tell('screen.first.title')}</h1>
      <p>{tell('screen.first.about')}</p>
      <div className="two-ways">
        <form
          className="sheet stack"
          onSubmit={(event) => {
            event.preventDefault()
            void begin()
          }}
        >
          <h2>{tell('screen.first.own')}</h2>
          <TextField
            label={tell('screen.first.name')}
            value={name}
            onChange={setName}
            required
            wrong={refused?.message}
          />
          <TongueFields {...tongue} onChange={spoken} />
          <SelectField
            label={tell('screen.first.unit')}
            value={unit}
            onChange={setUnit}
            options={WORKROOM_UNITS.map((id) => ({ id, name: tell(`screen.unit.${id}`) }))}
          />
          {begun === undefined ? null : (
            <p className="quiet">
              {tell('guiding.begun', {
                currency: currencyName(begun.currency, reader.locale),
                unit: tell(`screen.unit.${unit as WorkroomUnit}`),
                paper: begun.paper,
              })}
            </p>
          )}
          <div>
            <Button main type="submit" busy={busy}>
              {tell('screen.first.begin')}
            </Button>
          </div>
        </form>
        <div className="stack">
          <section className="sheet stack">
            <h2>{tell('screen.first.sample')}</h2>
            <p>{tell('screen.first.sampleAbout')}</p>
            <div>
              <Button busy={busy} onPress={() => void look()}>
                {tell('screen.first.look')}
              </Button>
            </div>
            <p role="status" className="quiet">
              {entering ? tell('screen.first.entering') : ''}
            </p>
          </section>
          <BringAlong onBrought={onBegun} />
        </div>
      </div>
      <Refusal sentence={refused?.field === undefined ? refused?.message : undefined} />
    </main>
  )
}
