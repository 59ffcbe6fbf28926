import { NOTIONS, type NotionId } from '../../core/draft/types.ts'
import { printLength } from '../../core/words/length.ts'
import type { Money } from '../../core/words/money.ts'
import { STITCHES, type StitchId } from '../../core/words/stitches.ts'
import { writeNumber } from '../../core/words/typed-number.ts'
import type { WorkroomUnit } from '../../core/words/units.ts'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { amountOf, amountText, basisPointsOf, numberOf } from '../parts/amount.ts'

/** The settings as they are stored: money in minor units, parts in basis points, lengths mm. */
export type Settings = OutputOf<'settings.get'>['settings']
/** What is usual where nothing is set. */
export type Usual = OutputOf<'settings.get'>['usual']
type Changes = InputOf<'settings.set'>['changes']
/** Kinds of labour that have a rate, in the order of the form. */
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

/** Settings as they stand in the fields: amounts and lengths as one would type them, parts as per cent. */
export function written(settings: Settings): Typed {
  const { letterhead, rates, validityDays, notionStock = {}, threadStock, otherThreads, yearly } = settings
  const { currency } = rates
  const part = (when: 'cutting' | 'fitting') =>
    (rates.instalments.find((one) => one.when === when)?.basisPoints ?? 0) / 100
  const { locale } = letterhead
  const amount = (money: Money) => amountText(money, locale)
  const plain = (value: number) => writeNumber(value, locale)
  const length = (mm: number) => printLength(mm, letterhead.unit, locale)
  return {
    text: {
      ...{ name: letterhead.name, address: letterhead.address.join(', '), email: letterhead.email },
      ...{ phone: letterhead.phone, paper: letterhead.paper, unit: letterhead.unit },
      locale,
      ...{ quotePrefix: settings.numbering.quote, commissionPrefix: settings.numbering.commission },
      ...{ numbered: settings.numbering.yearly ? 'yearly' : 'never', validityDays: plain(validityDays) },
      ...{ terms: settings.terms.join('\n'), broughtTerm: settings.broughtTerm, currency },
      woolTerm: settings.woolTerm ?? '',
      ...Object.fromEntries(SKILLS.map((skill) => [skill, amount(rates.perHour[skill])])),
      ...{ target: amount(rates.targetPerHour), hoursPerWeek: plain(settings.hoursPerWeek) },
      ...{ profitKind: rates.profit.kind, profit: plain(rates.profit.basisPoints / 100) },
      ...{ taxName: rates.tax.name, tax: plain(rates.tax.basisPoints / 100) },
      ...{
        rounding: amount({ minor: rates.rounding.step, currency }),
        roundingTo: rates.rounding.direction,
      },
      ...{ deposit: plain(rates.depositBasisPoints / 100) },
      ...{ atCutting: plain(part('cutting')), atFitting: plain(part('fitting')) },
      ...{ overhead: amount(rates.overheadPerHour), soldHours: plain(yearly.soldHours) },
      ...{ clothMargin: plain(Math.round(settings.buying.margin * 1000) / 10) },
      ...{ needleful: length(settings.threadRules.needleful) },
      ...{ waste: plain(Math.round(settings.threadRules.machineWaste * 1000) / 10) },
      ...Object.fromEntries(
        STITCHES.map((id) => [
          `density.${id}`,
          settings.ways.density[id] === undefined ? '' : plain(settings.ways.density[id]),
        ]),
      ),
      ...Object.fromEntries(
        NOTIONS.map((id) => [id, notionStock[id] === undefined ? '' : amount(notionStock[id])]),
      ),
    },
    costs: yearly.costs.map(({ name, amount: cost }, i) => ({ key: `${i}`, name, amount: amount(cost) })),
    threads: [
      { id: 'hand', work: 'hand', ...threadStock.hand },
      { id: 'machine', work: 'machine', ...threadStock.machine },
      ...otherThreads,
    ].map(({ id, work, name, metresPerReel, pricePerReel, soldAs = 'reel' }) => ({
      ...{ id, work, name, metres: plain(metresPerReel), price: amount(pricePerReel), soldAs },
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
    woolTerm: of('woolTerm'),
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
    buying: { margin: numberOf(of('clothMargin')) / 100 },
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
