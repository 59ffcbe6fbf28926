import { NOTIONS, type NotionId } from '../../core/draft/types.ts'
import { printLength } from '../../core/words/length.ts'
import { STITCHES, type StitchId } from '../../core/words/stitches.ts'
import type { WorkroomUnit } from '../../core/words/units.ts'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { amountOf, amountText, basisPointsOf, numberOf } from '../parts/amount.ts'

export type Settings = OutputOf<'settings.get'>['settings']
/** What is usual where nothing is set. */
export type Usual = OutputOf<'settings.get'>['usual']
type Changes = InputOf<'settings.set'>['changes']
export const SKILLS = ['handSewing', 'machineSewing', 'cutting', 'pressing', 'fitting', 'attending'] as const

/** A thread as it stands in the form. */
export type TypedThread = {
  id: string
  work: string
  name: string
  metres: string
  price: string
  soldAs: string
}
export type TypedCost = { key: string; name: string; amount: string }

/** The settings as they stand in the form: every single field by its name, and what there may be any number of. */
export type Typed = {
  text: Record<string, string>
  costs: TypedCost[]
  threads: TypedThread[]
  doubled: StitchId[]
  waxed: boolean
  keepDeposit: boolean
}

/** A field of the form with what is typed in it. */
export type Form = {
  typed: Typed
  set: (changes: Partial<Typed>) => void
  /** The sentence that refused a setting, if it is the one at this place. */
  wrongAt: (place: string) => string | undefined
}

export function written(settings: Settings): Typed {
  const { letterhead, rates, validityDays, notionStock = {}, threadStock, otherThreads, yearly } = settings
  const { currency } = rates
  const part = (when: 'cutting' | 'fitting') =>
    (rates.instalments.find((one) => one.when === when)?.basisPoints ?? 0) / 100
  const length = (mm: number) => printLength(mm, letterhead.unit, letterhead.locale)
  return {
    text: {
      ...{ name: letterhead.name, address: letterhead.address.join(', '), email: letterhead.email },
      ...{ phone: letterhead.phone, paper: letterhead.paper, unit: letterhead.unit },
      locale: letterhead.locale,
      ...{ quotePrefix: settings.numbering.quote, commissionPrefix: settings.numbering.commission },
      ...{ numbered: settings.numbering.yearly ? 'yearly' : 'never', validityDays: String(validityDays) },
      ...{ terms: settings.terms.join('\n'), broughtTerm: settings.broughtTerm, currency },
      ...Object.fromEntries(SKILLS.map((skill) => [skill, amountText(rates.perHour[skill])])),
      ...{ target: amountText(rates.targetPerHour), hoursPerWeek: String(settings.hoursPerWeek) },
      ...{ profitKind: rates.profit.kind, profit: String(rates.profit.basisPoints / 100) },
      ...{ taxName: rates.tax.name, tax: String(rates.tax.basisPoints / 100) },
      ...{
        rounding: amountText({ minor: rates.rounding.step, currency }),
        roundingTo: rates.rounding.direction,
      },
      ...{ deposit: String(rates.depositBasisPoints / 100) },
      ...{ atCutting: String(part('cutting')), atFitting: String(part('fitting')) },
      ...{ overhead: amountText(rates.overheadPerHour), soldHours: String(yearly.soldHours) },
      ...{ needleful: length(settings.threadRules.needleful) },
      ...{ waste: String(Math.round(settings.threadRules.machineWaste * 1000) / 10) },
      ...Object.fromEntries(STITCHES.map((id) => [`density.${id}`, String(settings.ways.density[id] ?? '')])),
      ...Object.fromEntries(
        NOTIONS.map((id) => [id, notionStock[id] === undefined ? '' : amountText(notionStock[id])]),
      ),
    },
    costs: yearly.costs.map(({ name, amount }, i) => ({ key: `${i}`, name, amount: amountText(amount) })),
    threads: [
      { id: 'hand', work: 'hand', ...threadStock.hand },
      { id: 'machine', work: 'machine', ...threadStock.machine },
      ...otherThreads,
    ].map(({ id, work, name, metresPerReel, pricePerReel, soldAs = 'reel' }) => ({
      ...{ id, work, name, metres: String(metresPerReel), price: amountText(pricePerReel), soldAs },
    })),
    doubled: [...(settings.threadRules.doubled ?? [])],
    waxed: settings.threadRules.waxed ?? false,
    keepDeposit: settings.keepDepositOnceCut,
  }
}

