import type { Piece } from '../draft/types.ts'
import type { Rectangle } from '../geometry/types.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { usableWidth } from './cloth.ts'
import { type Folded, foldedCopies, halfOf } from './fold.ts'
import { FINE, type Fineness, Outlines, onTheBias, polygonOf, type Way } from './outlines.ts'
import { type Part, type Places, placesOf, type Strip } from './strip.ts'
import type { Angle, Cloth, LayOrder, Placement } from './types.ts'

/** Pieces as parts of a strip, and what each part and outline stands for. */
export type Layable = {
  strip: Strip
  manner: LayOrder['manner']
  /** Usable width of the cloth, unfolded, mm. */
  width: number
  /** What each part is; flaws come after these. */
  copies: Folded[]
  ways: Way[]
  /** Every way each part may lie, the ones that come to the same among them. */
  lying: number[][]
  flaws: readonly Rectangle[]
}

/**
 * Every copy of the pieces, as often as ordered, with the distinct ways it may lie on the cloth: turned as
 * the piece and the nap allow, bias pieces by half a quarter more; turned over only where the cloth has no
 * right side, or where the copy is a mirrored one. Curves keep `cuttingGap` for the shears; straight sides
 * may share a cut. On doubled cloth copies are cut two at a time.
 *
 * @throws Refusal at a piece that is wider than the cloth in every way it may lie, or would hang against its
 * nap; at a copy that is locked in a way it may not lie
 */
export function layableOf(
  pieces: readonly Piece[],
  cloth: Cloth,
  { cuttingGap }: { cuttingGap: number },
  order: LayOrder,
  fineness: Fineness = FINE,
): Layable {
  const width = usableWidth(cloth)
  const doubled = order.manner === 'doubled'
  const usable = doubled ? width / 2 : width
  const outlines = new Outlines()
  const parts: Part[] = []
  const copies: Folded[] = []
  const lying: number[][] = []
  const lock = lockedIn(order.locked)
  if (order.manner !== 'single' && lock.size > 0)
    throw new Refusal(phrase('refusal.lay.lockedSingle'), 'locked')
  for (const piece of pieces) {
    if (cloth.nap && piece.hangsBothWays === true) {
      throw new Refusal(phrase('refusal.lay.napOverShoulder', { piece: piece.name }), 'nap')
    }
    const polygons = [false, true].map((flipped) => {
      const points = polygonOf(piece.cut, cuttingGap, fineness, flipped)
      return piece.grain === 'bias' ? onTheBias(points) : points
    })
    const add = (flipped: boolean, half: boolean): number[] =>
      (cloth.nap ? ([0] as const) : piece.turn).map((turn) => {
        const way = { angle: (piece.grain === 'bias' ? turn + 45 : turn) as Angle, flipped }
        const points = polygons[flipped ? 1 : 0]!
        return half ? outlines.of(halfOf(points, turn), 0, way) : outlines.of(points, (turn / 90) as 0, way)
      })
    const wanted = copiesOf(piece, order.quantity)
    const folded = doubled
      ? foldedCopies(wanted, polygons[0]!, cloth.rightSide)
      : wanted.map((copy) => ({ kind: 'one' as const, copy }))
    for (const cut of folded) {
      const { mirrored } = cut.copy
      const half = cut.kind === 'fold'
      const hands = cloth.rightSide ? [mirrored] : [mirrored, !mirrored]
      const all = hands.flatMap((flipped) => add(flipped, half))
      const fixed = fixedBy(lock.get(`${piece.id}/${cut.copy.copy}`), all, outlines, width)
      const own = outlines.distinct(all).filter((way) => widthOf(outlines, way) <= usable + 1e-9)
      if (own.length === 0) throw tooWide(piece, widthOf(outlines, all[0]!), usable, doubled)
      parts.push({
        ways: own,
        ...(fixed === undefined ? {} : { fixed }),
        ...(half ? { onFold: true as const } : {}),
      })
      copies.push(cut)
      lying.push(all)
    }
  }
  for (const flaw of order.flaws) {
    for (const place of doubled ? [flaw, { ...flaw, x: width - flaw.x - flaw.width }] : [flaw]) {
      parts.push(flawPart(place, outlines))
    }
  }
  return {
    strip: { width: usable, outlines: outlines.all, parts },
    manner: order.manner,
    width,
    copies,
    ways: outlines.ways,
    lying,
    flaws: order.flaws,
  }
}

