import { z } from 'zod'
import { wishToGoOn } from '../store/damaged.ts'
import { previewOf } from '../store/safekeeping/restore.ts'
import type { SavedTable } from '../store/salvage.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { request } from './request.ts'

/** The tables of the store as a maker knows them, in the order in which she would miss them. */
const PARTS = {
  clients: ['client', 'sheet', 'forgotten'],
  measures: ['measurement_set', 'retired_set'],
  quotes: ['quote', 'quote_garment', 'quote_state'],
  commissions: [
    'commission',
    'garment',
    'step',
    'garment_draft',
    'garment_actual',
    'garment_account',
    'cut_piece',
    'laid_again',
  ],
  money: ['payment', 'invoice'],
  times: ['time_entry', 'time_entry_step', 'timer'],
  fittings: ['fitting', 'commission_note', 'picture'],
  cloths: ['cloth', 'stock_length', 'stock_move', 'supply_move', 'remnant'],
  own: ['own_construction'],
  papers: ['document'],
  settings: ['workroom', 'counter', 'person', 'absence'],
  history: ['change'],
} as const
/** A part of the book as a maker knows it: what was saved and lost is told by these. */
export type Part = keyof typeof PARTS

/** What was saved and lost of each part; lost is null where it cannot be counted. */
function partsOf(tables: readonly SavedTable[]): { part: Part; saved: number; lost: number | null }[] {
  return (Object.keys(PARTS) as Part[]).flatMap((part) => {
    const own = tables.filter(({ table }) => (PARTS[part] as readonly string[]).includes(table))
    if (own.length === 0) return []
    const saved = own.reduce((sum, one) => sum + one.saved, 0)
    const known = own.every(({ lost }) => lost !== null)
    return [{ part, saved, lost: known ? own.reduce((sum, one) => sum + (one.lost ?? 0), 0) : null }]
  })
}

/** What is left of a book that is damaged or gone, and going on with it. */
export const damagedRequests = [
  request({
    name: 'damaged.describe',
    kind: 'query',
    about:
      'Whether the book is damaged or gone; what was saved of it, part by part, and the newest sound backup held against that.',
    input: z.strictObject({}),
    run: (_, { store: { db, damaged } }) => {
      if (damaged === undefined) return { damaged: null }
      const { path, missing, backup } = damaged
      const { tables, ...saved } = damaged.saved
      const counted = backup === undefined ? [] : previewOf(db, path, backup.name)
      return { damaged: { path, missing, parts: partsOf(tables), ...saved, backup: backup ?? null, counted } }
    },
  }),
  request({
    name: 'damaged.goOn',
    kind: 'job',
    mends: true,
    about:
      'Writes down that the book is gone on with as what was saved of it, or as its newest sound backup: that happens when it is opened next. The damaged file is put aside.',
    input: z.strictObject({ with: z.enum(['saved', 'backup']) }),
    run: ({ with: choice }, { store: { db, damaged }, now }) => {
      if (damaged === undefined) throw new Refusal(phrase('refusal.damaged.nothing'))
      if (choice === 'backup' && damaged.backup === undefined)
        throw new Refusal(phrase('refusal.damaged.noBackup'), 'with')
      if (choice === 'saved' && damaged.saved.tables.every(({ saved }) => saved === 0))
        throw new Refusal(phrase('refusal.damaged.nothingSaved'), 'with')
      wishToGoOn(db, damaged, choice, now())
      return { with: choice }
    },
  }),
]
