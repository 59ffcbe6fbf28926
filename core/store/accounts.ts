import { count, desc, eq, inArray, sql } from 'drizzle-orm'
import type { Account, Totals } from '../plan/account.ts'
import type { Db } from './open.ts'
import { client, commission, garment, garmentAccount } from './schema.ts'

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
  knownNet: known(garmentAccount.netMinor),
  quotedMinutes: known(garmentAccount.quotedMinutes),
  actualMinutes: known(garmentAccount.actualMinutes),
  quotedLeft: known(garmentAccount.quotedLeftMinor),
  actualLeft: known(garmentAccount.actualLeftMinor),
  clothKnown: count(garmentAccount.actualCloth),
  quotedCloth: measured(garmentAccount.quotedCloth),
  actualCloth: measured(garmentAccount.actualCloth),
}

/** Everything delivered, added up. */
export const allAccounts = (db: Db): Totals => db.select(SUMS).from(garmentAccount).get()!

/** The same by construction, the most frequent first. */
export const accountsByConstruction = (db: Db) =>
  db
    .select({ ...SUMS, id: garmentAccount.construction, title: garment.title })
    .from(garmentAccount)
    .innerJoin(garment, eq(garment.id, garmentAccount.garmentId))
    .groupBy(garmentAccount.construction)
    .orderBy(desc(count()))
    .all()

/** And by customer, at most so many. */
export const accountsByClient = (db: Db, most: number) =>
  db
    .select({ ...SUMS, id: garmentAccount.customerId, name: client.name })
    .from(garmentAccount)
    .innerJoin(client, eq(client.id, garmentAccount.customerId))
    .groupBy(garmentAccount.customerId)
    .orderBy(desc(count()))
    .limit(most)
    .all()

/** And by commission, the newest first, at most so many. */
export const accountsByCommission = (db: Db, most: number) =>
  db
    .select({
      ...{ ...SUMS, id: commission.id, number: commission.number, customer: client.name },
      deliveredDay: commission.deliveredDay,
    })
    .from(garmentAccount)
    .innerJoin(commission, eq(commission.id, garmentAccount.commissionId))
    .innerJoin(client, eq(client.id, garmentAccount.customerId))
    .where(inArray(garmentAccount.commissionId, newestDelivered(db, most)))
    .groupBy(garmentAccount.commissionId)
    .orderBy(desc(commission.id))
    .all()

const newestDelivered = (db: Db, most: number) =>
  db
    .select({ id: commission.id })
    .from(commission)
    .where(eq(commission.state, 'delivered'))
    .orderBy(desc(commission.id))
    .limit(most)
