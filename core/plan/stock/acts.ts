import { type Day, readDay } from '../../words/dates.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal, refusingAt } from '../../words/refusal.ts'
import { balanceOf } from './balance.ts'
import { fromHundredths, hundredths, ledgerCount, ledgerLength } from './exact.ts'
import type { Balance, Came, Corrected, ForGarment, Measured, Move, Uncut } from './types.ts'

/** Widest cloth woven for garments, mm. */
const WIDEST = 6000

type Size = { day: Day; mm: number; width: number; washed: boolean }
type Ask = { day: Day; garmentId: string; mm: number }

/*
 * Every act takes a length's ledger and answers with the one move to be written below it, or refuses; the ledger it
 * was given stays as it was. No act leaves less than nothing, or the same cloth promised twice.
 */

/**
 * A length was bought. It comes in once: more of the same cloth is a length of its own, for it is not one piece.
 * @throws Refusal when it came in already, or has no size that cloth has
 */
export function comeIn(moves: readonly Move[], act: Size): Came {
  if (moves.length > 0) throw new Refusal(phrase('refusal.stock.alreadyIn'))
  return { kind: 'came', ...size(act) }
}

/** Promises part of what is free to a garment. @throws Refusal when it has not come in, or less of it is free */
export function reserve(moves: readonly Move[], act: Ask): ForGarment {
  const { free } = standing(moves)
  const move = asked('reserved', act)
  if (move.mm > free)
    throw new Refusal(phrase('refusal.stock.notFree', { asked: { mm: move.mm }, free: { mm: free } }), 'mm')
  return move
}

/**
 * Lets go of what was promised to a garment, or of a part of it.
 * @throws Refusal when nothing of it, or less, is promised to the garment
 */
export function release(moves: readonly Move[], act: Ask): ForGarment {
  const held = heldFor(standing(moves), act.garmentId)
  const move = asked('released', act)
  if (held === 0) throw new Refusal(phrase('refusal.stock.notReserved'), 'garmentId')
  if (move.mm > held) throw tooMuch('releaseTooMuch', move.mm, held)
  return move
}

/** What lets go of everything promised to a garment that will not be made; nothing where nothing was. */
export function cancel(moves: readonly Move[], { day, garmentId }: Omit<Ask, 'mm'>): ForGarment | undefined {
  const mm = heldFor(balanceOf(moves), garmentId)
  return mm === 0 ? undefined : release(moves, { day, garmentId, mm })
}

/**
 * Cuts for a garment from what was promised to it. Whatever of the promise is not cut stays promised.
 * @throws Refusal when nothing of it, or less, is promised to the garment
 */
export function cut(moves: readonly Move[], act: Ask): ForGarment {
  const held = heldFor(standing(moves), act.garmentId)
  const move = asked('cut', act)
  if (held === 0) throw new Refusal(phrase('refusal.stock.cutUnreserved'), 'garmentId')
  if (move.mm > held) throw tooMuch('cutTooMuch', move.mm, held)
  return move
}

/**
 * Takes back all that was cut for a garment, because it never was: it lies on the length again, and is promised to the
 * garment as before. What was measured or counted since the cut was the whole length, so nothing is added to that, and the
 * garment is promised what is free of it. Nothing where nothing was cut.
 *
 * @throws Refusal when offcuts of it were kept, for then it was cut
 */
export function uncut(moves: readonly Move[], { day, garmentId }: Omit<Ask, 'mm'>): (Uncut | ForGarment)[] {
  const use = balanceOf(moves).usedBy.find((one) => one.garmentId === garmentId)
  if (use === undefined) return []
  if (use.back > 0) throw new Refusal(phrase('refusal.stock.offcutsKept'), 'garmentId')
  const counted = moves.findLastIndex(({ kind }) => kind === 'measured' || kind === 'corrected')
  // What an earlier taking back has undone is cut no more.
  const undone = moves.findLastIndex((one) => one.kind === 'uncut' && one.garmentId === garmentId)
  const back = moves
    .slice(Math.max(counted, undone) + 1)
    .reduce((sum, one) => (isCutFor(one, garmentId) ? sum + hundredths(one.mm) : sum), 0)
  const move: Uncut = {
    ...{ kind: 'uncut', day: dayOf({ day }), garmentId },
    ...{ mm: use.mm, back: fromHundredths(back) },
  }
  const mm = Math.min(use.mm, balanceOf([...moves, move]).free)
  return mm === 0 ? [move] : [move, reserve([...moves, move], { day, garmentId, mm })]
}

/**
 * Measures a length again. The first washing shortens promises along with the cloth; at any other time a length that
 * measures less than is promised is refused, for only the maker can say which garment goes without.
 * @throws Refusal when it is used up, is said to be unwashed again, or would break a promise
 */
export function measure(moves: readonly Move[], act: Size): Measured {
  const { length, reserved, washed } = standing(moves)
  const move = { kind: 'measured' as const, ...size(act) }
  if (length === 0) throw new Refusal(phrase('refusal.stock.usedUp'))
  if (washed && !move.washed) throw new Refusal(phrase('refusal.stock.staysWashed'), 'washed')
  if (washed === move.washed) refuseBroken(move.mm, reserved)
  return move
}

/** Counts a length again: so much of it is there, be it nothing. */
export function correct(moves: readonly Move[], act: { day: Day; mm: number }): Corrected {
  const { reserved } = standing(moves)
  const mm = ledgerCount(act.mm)
  refuseBroken(mm, reserved)
  return { kind: 'corrected', day: dayOf(act), mm }
}

/** How a length stands that has come in. @throws Refusal when it has not come in */
export function standing(moves: readonly Move[]): Balance {
  if (moves.length === 0) throw new Refusal(phrase('refusal.stock.notIn'))
  return balanceOf(moves)
}

/** @throws Refusal when it is no width that cloth is woven in */
export function widthOf({ width }: { width: number }): number {
  const read = ledgerLength(width, 'width')
  if (read > WIDEST) throw new Refusal(phrase('refusal.stock.width', { width: { mm: read } }), 'width')
  return read
}

/** The day of an act. @throws Refusal at `day` when there is no such day */
export const dayOf = ({ day }: { day: Day }): Day => refusingAt('day', () => readDay(day))

const isCutFor = (move: Move, garmentId: string): move is ForGarment =>
  move.kind === 'cut' && move.garmentId === garmentId

const heldFor = ({ reservedFor }: Balance, garmentId: string): number =>
  reservedFor.find((held) => held.garmentId === garmentId)?.mm ?? 0

const size = (act: Size) => ({
  ...{ day: dayOf(act), mm: ledgerLength(act.mm), width: widthOf(act), washed: act.washed },
})

const asked = (kind: ForGarment['kind'], act: Ask): ForGarment => ({
  ...{ kind, day: dayOf(act), garmentId: act.garmentId, mm: ledgerLength(act.mm) },
})

const tooMuch = (code: 'releaseTooMuch' | 'cutTooMuch', mm: number, held: number): Refusal =>
  new Refusal(phrase(`refusal.stock.${code}`, { asked: { mm }, reserved: { mm: held } }), 'mm')

function refuseBroken(mm: number, reserved: number): void {
  if (mm < reserved)
    throw new Refusal(phrase('refusal.stock.promised', { found: { mm }, reserved: { mm: reserved } }), 'mm')
}