/** Places in one layable's outlines, for another of the same pieces and order that is finer. */
export function carriedOver(from: Layable, to: Layable, places: Places): Places {
  const way = places.way.slice()
  from.lying.forEach((ways, part) => {
    way[part] = to.lying[part]![ways.indexOf(places.way[part]!)]!
  })
  for (let part = from.lying.length; part < way.length; part++) way[part] = to.strip.parts[part]!.fixed!.way
  return { ...places, way }
}

/**
 * The places of copies that lie on the cloth already, as a layable of theirs in one layer takes them.
 *
 * @returns undefined when a copy is missing, or lies in a way it may not
 */
export function placesLaid(
  { strip, copies, ways, lying }: Layable,
  placements: readonly Placement[],
): Places | undefined {
  const laid = lockedIn(placements)
  const puts = copies.map(({ copy }, part) => {
    const at = laid.get(`${copy.piece}/${copy.copy}`)
    if (at === undefined) return undefined
    const way = lying[part]!.find((one) => ways[one]!.angle === at.angle && ways[one]!.flipped === at.flipped)
    return way === undefined ? undefined : { part, way, x: at.x, y: at.y }
  })
  if (!puts.every((put) => put !== undefined)) return undefined
  const length = puts.reduce((far, { way, y }) => Math.max(far, y + strip.outlines[way]!.high), 0)
  return placesOf(strip, puts, length)
}

const widthOf = ({ all }: Outlines, way: number): number => all[way]!.right - all[way]!.left

function copiesOf(piece: Piece, quantity: number): Folded['copy'][] {
  return piece.copies.flatMap(({ id, mirrored }) =>
    Array.from({ length: quantity }, (_, k) => ({
      piece: piece.id,
      copy: k === 0 ? id : `${id}@${k + 1}`,
      mirrored,
    })),
  )
}

const lockedIn = (locked: readonly Placement[]): Map<string, Placement> =>
  new Map(locked.map((placement) => [`${placement.piece}/${placement.copy}`, placement]))

/** Where a locked copy lies. */
function fixedBy(
  locked: Placement | undefined,
  ways: readonly number[],
  outlines: Outlines,
  width: number,
): Part['fixed'] {
  if (locked === undefined) return undefined
  const way = ways.find(
    (one) => outlines.ways[one]!.angle === locked.angle && outlines.ways[one]!.flipped === locked.flipped,
  )
  const { x, y } = locked
  if (way === undefined) throw new Refusal(phrase('refusal.lay.lockedTurn'), 'locked')
  const { left, right, low } = outlines.all[way]!
  if (x + left < -LEAN || x + right > width + LEAN || y + low < -LEAN)
    throw new Refusal(phrase('refusal.lay.lockedOff'), 'locked')
  return { way, x, y }
}

/** A locked copy may lean over the border by rounding dust, mm. */
const LEAN = 1e-3

function flawPart({ x, y, width, height }: Rectangle, outlines: Outlines): Part {
  const way = outlines.of(Float64Array.of(0, 0, width, 0, width, height, 0, height), 0, {
    angle: 0,
    flipped: false,
  })
  return { ways: [way], fixed: { way, x, y }, flaw: true }
}

function tooWide(piece: Piece, width: number, usable: number, doubled: boolean): Refusal {
  const params = { piece: piece.name, width: { mm: Math.ceil(width) }, usable: { mm: Math.floor(usable) } }
  return new Refusal(
    phrase(doubled ? 'refusal.lay.tooNarrowDoubled' : 'refusal.lay.tooNarrow', params),
    'width',
  )
}
