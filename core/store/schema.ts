/**
 * The one store of a workroom. Ids are UUIDs of version 7, days `YYYY-MM-DD`, instants UTC ISO 8601, lengths
 * mm, money whole minor units. Rows that change carry a `revision`; what a sent quote rests on never does:
 * triggers of the migrations refuse it.
 */

export * from './schema/cloths.ts'
export * from './schema/commissions.ts'
export * from './schema/history.ts'
export * from './schema/papers.ts'
export * from './schema/people.ts'
export * from './schema/quotes.ts'
export * from './schema/times.ts'