/** What the form says, for the workroom to check: a number that is none is left for it to refuse. */
export function changesOf({ text, costs, threads, doubled, waxed, keepDeposit }: Typed): Changes {
  const of = (id: string) => text[id] ?? ''
  const currency = of('currency').trim().toUpperCase()
  const money = (typed: string) => amountOf(typed, currency)
  const instalment = (when: 'cutting' | 'fitting', typed: string) => ({
    when,
    basisPoints: basisPointsOf(typed || '0'),
  })
  const thread = ({ name, metres, price, soldAs }: TypedThread) => ({
    ...{ name, metresPerReel: numberOf(metres), pricePerReel: money(price), soldAs: soldAs as 'reel' },
  })
  const stock = (work: string) => thread(threads.find(({ id }) => id === work)!)
  const written = costs.filter(({ name, amount }) => name.trim() !== '' || amount.trim() !== '')
  const lines = (typed: string, by: string) =>
    typed.split(by).flatMap((part) => (part.trim() === '' ? [] : [part.trim()]))
  return {
    letterhead: {
      ...{ name: of('name'), address: lines(of('address'), ','), email: of('email'), phone: of('phone') },
      ...{ paper: of('paper') as 'A4', unit: of('unit') as WorkroomUnit, locale: of('locale') },
    },
    numbering: {
      ...{
        quote: of('quotePrefix'),
        commission: of('commissionPrefix'),
        yearly: of('numbered') === 'yearly',
      },
    },
    validityDays: numberOf(of('validityDays')),
    terms: lines(of('terms'), '\n'),
    broughtTerm: of('broughtTerm'),
    keepDepositOnceCut: keepDeposit,
    hoursPerWeek: numberOf(of('hoursPerWeek')),
    notionStock: Object.fromEntries(
      NOTIONS.map((id: NotionId) => [id, of(id).trim() === '' ? null : money(of(id))]),
    ),
    threadStock: { hand: stock('hand'), machine: stock('machine') },
    otherThreads: threads
      .filter(({ id }) => id !== 'hand' && id !== 'machine')
      .map((one) => ({ ...thread(one), id: one.id, work: one.work as 'hand' })),
    threadRules: {
      ...{ needleful: of('needleful'), machineWaste: numberOf(of('waste')) / 100, doubled, waxed },
    },
    ways: {
      density: Object.fromEntries(
        STITCHES.flatMap((id) => {
          const typed = of(`density.${id}`)
          return typed.trim() === '' ? [] : [[id, numberOf(typed)]]
        }),
      ),
    },
    yearly: {
      costs: written.map(({ name, amount }) => ({ name, amount: money(amount) })),
      soldHours: numberOf(of('soldHours')),
    },
    rates: {
      currency,
      perHour: Object.fromEntries(SKILLS.map((skill) => [skill, money(of(skill))])) as Record<
        (typeof SKILLS)[number],
        ReturnType<typeof money>
      >,
      targetPerHour: money(of('target')),
      overheadPerHour: money(of('overhead')),
      profit: { kind: of('profitKind') as 'margin', basisPoints: basisPointsOf(of('profit')) },
      tax: { name: of('taxName'), basisPoints: basisPointsOf(of('tax')) },
      rounding: { step: money(of('rounding')).minor, direction: of('roundingTo') as 'up' },
      depositBasisPoints: basisPointsOf(of('deposit')),
      instalments: [instalment('cutting', of('atCutting')), instalment('fitting', of('atFitting'))].filter(
        ({ basisPoints }) => basisPoints !== 0,
      ),
    },
  }
}
