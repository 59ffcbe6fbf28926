import { z } from 'zod'
import { usableWidth } from '../lay/cloth.ts'
import type { WorkroomSettings } from '../quote/settings.ts'
import type { QuotedCloth } from '../quote/types.ts'
import { type ClothRow, getCloth, insertCloth, listCloths, updateCloth } from '../store/cloths.ts'
import { byName } from '../words/by-name.ts'
import { readLength } from '../words/length.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { findableCloth } from './finding.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'
import { settingsOf } from './settings.ts'

const fields = z.strictObject(inputs.clothFields)
const input = z.strictObject({
  ...inputs.clothFields,
  name: inputs.named,
  note: inputs.line(2000).default(''),
  supplier: inputs.line(120).default(''),
  leadDays: z.int().min(0).max(366).default(7).describe('from ordering to its arrival'),
})
type Bought = { note: string; supplier: string; leadDays: number }

/**
 * A cloth as it comes in, its lengths read in the workroom's unit.
 * @throws Refusal at the figure that cannot be
 */
export function readCloth(
  given: z.output<typeof fields>,
  { letterhead, rates }: WorkroomSettings,
): Omit<QuotedCloth, 'id'> {
  const read = (field: 'width' | 'selvedge' | 'increment') => {
    const value = given[field]
    return value === 0 && field === 'selvedge'
      ? 0
      : refusingAt(field, () => readLength(value, letterhead.unit))
  }
  const cloth = { ...given, width: read('width'), selvedge: read('selvedge'), increment: read('increment') }
  usableWidth(cloth)
  const { currency } = cloth.pricePerMetre
  if (currency !== rates.currency) {
    throw new Refusal(
      phrase('refusal.money.currencies', { one: rates.currency, other: currency }),
      'pricePerMetre',
    )
  }
  return cloth
}

/** A stored cloth as quotes and lays take it. */
export function clothOf(row: ClothRow): QuotedCloth {
  const {
    id,
    name,
    fibre,
    width,
    selvedge,
    warpShrinkage,
    weftShrinkage,
    rightSide,
    nap,
    thickness,
    increment,
    charged,
  } = row
  const pricePerMetre = { minor: row.priceMinor, currency: row.currency }
  return {
    id,
    name,
    fibre,
    width,
    selvedge,
    warpShrinkage,
    weftShrinkage,
    rightSide,
    nap,
    thickness,
    increment,
    charged,
    pricePerMetre,
  }
}

const rowOf = ({ pricePerMetre, ...cloth }: Omit<QuotedCloth, 'id'>, bought: Bought) => ({
  ...cloth,
  ...bought,
  priceMinor: pricePerMetre.minor,
  currency: pricePerMetre.currency,
})

/** The book of cloths one can buy. */
export const clothRequests = [
  request({
    name: 'cloth.add',
    kind: 'command',
    about: 'Enters a cloth one can buy.',
    input,
    run: ({ note, supplier, leadDays, ...given }, context) => {
      const row = {
        ...rowOf(readCloth(given, settingsOf(context)), { note, supplier, leadDays }),
        id: context.newId(),
        createdAt: context.now(),
      }
      const cloth = insertCloth(context.store.db, row)
      findableCloth(cloth, context)
      recorded(context, 'cloth.add', 'cloth', cloth.id, null, cloth)
      return { cloth }
    },
  }),
  request({
    name: 'cloth.change',
    kind: 'command',
    about: 'Changes a cloth. Quotes already made keep it as it was.',
    input: z.strictObject({ id: inputs.id, revision: inputs.revision, cloth: input }),
    run: ({ id, revision, cloth: { note, supplier, leadDays, ...given } }, context) => {
      const { db } = context.store
      const before = getCloth(db, id)
      const read = refusingAt('cloth', () => readCloth(given, settingsOf(context)))
      const cloth = updateCloth(db, id, revision, rowOf(read, { note, supplier, leadDays }))
      findableCloth(cloth, context)
      recorded(context, 'cloth.change', 'cloth', id, before, cloth)
      return { cloth }
    },
  }),
  request({
    name: 'cloth.get',
    kind: 'query',
    about: 'One cloth.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, { store }) => ({ cloth: getCloth(store.db, id) }),
  }),
  request({
    name: 'cloths.list',
    kind: 'query',
    about: 'Every cloth, by name.',
    input: z.strictObject({}),
    run: (_, context) => ({
      cloths: byName(listCloths(context.store.db), settingsOf(context).letterhead.locale),
    }),
  }),
]
