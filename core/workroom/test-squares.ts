import { z } from 'zod'
import { usableWidth } from '../lay/cloth.ts'
import { type Marks, testSquare } from '../plan/stock/test-square.ts'
import { getCloth, updateCloth } from '../store/cloths.ts'
import { readLength } from '../words/length.ts'
import { refusingAt } from '../words/refusal.ts'
import type { WorkroomUnit } from '../words/units.ts'
import { clothOf } from './cloths.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf } from './settings.ts'

const pair = z.strictObject({
  before: inputs.length.describe('between two marks, before the wash'),
  after: inputs.length.describe('between the same marks, washed and dried'),
})
const marks = {
  warp: z.array(pair).max(12).describe('pairs of marks along the cloth'),
  weft: z.array(pair).max(12).describe('pairs of marks across it'),
}
const measured = z.strictObject(marks)

/** What washing takes of a cloth, by a square of it that was marked, washed and measured again. */
export const testSquareRequests = [
  request({
    name: 'testSquare.read',
    kind: 'query',
    about: 'What the marks on a test square say of shrinking, as ISO 5077 reckons it; nothing is kept.',
    input: z.strictObject(marks),
    run: (given, context) => ({ square: testSquare(read(given, settingsOf(context).letterhead.unit)) }),
  }),
  request({
    name: 'cloth.testSquare',
    kind: 'command',
    about: 'Keeps as the shrinkage of a cloth what its test square says. Quotes already made keep theirs.',
    input: z.strictObject({ id: inputs.id, revision: inputs.revision, ...marks }),
    run: ({ id, revision, ...given }, context) => keep(id, revision, given, context),
  }),
]

function keep(id: string, revision: number, given: z.output<typeof measured>, context: Context) {
  const { db } = context.store
  const before = getCloth(db, id)
  const square = read(given, settingsOf(context).letterhead.unit)
  const { warp: warpShrinkage, weft: weftShrinkage } = testSquare(square).shrinkage
  usableWidth({ ...clothOf(before), warpShrinkage, weftShrinkage })
  const cloth = updateCloth(db, id, revision, { warpShrinkage, weftShrinkage })
  const was = { warpShrinkage: before.warpShrinkage, weftShrinkage: before.weftShrinkage }
  recorded(context, 'cloth.testSquare', 'cloth', id, was, { warpShrinkage, weftShrinkage, square })
  return { cloth }
}

/** @throws Refusal at the mark that is no length */
function read(given: z.output<typeof measured>, unit: WorkroomUnit): Record<'warp' | 'weft', Marks[]> {
  const way = (id: 'warp' | 'weft') =>
    given[id].map((one, i) => ({
      before: refusingAt(`${id}.${i}.before`, () => readLength(one.before, unit)),
      after: refusingAt(`${id}.${i}.after`, () => readLength(one.after, unit)),
    }))
  return { warp: way('warp'), weft: way('weft') }
}
