import {
  type AnySQLiteColumn,
  index,
  integer,
  real,
  sqliteTable,
  text,
  uniqueIndex,
} from 'drizzle-orm/sqlite-core'
import { createdAt, id, revision } from './columns.ts'
import { garment } from './commissions.ts'

/** An article one can buy. Shrinkages in parts of one. */
export const cloth = sqliteTable('cloth', {
  id: id(),
  name: text('name').notNull(),
  fibre: text('fibre').notNull(),
  width: real('width').notNull(),
  selvedge: real('selvedge').notNull(),
  warpShrinkage: real('warp_shrinkage').notNull(),
  weftShrinkage: real('weft_shrinkage').notNull(),
  rightSide: integer('right_side', { mode: 'boolean' }).notNull(),
  nap: integer('nap', { mode: 'boolean' }).notNull(),
  thickness: real('thickness').notNull(),
  increment: real('increment').notNull(),
  priceMinor: integer('price_minor').notNull(),
  currency: text('currency').notNull(),
  note: text('note').notNull(),
  retiredAt: text('retired_at'),
  revision: revision(),
  createdAt: createdAt(),
  /** Whether a garment pays for what is bought for it, or for what it uses of a length in stock. */
  charged: text('charged', { enum: ['bought', 'used'] })
    .notNull()
    .default('bought'),
  supplier: text('supplier').notNull().default(''),
  /** Days from ordering to its arrival. */
  leadDays: integer('lead_days').notNull().default(7),
})

/** A length of cloth that is in the house, or on its way. Sizes as bought, mm. */
export const stockLength = sqliteTable(
  'stock_length',
  {
    id: id(),
    clothId: text('cloth_id')
      .notNull()
      .references(() => cloth.id, { onDelete: 'restrict' }),
    width: real('width').notNull(),
    place: text('place').notNull(),
    supplier: text('supplier').notNull(),
    note: text('note').notNull(),
    washedAt: text('washed_at'),
    orderedDay: text('ordered_day'),
    expectedDay: text('expected_day'),
    arrivedDay: text('arrived_day'),
    priceMinor: integer('price_minor').notNull(),
    currency: text('currency').notNull(),
    /** The length it was left over from. */
    parentId: text('parent_id').references((): AnySQLiteColumn => stockLength.id, { onDelete: 'restrict' }),
    revision: revision(),
    createdAt: createdAt(),
  },
  (table) => [index('stock_length_cloth').on(table.clothId)],
)

/** What happened to a length of cloth, in order; only ever added to. */
export const stockMove = sqliteTable(
  'stock_move',
  {
    id: id(),
    stockId: text('stock_id')
      .notNull()
      .references(() => stockLength.id, { onDelete: 'restrict' }),
    act: text('act', { mode: 'json' }).$type<unknown>().notNull(),
    garmentId: text('garment_id').references(() => garment.id, { onDelete: 'restrict' }),
    at: text('at').notNull(),
  },
  (table) => [index('stock_move_stock').on(table.stockId), index('stock_move_garment').on(table.garmentId)],
)

/** What happened to a sort of thread or notion: counts in, used, counted again; only ever added to. */
export const supplyMove = sqliteTable(
  'supply_move',
  {
    id: id(),
    /** `thread:hand`, `thread:<id>` or `notion:<id>`. */
    supply: text('supply').notNull(),
    act: text('act', { mode: 'json' }).$type<unknown>().notNull(),
    at: text('at').notNull(),
  },
  (table) => [index('supply_move_supply').on(table.supply)],
)

/** What was left of a cloth when a garment was cut from it, and kept. Sizes as it lies on the shelf, mm. */
export const remnant = sqliteTable(
  'remnant',
  {
    id: id(),
    clothId: text('cloth_id').references(() => cloth.id, { onDelete: 'restrict' }),
    clothName: text('cloth_name').notNull(),
    garmentId: text('garment_id')
      .notNull()
      .references(() => garment.id, { onDelete: 'restrict' }),
    /** Which of the lay's offcuts it is. */
    offcut: integer('offcut').notNull(),
    /** Across the cloth, and along the selvedge. */
    width: real('width').notNull(),
    length: real('length').notNull(),
    usedAt: text('used_at'),
    revision: revision(),
    createdAt: createdAt(),
    place: text('place').notNull().default(''),
    /** Whether it was cut from washed cloth; if not, it will shrink like the cloth it is of. */
    washed: integer('washed', { mode: 'boolean' }).notNull().default(true),
    /** The length that it lies in stock as, where it was put with the lengths. */
    stockId: text('stock_id').references(() => stockLength.id, { onDelete: 'restrict' }),
  },
  (table) => [uniqueIndex('remnant_offcut').on(table.garmentId, table.offcut)],
)
