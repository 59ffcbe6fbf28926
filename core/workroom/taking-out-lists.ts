import { decimalOf } from '../plan/money/csv.ts'
import type { Invoice } from '../plan/money/invoice.ts'
import type { PaymentMethod } from '../plan/money/types.ts'
import { smallBalanceOf } from '../plan/stock/small-things.ts'
import {
  everyCommission,
  everyInvoice,
  everyMeasurementSet,
  everyPayment,
  everyQuote,
  everyRemnant,
  everyStep,
  everyTime,
} from '../store/archive/lists.ts'
import { listClients } from '../store/clients.ts'
import { allCloths } from '../store/cloths.ts'
import type { takingOut } from '../words/catalogue/english/taking-out.ts'
import { csvOf, guarded } from '../words/csv.ts'
import { dayAt } from '../words/dates.ts'
import { type Money, noMoney, subtractMoney } from '../words/money.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { say } from '../words/say.ts'
import { ledgersIn, thingsOf } from './drawer.ts'
import type { Context } from './request.ts'
import { readerOf, settingsOf } from './settings.ts'
import { lengthsIn } from './stock.ts'

/** What may be taken out as a table. */
export const LISTS = [
  ...(['clients', 'measures', 'cloths', 'lengths', 'remnants', 'supplies'] as const),
  ...(['quotes', 'commissions', 'steps', 'times', 'payments', 'invoices'] as const),
] as const
export type ListName = (typeof LISTS)[number]

type Column = keyof typeof takingOut extends infer K
  ? K extends `lists.column.${infer C}`
    ? C
    : never
  : never
/** A text, which no spreadsheet may take for a formula; a figure; an amount, whose currency stands in a column of its own. */
type Cell = string | number | Money | null
type List = { columns: readonly Column[]; rows: Cell[][] }

/** A list as a table for any spreadsheet: RFC 4180 in UTF-8 with its mark, plain figures, days as `YYYY-MM-DD`. */
export function listCsv(name: ListName, context: Context): string {
  const reader = readerOf(context)
  const { columns, rows } = MADE[name](context, tellerFor(context))
  const headings = columns.map((column) => say(phrase(`lists.column.${column}`), reader))
  return csvOf([headings, ...rows.map((row) => row.map(written))])
}

function written(cell: Cell): string {
  if (cell === null) return ''
  if (typeof cell === 'string') return guarded(cell)
  return typeof cell === 'number' ? String(Math.round(cell * 100) / 100) : decimalOf(cell)
}

type Teller = {
  told: (what: Phrase) => string
  dayOf: (instant: string | null) => string | null
  yes: (is: boolean) => string
}

function tellerFor(context: Context): Teller {
  const reader = readerOf(context)
  const { timeZone } = settingsOf(context)
  return {
    told: (what) => say(what, reader),
    dayOf: (instant) => (instant === null ? null : dayAt(instant, timeZone)),
    yes: (is) => (is ? say(phrase('lists.yes'), reader) : ''),
  }
}

const percent = (part: number): number => 100 * part

