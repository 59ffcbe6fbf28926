import { and, count, desc, eq, gte, inArray, lte, sql } from 'drizzle-orm'
import type { Account, Overrun, Totals } from '../plan/account.ts'
import type { Db } from './open.ts'
import { client, commission, garment, garmentAccount } from './schema.ts'

/** What is given to be kept of one delivered garment; the figures that lists add up are taken from its account. */
export type AccountRow = Pick<
  typeof garmentAccount.$inferSelect,
  'garmentId' | 'commissionId' | 'customerId' | 'construction' | 'deliveredDay' | 'account'
>

/** Keeps the accounts of a delivered commission in the place of those that were kept before. */
export function keepAccounts(db: Db, commissionId: string, rows: readonly AccountRow[]): void {
  db.delete(garmentAccount).where(eq(garmentAccount.commissionId, commissionId)).run()
  for (const row of rows)
    db.insert(garmentAccount)
      .values({ ...row, ...figuresOf(row.account) })
      .run()
}

const figuresOf = ({ net, minutes, left, cloth }: Account) => ({
  ...{ netMinor: net.minor, quotedMinutes: minutes.quoted, actualMinutes: minutes.actual },
  ...{ quotedLeftMinor: left.quoted.minor, actualLeftMinor: left.actual?.minor ?? null },
  ...{ quotedCloth: cloth.quoted, actualCloth: cloth.quoted > 0 ? cloth.actual : null },
})

const known = <T>(value: T) =>
  sql<number>`total(${value}) FILTER (WHERE ${garmentAccount.actualMinutes} IS NOT NULL)`
const measured = <T>(value: T) =>
  sql<number>`total(${value}) FILTER (WHERE ${garmentAccount.actualCloth} IS NOT NULL)`

const SUMS: { [K in keyof Totals]: ReturnType<typeof sql<number>> | ReturnType<typeof count> } = {
  garments: count(),
  net: sql<number>`total(${garmentAccount.netMinor})`,
  known: count(garmentAccount.actualMinutes),
  inPart: sql<number>`count(*) FILTER (WHERE json_extract(${garmentAccount.account}, '$.inPart'))`,
  knownNet: known(garmentAccount.netMinor),
  quotedMinutes: known(garmentAccount.quotedMinutes),
  actualMinutes: known(garmentAccount.actualMinutes),
  quotedLeft: known(garmentAccount.quotedLeftMinor),
  actualLeft: known(garmentAccount.actualLeftMinor),
  clothKnown: count(garmentAccount.actualCloth),
  quotedCloth: measured(garmentAccount.quotedCloth),
  actualCloth: measured(garmentAccount.actualCloth),
}

/** Days of delivery, the first and the last included; open where it is not said. */
export type Within = { from?: string | undefined; to?: string | undefined }

const within = ({ from, to }: Within) =>
  and(
    from === undefined ? undefined : gte(garmentAccount.deliveredDay, from),
    to === undefined ? undefined : lte(garmentAccount.deliveredDay, to),
  )

/** Everything delivered within some days, added up. */
export const allAccounts = (db: Db, days: Within): Totals =>
  db.select(SUMS).from(garmentAccount).where(within(days)).get()!

const MONTH = sql<string>`substr(${garmentAccount.deliveredDay}, 1, 7)`

/** The same month by month, the newest first, at most so many; a month is `2026-11`. */
export const accountsByMonth = (db: Db, days: Within, most: number) =>
  db
    .select({ ...SUMS, month: MONTH })
    .from(garmentAccount)
    .where(within(days))
    .groupBy(MONTH)
    .orderBy(desc(MONTH))
    .limit(most)
    .all()

/** And by construction, the most frequent first. */
export const accountsByConstruction = (db: Db, days: Within) =>
  db
    .select({ ...SUMS, id: garmentAccount.construction, title: garment.title })
    .from(garmentAccount)
    .innerJoin(garment, eq(garment.id, garmentAccount.garmentId))
    .where(within(days))
    .groupBy(garmentAccount.construction)
    .orderBy(desc(count()))
    .all()

/** And by customer, at most so many. */
export const accountsByClient = (db: Db, days: Within, most: number) =>
  db
    .select({ ...SUMS, id: garmentAccount.customerId, name: client.name })
    .from(garmentAccount)
    .innerJoin(client, eq(client.id, garmentAccount.customerId))
    .where(within(days))
    .groupBy(garmentAccount.customerId)
    .orderBy(desc(count()))
    .limit(most)
    .all()

/** And by commission, the last delivered first, at most so many. */
export const accountsByCommission = (db: Db, days: Within, most: number) =>
  db
    .select({
      ...{ ...SUMS, id: commission.id, number: commission.number, customer: client.name },
      deliveredDay: commission.deliveredDay,
    })
    .from(garmentAccount)
    .innerJoin(commission, eq(commission.id, garmentAccount.commissionId))
    .innerJoin(client, eq(client.id, garmentAccount.customerId))
    .where(and(inArray(garmentAccount.commissionId, newestDelivered(db, days, most)), within(days)))
    .groupBy(garmentAccount.commissionId)
    .orderBy(desc(commission.deliveredDay), desc(commission.id))
    .all()

const newestDelivered = (db: Db, { from, to }: Within, most: number) =>
  db
    .select({ id: commission.id })
    .from(commission)
    .where(
      and(
        eq(commission.state, 'delivered'),
        from === undefined ? undefined : gte(commission.deliveredDay, from),
        to === undefined ? undefined : lte(commission.deliveredDay, to),
      ),
    )
    .orderBy(desc(commission.deliveredDay), desc(commission.id))
    .limit(most)

/** Which commissions left less than so many minor units an hour, the worst paid first; those whose hours are not known stay out. */
export function paidUnder(db: Db, days: Within, target: number): string[] {
  const anHour = sql`round(60 * ${SUMS.actualLeft} / ${SUMS.actualMinutes})`
  return db
    .select({ id: garmentAccount.commissionId })
    .from(garmentAccount)
    .where(within(days))
    .groupBy(garmentAccount.commissionId)
    .having(sql`${SUMS.actualMinutes} > 0 AND ${anHour} < ${target}`)
    .orderBy(anHour, garmentAccount.commissionId)
    .all()
    .map(({ id }) => id)
}

/** The garment of which a step ran over most within some days, with its commission; nothing if none did. */
export function worstOverrun(
  db: Db,
  days: Within,
): (Overrun & { number: string; commissionId: string }) | undefined {
  const over = sql`json_extract(${garmentAccount.account}, '$.overrun.actual') - json_extract(${garmentAccount.account}, '$.overrun.quoted')`
  const row = db
    .select({ account: garmentAccount.account, number: commission.number, commissionId: commission.id })
    .from(garmentAccount)
    .innerJoin(commission, eq(commission.id, garmentAccount.commissionId))
    .where(and(sql`${over} IS NOT NULL`, within(days)))
    .orderBy(desc(over))
    .limit(1)
    .get()
  const overrun = row?.account.overrun ?? undefined
  if (row === undefined || overrun === undefined) return undefined
  return { ...overrun, number: row.number, commissionId: row.commissionId }
}
