import { fromHundredths, hundredths } from './exact.ts'
import type {
  Balance,
  ClothLength,
  ForGarment,
  GaveBack,
  LengthKnown,
  Measured,
  Move,
  Uncut,
  Used,
} from './types.ts'

/** A ledger added up so far: hundredths of a millimetre, areas in their squares. */
type Sums = Pick<Balance, 'length' | 'width' | 'washed' | 'came' | 'returned' | 'used' | 'changed'> & {
  reservedFor: Map<string, number>
  usedBy: Map<string, Omit<Used, 'garmentId'>>
}

/** How a length stands after all these moves; without any, there is nothing. */
export function balanceOf(moves: readonly Move[]): Balance {
  const sums: Sums = {
    ...{ length: 0, width: 0, washed: false, came: 0, returned: 0, used: 0, changed: 0 },
    ...{ reservedFor: new Map(), usedBy: new Map() },
  }
  moves.forEach((move, i) => {
    add(sums, move)
    // The acts refuse whatever would end in this, so such a ledger was not written by them.
    if ((move.kind === 'came') !== (i === 0) || reservedIn(sums) > sums.length || least(sums) < 0)
      throw new Error(`the ledger of a length does not add up at move ${i} (${move.kind})`)
  })
  const reserved = reservedIn(sums)
  const mm = fromHundredths
  return {
    ...{ length: mm(sums.length), width: mm(sums.width), washed: sums.washed },
    ...{ reserved: mm(reserved), free: mm(sums.length - reserved) },
    reservedFor: [...sums.reservedFor].map(([garmentId, held]) => ({ garmentId, mm: mm(held) })),
    usedBy: [...sums.usedBy].map(([garmentId, use]) => ({
      garmentId,
      ...{ mm: mm(use.mm), unwashed: mm(use.unwashed), width: mm(use.width) },
      ...{ area: use.area / 10_000, back: use.back / 10_000 },
    })),
    ...{ came: mm(sums.came), returned: mm(sums.returned) },
    ...{ used: mm(sums.used), changed: mm(sums.changed) },
  }
}

/** A length as it lies in stock now. */
export const clothLength = (known: LengthKnown, moves: readonly Move[]): ClothLength => ({
  ...known,
  ...balanceOf(moves),
})

function add(sums: Sums, move: Move): void {
  switch (move.kind) {
    case 'came':
      sums[move.from === undefined ? 'came' : 'returned'] = hundredths(move.mm)
      lies(sums, move)
      break
    case 'measured':
      measured(sums, move)
      break
    case 'corrected':
      sums.changed += hundredths(move.mm) - sums.length
      sums.length = hundredths(move.mm)
      break
    case 'gaveBack':
      giveBack(sums, move)
      break
    case 'uncut':
      unmakeCut(sums, move)
      break
    default:
      forGarment(sums, move)
  }
}

function forGarment(sums: Sums, { kind, garmentId, mm: asked }: ForGarment): void {
  const mm = hundredths(asked)
  const held = (sums.reservedFor.get(garmentId) ?? 0) + (kind === 'reserved' ? mm : -mm)
  if (held === 0) sums.reservedFor.delete(garmentId)
  else sums.reservedFor.set(garmentId, held)
  if (kind !== 'cut') return
  const { washed, width } = sums
  const use = sums.usedBy.get(garmentId) ?? { mm: 0, unwashed: 0, width: 0, area: 0, back: 0 }
  sums.usedBy.set(garmentId, {
    mm: use.mm + mm,
    unwashed: use.unwashed + (washed ? 0 : mm),
    width: Math.max(use.width, width),
    area: use.area + mm * width,
    back: use.back,
  })
  sums.used += mm
  sums.length -= mm
}

function unmakeCut(sums: Sums, { garmentId, mm, back }: Uncut): void {
  const [cut, again] = [hundredths(mm), hundredths(back)]
  if (sums.usedBy.get(garmentId)?.mm !== cut) throw new Error(`${mm} mm were never cut for ${garmentId}`)
  sums.usedBy.delete(garmentId)
  sums.used -= cut
  sums.length += again
  sums.changed += again - cut
}

function giveBack(sums: Sums, { garmentId, mm, width }: GaveBack): void {
  const use = sums.usedBy.get(garmentId)
  if (use === undefined) throw new Error(`nothing was cut for ${garmentId} that could come back`)
  use.back += hundredths(mm) * hundredths(width)
}

/**
 * The first washing shortens what is promised like all the rest: it was promised with what washing takes. Cloth that
 * grew gives no garment more than it asked for.
 */
function measured(sums: Sums, move: Measured): void {
  const mm = hundredths(move.mm)
  if (move.washed && !sums.washed && mm < sums.length) {
    for (const [garmentId, held] of sums.reservedFor) {
      // Rounded down, so that all promises together still fit; whole numbers of any size, so that none is off by one.
      const left = Number((BigInt(held) * BigInt(mm)) / BigInt(sums.length))
      if (left === 0) sums.reservedFor.delete(garmentId)
      else sums.reservedFor.set(garmentId, left)
    }
  }
  sums.changed += mm - sums.length
  lies(sums, move)
}

function lies(sums: Sums, { mm, width, washed }: Pick<Measured, 'mm' | 'width' | 'washed'>): void {
  sums.length = hundredths(mm)
  sums.width = hundredths(width)
  sums.washed = washed
}

const reservedIn = ({ reservedFor }: Sums): number =>
  [...reservedFor.values()].reduce((sum, mm) => sum + mm, 0)

const least = ({ length, reservedFor, usedBy }: Sums): number =>
  Math.min(length, ...reservedFor.values(), ...[...usedBy.values()].map(({ area, back }) => area - back))
