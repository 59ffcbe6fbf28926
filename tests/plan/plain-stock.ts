/** The same stock kept in another way: whole hundredths of a millimetre, and who holds how many of them. */
export type Plain = { left: number; width: number; washed: boolean; held: Record<string, number>; cut: Cut[] }
/** `fresh` until the length is measured or counted again: then the whole of it is known, cut or not. */
type Cut = { garmentId: string; long: number; wide: number; area: number; back: number; fresh: boolean }

/** Hundredths of a millimetre; nothing is nothing, whatever its sign. */
export const count = (mm: number) => Math.round(mm * 100) + 0
const total = (held: Record<string, number>) => Object.values(held).reduce((sum, one) => sum + one, 0)
const ok = (mm: number, most = 1e6) => mm <= most && count(mm) > 0

export const KINDS = [
  ...(['reserve', 'reserve', 'release', 'cut', 'cut', 'cut', 'giveBack', 'giveBack'] as const),
  ...(['cancel', 'measure', 'correct', 'uncut'] as const),
]
export type PlainAct = { kind: (typeof KINDS)[number]; garmentId: string; washed: boolean }

/** What an act comes to on the plain stock, or undefined if it cannot be done. */
export function plainly(
  plain: Plain,
  { kind, garmentId, washed }: PlainAct,
  mm: number,
  width: number,
): Plain | undefined {
  const { left, held, cut: cuts } = plain
  const mine = held[garmentId] ?? 0
  const amount = count(mm)
  const holding = (now: number) => ({ ...plain, held: { ...held, [garmentId]: now } })
  const fits = (room: number) => ok(mm) && amount <= room
  if (kind === 'reserve') return fits(left - total(held)) ? holding(mine + amount) : undefined
  if (kind === 'release') return mine > 0 && fits(mine) ? holding(mine - amount) : undefined
  if (kind === 'cancel') return mine > 0 ? holding(0) : undefined
  if (kind === 'cut') {
    if (mine === 0 || !fits(mine)) return undefined
    const more = {
      garmentId,
      long: amount,
      wide: plain.width,
      area: amount * plain.width,
      back: 0,
      fresh: true,
    }
    return { ...holding(mine - amount), left: left - amount, cut: [...cuts, more] }
  }
  const known = cuts.map((one) => ({ ...one, fresh: false }))
  if (kind === 'correct')
    return (mm === 0 || ok(mm)) && amount >= total(held) ? { ...plain, left: amount, cut: known } : undefined
  if (kind === 'uncut') {
    const own = cuts.filter((one) => one.garmentId === garmentId)
    if (own.length === 0 || own.some(({ back }) => back > 0)) return undefined
    const length = left + own.reduce((sum, one) => sum + (one.fresh ? one.long : 0), 0)
    const again = Math.min(
      own.reduce((sum, one) => sum + one.long, 0),
      length - total(held),
    )
    return { ...holding(mine + again), left: length, cut: cuts.filter((one) => !own.includes(one)) }
  }
  if (kind === 'giveBack') {
    const own = cuts.filter((one) => one.garmentId === garmentId)
    const sum = (pick: 'long' | 'area' | 'back') => own.reduce((all, one) => all + one[pick], 0)
    const wide = Math.max(0, ...own.map((one) => one.wide))
    const back = amount * count(width)
    const can = ok(mm) && ok(width, 6000) && amount <= sum('long') && count(width) <= wide
    return can && back <= sum('area') - sum('back')
      ? { ...plain, cut: [...cuts, { garmentId, long: 0, wide: 0, area: 0, back, fresh: false }] }
      : undefined
  }
  if (!(ok(mm) && ok(width, 6000)) || left === 0 || (plain.washed && !washed)) return undefined
  const first = washed && !plain.washed
  if (!first && amount < total(held)) return undefined
  const shorter = (one: number) => (first && amount < left ? Math.floor((one * amount) / left) : one)
  const now = Object.fromEntries(Object.entries(held).map(([id, one]) => [id, shorter(one)]))
  return { ...plain, left: amount, width: count(width), washed, held: now, cut: known }
}