const MADE: Record<ListName, (context: Context, teller: Teller) => List> = {
  clients: ({ store }, { dayOf }) => ({
    columns: ['name', 'address', 'email', 'phone', 'birthDay', 'note', 'retired'],
    rows: listClients(store.db).map(({ name, address, email, phone, birthDay, note, retiredAt }) => [
      ...[name, address.join('\n'), email, phone, birthDay, note, dayOf(retiredAt)],
    ]),
  }),
  measures: ({ store }, { told }) => ({
    columns: ['client', 'day', 'takenBy', 'over', 'measure', 'mm', 'source', 'measureNote', 'note'],
    rows: everyMeasurementSet(store.db).flatMap(({ client, set }) =>
      Object.entries(set.measures).map(([id, { mm, source }]): Cell[] => [
        ...[client, set.day, set.takenBy, set.over, told(phrase(`measure.name.${id}` as Phrase['code'])), mm],
        ...[told(phrase(`lists.source.${source}`)), set.notes[id as keyof typeof set.notes] ?? '', set.note],
      ]),
    ),
  }),
  cloths: ({ store }, { dayOf }) => ({
    columns: [
      ...(['name', 'fibre', 'width', 'warpShrinkage', 'weftShrinkage', 'perMetre', 'currency'] as const),
      ...(['supplier', 'leadDays', 'note', 'retired'] as const),
    ],
    rows: allCloths(store.db).map((cloth) => [
      ...[cloth.name, cloth.fibre, cloth.width, percent(cloth.warpShrinkage), percent(cloth.weftShrinkage)],
      ...[{ minor: cloth.priceMinor, currency: cloth.currency }, cloth.currency],
      ...[cloth.supplier, cloth.leadDays, cloth.note, dayOf(cloth.retiredAt)],
    ]),
  }),
  lengths: (context, { yes }) => {
    const names = new Map(allCloths(context.store.db).map(({ id, name }) => [id, name]))
    return {
      columns: [
        ...([
          'cloth',
          'length',
          'reserved',
          'free',
          'width',
          'washed',
          'place',
          'supplier',
          'perMetre',
        ] as const),
        ...(['currency', 'ordered', 'expected', 'arrived', 'note'] as const),
      ],
      rows: lengthsIn(context).map(({ row, length }) => [
        ...[names.get(row.clothId) ?? '', length.length, length.reserved, length.free, row.width],
        ...[yes(length.washed), row.place, row.supplier, { minor: row.priceMinor, currency: row.currency }],
        ...[row.currency, row.orderedDay, row.expectedDay, row.arrivedDay, row.note],
      ]),
    }
  },
  remnants: ({ store }, { dayOf, yes }) => ({
    columns: ['cloth', 'width', 'length', 'washed', 'place', 'commission', 'kept', 'used'],
    rows: everyRemnant(store.db).map(({ remnant, commission }) => [
      ...[remnant.clothName, remnant.width, remnant.length, yes(remnant.washed), remnant.place, commission],
      ...[dayOf(remnant.createdAt), dayOf(remnant.usedAt)],
    ]),
  }),
  supplies: (context, { told }) => {
    const ledgers = ledgersIn(context)
    return {
      columns: ['name', 'soldBy', 'left', 'amountIn'],
      rows: thingsOf(context).map(({ id, name, soldBy, kind }) => [
        ...[told(name), told(phrase(`stock.soldBy.${soldBy}`))],
        ledgers.has(id) ? smallBalanceOf(ledgers.get(id)!).left : null,
        told(
          phrase(
            kind === 'thread' ? 'lists.in.metres' : soldBy === 'piece' ? 'lists.in.pieces' : 'lists.in.mm',
          ),
        ),
      ]),
    }
  },
  quotes: ({ store }, { told }) => ({
    columns: ['number', 'day', 'client', 'garments', 'total', 'currency', 'validUntil', 'state'],
    rows: everyQuote(store.db).map(({ number, day, customer, short, state }) => [
      ...[number, day, customer, short.garments.map(({ title }) => told(title)).join(', ')],
      ...[short.total, short.total.currency, short.validUntil, told(phrase(`quote.state.${state}`))],
    ]),
  }),
  commissions: ({ store }, { told }) => ({
    columns: [
      ...(['number', 'quote', 'client', 'day', 'due', 'event', 'state', 'delivered', 'calledOff'] as const),
      ...(['agreed', 'currency', 'note'] as const),
    ],
    rows: everyCommission(store.db).map(({ commission: one, quote, customer }) => [
      ...[
        one.number,
        quote,
        customer,
        one.day,
        one.dueDay,
        one.eventDay,
        told(phrase(`lists.state.${one.state}`)),
      ],
      ...[one.deliveredDay, one.cancelledDay, { minor: one.agreedMinor, currency: one.currency }],
      ...[one.currency, one.note],
    ]),
  }),
  steps: ({ store }, { told, dayOf }) => ({
    columns: ['commission', 'garment', 'wearer', 'stage', 'step', 'minutes', 'done', 'doneBy', 'leftOut'],
    rows: everyStep(store.db).map((one) => [
      ...[
        one.commission,
        told(one.title),
        one.wearer,
        told(phrase(`paper.stage.${one.stage}`)),
        told(one.name),
      ],
      ...[one.minutes.mean, dayOf(one.doneAt), one.doneBy, dayOf(one.droppedAt)],
    ]),
  }),
  times: ({ store }, { told, yes }) => {
    const { times, steps } = everyTime(store.db)
    return {
      columns: ['day', 'commission', 'minutes', 'steps', 'aside', 'note'],
      rows: times.map(({ time, commission }) => [
        ...[time.day, commission, time.minutes],
        (steps.get(time.id) ?? []).map(({ name }) => told(name)).join(', '),
        ...[yes(time.asideAt !== null), time.note],
      ]),
    }
  },
  payments: ({ store }, { told }) => ({
    columns: ['number', 'day', 'commission', 'client', 'kind', 'amount', 'currency', 'method', 'note'],
    rows: everyPayment(store.db).map(
      ({ payment: { amountMinor: minor, currency, ...one }, commission, customer }) => {
        const amount = { minor, currency }
        const back = one.kind === 'refund'
        return [
          ...[
            one.number,
            one.day,
            commission,
            customer,
            told(phrase(`money.kind.${back ? 'refund' : 'receipt'}`)),
          ],
          ...[back ? subtractMoney(noMoney(currency), amount) : amount, currency],
          ...[told(phrase(`money.method.${one.method as PaymentMethod}`)), one.note],
        ]
      },
    ),
  }),
  invoices: ({ store }, { told }) => ({
    columns: ['number', 'day', 'kind', 'commission', 'client', 'net', 'tax', 'total', 'currency', 'cancels'],
    rows: everyInvoice(store.db).map(({ invoice, commission }) => {
      const { customer, net, tax, total, cancels } = invoice.snapshot as Invoice
      return [
        ...[
          invoice.number,
          invoice.day,
          told(phrase(`money.kind.${invoice.kind}`)),
          commission,
          customer.name,
        ],
        ...[net, tax, total, total.currency, cancels ?? null],
      ]
    }),
  }),
}
