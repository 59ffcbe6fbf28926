import { useState } from 'react'
import { NOTIONS, NOTIONS_BY_PIECE, type NotionId } from '../../core/draft/types.ts'
import { type Money, minorDigits } from '../../core/words/money.ts'
import { WORKROOM_UNITS, type WorkroomUnit } from '../../core/words/units.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { SelectField, TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

type Settings = OutputOf<'settings.get'>['settings']
const SKILLS = ['handSewing', 'machineSewing', 'cutting', 'pressing', 'fitting', 'attending'] as const

/** What the maker sets once: what stands on her papers, and what her work costs. */
export function WorkroomSettings({ onKept }: { onKept: () => void }) {
  const { value, refused, reload } = useQuery('settings.get', {})
  if (value === undefined) return <Refusal sentence={refused} />
  const kept = () => {
    reload()
    onKept()
  }
  return (
    <SettingsForm key={value.revision} settings={value.settings} revision={value.revision} onKept={kept} />
  )
}

function SettingsForm({
  settings,
  revision,
  onKept,
}: {
  settings: Settings
  revision: number
  onKept: () => void
}) {
  const { workroom } = useHouse()
  const tell = useTell()
  const [typed, setTyped] = useState(() => written(settings))
  const [notions, setNotions] = useState(() => writtenNotions(settings))
  const doing = useDoing()
  const field = (id: keyof typeof typed, label = tell(`screen.settings.${id as 'name'}`)) => (
    <TextField
      label={label}
      value={typed[id]}
      onChange={(text) => setTyped((before) => ({ ...before, [id]: text }))}
    />
  )
  const choice = (id: keyof typeof typed, options: readonly { id: string; name: string }[]) => (
    <SelectField
      label={tell(`screen.settings.${id as 'unit'}`)}
      value={typed[id]}
      onChange={(to) => setTyped((before) => ({ ...before, [id]: to }))}
      options={options}
    />
  )
  const keep = () =>
    doing
      .run(() => workroom.ask('settings.set', { revision, changes: changesOf(typed, notions, settings) }))
      .then((done) => done && onKept())
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault()
        void keep()
      }}
    >
      <h1>{tell('screen.room.workroom')}</h1>
      <section className="sheet stack">
        <h2>{tell('screen.settings.papers')}</h2>
        <div className="columns">
          {field('name')}
          {field('address')}
          {field('email')}
          {field('phone')}
          {choice(
            'paper',
            ['A4', 'Letter'].map((id) => ({ id, name: id })),
          )}
          {choice(
            'unit',
            WORKROOM_UNITS.map((id) => ({ id, name: tell(`screen.unit.${id}`) })),
          )}
          {field('validityDays')}
        </div>
      </section>
      <section className="sheet stack">
        <h2>{tell('screen.settings.money', { currency: settings.rates.currency })}</h2>
        <p className="quiet">{tell('screen.settings.moneyAbout')}</p>
        <div className="columns">
          {SKILLS.map((skill) => (
            <div key={skill}>
              {field(skill, tell('screen.settings.hourOf', { skill: tell(`price.skill.${skill}`) }))}
            </div>
          ))}
          {field('overhead')}
          {choice('profitKind', [
            { id: 'margin', name: tell('screen.settings.margin') },
            { id: 'markup', name: tell('screen.settings.markup') },
          ])}
          {field('profit')}
          {field('taxName')}
          {field('tax')}
          {field('rounding')}
          {field('deposit')}
        </div>
      </section>
      <section className="sheet stack">
        <h2>{tell('screen.settings.notions', { currency: settings.rates.currency })}</h2>
        <p className="quiet">{tell('screen.settings.notionsAbout')}</p>
        <div className="columns">
          {NOTIONS.map((id) => (
            <TextField
              key={id}
              label={tell(`screen.settings.${isByPiece(id) ? 'each' : 'metreOf'}`, {
                notion: tell(`draft.notion.${id}`),
              })}
              value={notions[id]}
              onChange={(text) => setNotions((before) => ({ ...before, [id]: text }))}
            />
          ))}
        </div>
      </section>
      <Refusal sentence={doing.refused?.message} />
      <div>
        <Button main type="submit" busy={doing.busy}>
          {tell('screen.settings.keep')}
        </Button>
      </div>
    </form>
  )
}

const isByPiece = (id: NotionId): boolean => (NOTIONS_BY_PIECE as readonly NotionId[]).includes(id)

const amount = ({ minor, currency }: Money): string =>
  (minor / 10 ** minorDigits(currency)).toFixed(minorDigits(currency))

/** Prices of notions as they stand in the form: empty where there is none. */
const writtenNotions = ({ notionStock = {} }: Settings) =>
  Object.fromEntries(
    NOTIONS.map((id) => [id, notionStock[id] === undefined ? '' : amount(notionStock[id])]),
  ) as Record<NotionId, string>

/** The settings as they stand in the form. */
function written({ letterhead, rates, validityDays }: Settings) {
  const { currency } = rates
  return {
    name: letterhead.name,
    address: letterhead.address.join(', '),
    email: letterhead.email,
    phone: letterhead.phone,
    paper: letterhead.paper as string,
    unit: letterhead.unit as string,
    validityDays: String(validityDays),
    handSewing: amount(rates.perHour.handSewing),
    machineSewing: amount(rates.perHour.machineSewing),
    cutting: amount(rates.perHour.cutting),
    pressing: amount(rates.perHour.pressing),
    fitting: amount(rates.perHour.fitting),
    attending: amount(rates.perHour.attending),
    overhead: amount(rates.overheadPerHour),
    profitKind: rates.profit.kind as string,
    profit: String(rates.profit.basisPoints / 100),
    taxName: rates.tax.name,
    tax: String(rates.tax.basisPoints / 100),
    rounding: amount({ minor: rates.rounding.step, currency }),
    deposit: String(rates.depositBasisPoints / 100),
  }
}

/** What the form says, for the workroom to check: a number that is none is left for it to refuse. */
function changesOf(
  typed: ReturnType<typeof written>,
  notions: Record<NotionId, string>,
  { rates }: Settings,
) {
  const { currency } = rates
  const number = (text: string) => Number(text.trim().replace(',', '.'))
  const minor = (text: string) => Math.round(number(text) * 10 ** minorDigits(currency))
  const money = (text: string) => ({ minor: minor(text), currency })
  const basisPoints = (text: string) => Math.round(number(text) * 100)
  return {
    letterhead: {
      name: typed.name,
      address: typed.address.split(',').flatMap((part) => (part.trim() === '' ? [] : [part.trim()])),
      email: typed.email,
      phone: typed.phone,
      paper: typed.paper as 'A4' | 'Letter',
      unit: typed.unit as WorkroomUnit,
    },
    validityDays: number(typed.validityDays),
    notionStock: Object.fromEntries(
      NOTIONS.map((id) => [id, notions[id].trim() === '' ? null : money(notions[id])]),
    ),
    rates: {
      perHour: {
        handSewing: money(typed.handSewing),
        machineSewing: money(typed.machineSewing),
        cutting: money(typed.cutting),
        pressing: money(typed.pressing),
        fitting: money(typed.fitting),
        attending: money(typed.attending),
      },
      overheadPerHour: money(typed.overhead),
      profit: { kind: typed.profitKind as 'margin' | 'markup', basisPoints: basisPoints(typed.profit) },
      tax: { name: typed.taxName, basisPoints: basisPoints(typed.tax) },
      rounding: { ...rates.rounding, step: minor(typed.rounding) },
      depositBasisPoints: basisPoints(typed.deposit),
    },
  }
}
