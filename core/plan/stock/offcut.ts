import type { Day } from '../../words/dates.ts'
import { shareOf } from '../../words/money.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { dayOf, standing, widthOf } from './acts.ts'
import { hundredths, ledgerLength } from './exact.ts'
import type { Came, GaveBack, LengthKnown, Move, Used } from './types.ts'

/** An offcut as it lies: along the warp and across, and the id it shall have as a length of its own. */
type Offcut = { day: Day; garmentId: string; mm: number; width: number; lengthId: string }

/**
 * Writes on a length that an offcut of it was kept. What comes back was cut for the garment: no longer and no wider
 * than that was, and all offcuts together no more cloth.
 * @throws Refusal when nothing was cut for the garment, it is larger than what was, or was kept already
 */
export function giveBack(moves: readonly Move[], act: Offcut): GaveBack {
  const { usedBy } = standing(moves)
  const { garmentId, lengthId } = act
  const move = {
    kind: 'gaveBack' as const,
    ...{ day: dayOf(act), garmentId, mm: ledgerLength(act.mm), width: widthOf(act), lengthId },
  }
  const use = usedBy.find((one) => one.garmentId === garmentId)
  if (use === undefined) throw new Refusal(phrase('refusal.stock.notCut'), 'garmentId')
  if (move.mm > use.mm)
    throw new Refusal(
      phrase('refusal.stock.offcutLong', { asked: { mm: move.mm }, cut: { mm: use.mm } }),
      'mm',
    )
  if (move.width > use.width) {
    const params = { asked: { mm: move.width }, cut: { mm: use.width } }
    throw new Refusal(phrase('refusal.stock.offcutWide', params), 'width')
  }
  if (isMore(move, use)) throw new Refusal(phrase('refusal.stock.offcutMuch'), 'mm')
  if (moves.some((one) => one.kind === 'gaveBack' && one.lengthId === lengthId))
    throw new Refusal(phrase('refusal.stock.offcutTwice'), 'lengthId')
  return move
}

/** The length that an offcut is from then on: its parent named, its price by the part of the width that it has. */
export function offcutOf(
  parent: LengthKnown,
  moves: readonly Move[],
  { day, garmentId, mm, width, lengthId }: GaveBack,
): { known: LengthKnown; came: Came } {
  const use = standing(moves).usedBy.find((one) => one.garmentId === garmentId)
  if (use === undefined) throw new Error(`nothing was cut for ${garmentId} that could come back`)
  const { clothId, shrinkage, pricePerMetre } = parent
  return {
    known: {
      ...{ id: lengthId, clothId, parent: parent.id },
      ...(shrinkage === undefined ? {} : { shrinkage }),
      ...(pricePerMetre === undefined
        ? {}
        : { pricePerMetre: shareOf(pricePerMetre, hundredths(width), hundredths(use.width)) }),
    },
    came: {
      kind: 'came',
      // Where some of it was cut before washing, it may be of that part: to be washed is the safe assumption.
      ...{ day, mm, width, washed: use.unwashed === 0 },
      from: { lengthId: parent.id, garmentId },
    },
  }
}

/** Whether an offcut, with those kept before, is more cloth than was cut. Areas in whole hundredths, squared. */
const isMore = ({ mm, width }: Pick<Offcut, 'mm' | 'width'>, { area, back }: Used): boolean =>
  hundredths(mm) * hundredths(width) > Math.round((area - back) * 10_000)
