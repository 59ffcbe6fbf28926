import { pathLength } from '../geometry/path.ts'
import { arc, line, pathBox, pointAt, segmentBox, turnSegment } from '../geometry/segment.ts'
import type { Arc, Path, Point, Segment } from '../geometry/types.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { makePiece, type Side } from './pieces.ts'
import { seam, totalsOf, wholeEdge } from './seams.ts'
import type { Draft, Edge, Piece, Seam, Span, Step } from './types.ts'
import { assertSewable } from './verify.ts'

/** Narrowest strip worth joining on, and nearest a join comes to the middle or to an opening, mm (common practice). */
const NARROWEST = 40
/** Allowances of the join: folded over and trimmed when the garment is felled, mm (common practice). */
const FELLED = { main: 14, strip: 6 }

/**
 * The draft with every piece that is wider than the cloth joined from a main part and a strip on the straight
 * grain, and strips again where one does not do; each join is a seam of its own, sewn before all others. A
 * join never crosses the neck, a slit or the middle. Pieces that cannot be joined so are left as they are.
 *
 * @param usable width to lay pieces on, mm: one for all, or that of each piece's own cloth
 */
export function pieced(draft: Draft, usable: number | ((piece: Piece) => number)): Draft {
  const widthFor = typeof usable === 'number' ? () => usable : usable
  let made = draft
  for (let piece = tooWide(made, widthFor); piece !== undefined; piece = tooWide(made, widthFor)) {
    const joined = joinedOn(made, piece, widthFor(piece))
    if (joined === undefined) return made
    made = joined
  }
  return made === draft ? draft : assertSewable(made)
}

function tooWide({ pieces }: Draft, widthFor: (piece: Piece) => number): Piece | undefined {
  return pieces.find((piece) => {
    const { width, height } = pathBox(onTheCloth(piece).cut)
    const across = piece.turn.some((angle) => angle % 180 === 90) ? Math.min(width, height) : width
    return across > widthFor(piece) - shears(piece) + 1e-6
  })
}

/** What a piece needs beyond its width where a curve reaches furthest: curves keep room for the shears, mm. */
function shears({ cut }: Piece): number {
  const { x, width } = pathBox(cut)
  const reaches = cut.filter(({ kind }) => kind === 'arc').map(segmentBox)
  const atSide = reaches.some((box) => box.x < x + SHEARS || box.x + box.width > x + width - SHEARS)
  return atSide ? SHEARS : 0
}
const SHEARS = 4

const BIAS = Math.PI / 4

/** The piece with the warp of its cloth upright: a piece on the bias turned by half a quarter. */
const onTheCloth = (piece: Piece): Piece => (piece.grain === 'bias' ? turnedBy(piece, BIAS) : piece)
const asDrafted = (piece: Piece): Piece => (piece.grain === 'bias' ? turnedBy(piece, -BIAS) : piece)

function turnedBy(piece: Piece, angle: number): Piece {
  const turn = (path: Path): Path => path.map((s) => turnSegment(s, angle))
  const place = (point: Point): Point => turnSegment(line(point, point), angle).from
  return {
    ...piece,
    ...{ outline: turn(piece.outline), cut: turn(piece.cut) },
    openings: piece.openings.map(({ id, finished, cut }) => ({
      id,
      finished: turn(finished),
      cut: turn(cut),
    })),
    slits: piece.slits.map((slit) => ({ ...slit, apex: place(slit.apex), open: place(slit.open) })),
    edges: piece.edges.map((edge) => ({ ...edge, path: turn(edge.path) })),
  }
}

/** The draft with one piece in two parts, or undefined when no join is allowed. */
function joinedOn(draft: Draft, piece: Piece, usable: number): Draft | undefined {
  const allowances = allowancesOf(draft, piece)
  const upright = onTheCloth(piece)
  for (const at of joins(upright, usable, allowances.main)) {
    const parts = narrowEnough(at, usable, (where) =>
      mayJoin(upright, where)
        ? sewable(() => partsOf(upright, stripOf(draft, piece), where, allowances))
        : undefined,
    )
    if (parts !== undefined) {
      const { main, strip, portions } = parts
      return withParts(draft, piece, { main: asDrafted(main), strip: asDrafted(strip), portions })
    }
  }
  return undefined
}

/** Times a join is moved in because the hem beside it, cut to lie flat when turned, stands out beyond it. */
const MOVES = 4

/** The parts whose main one is no wider than the cloth; the join moved in as far as it stands out at the hem. */
function narrowEnough(
  at: number,
  usable: number,
  cutAt: (at: number) => Parts | undefined,
): Parts | undefined {
  let where = at
  for (let i = 0; i < MOVES; i++) {
    const parts = cutAt(where)
    const over = parts === undefined ? 0 : pathBox(parts.main.cut).width + shears(parts.main) - usable
    if (parts === undefined || over <= 1e-6) return parts
    where -= Math.ceil(over)
  }
  return undefined
}

/** A part that ends too thin for its allowances is no part. */
function sewable<T>(parts: () => T): T | undefined {
  try {
    return parts()
  } catch (error) {
    if (error instanceof Refusal) return undefined
    throw error
  }
}

function allowancesOf({ seams }: Draft, piece: Piece): typeof FELLED {
  const first = seams.find(({ a, b }) => [...a, ...b].some((span) => span.piece === piece.id))
  if (first?.finish === 'felled') return FELLED
  const plain = piece.edges.filter(({ turned }) => !turned).map(({ allowance }) => allowance)
  // What is hemmed all round shows both its faces, and its joins are felled.
  return plain.length === 0 ? FELLED : { main: Math.max(...plain), strip: Math.max(...plain) }
}

/** Where a join may lie, from the near side of the piece, the widest main part first. */
function joins(piece: Piece, usable: number, allowance: number): number[] {
  const finished = pathBox(piece.outline)
  const [left, right] = [finished.x, finished.x + finished.width]
  const widest = Math.floor(pathBox(piece.cut).x + usable - allowance)
  const kept = keptWhole(piece)
  // Beside a corner too: beyond it a flared piece is cut through in more than one place.
  const corners = piece.outline.map(({ from }) => from.x - NARROWEST)
  return [widest, right - NARROWEST, ...kept.flatMap(({ from, to }) => [from, to]), ...corners]
    .filter((at) => at <= widest && at >= left + NARROWEST && at <= right - NARROWEST)
    .filter((at) => mayJoin(piece, at))
    .sort((a, b) => b - a)
}

/** Whether a join at `at` spares neck, openings, slits and the middle. */
const mayJoin = (piece: Piece, at: number): boolean =>
  keptWhole(piece).every(({ from, to }) => at <= from || at >= to)

/** Stretches across the piece that no join may cross: the neck, openings, slits, and the middle. */
function keptWhole(piece: Piece): { from: number; to: number }[] {
  const { outline, openings, slits, edges, joinsFreely, keptWhole: named } = piece
  if (joinsFreely === true) return []
  const whole = pathBox(outline)
  const middle = whole.x + whole.width / 2
  const curves = [
    ...edges
      .filter(({ id, on }) => on === 'outline' && (named?.includes(id) ?? true))
      .flatMap(({ path }) => path.filter(({ kind }) => kind === 'arc')),
    ...openings.flatMap(({ finished }) => finished),
  ]
  const stretches = [
    ...curves.map(segmentBox).map(({ x, width }) => [x, x + width] as const),
    ...slits.map(({ apex, open }) => [Math.min(apex.x, open.x), Math.max(apex.x, open.x)] as const),
    [middle, middle] as const,
  ]
  return stretches.map(([from, to]) => ({ from: from - NARROWEST, to: to + NARROWEST }))
}

type Portion = { edge: Edge; main: boolean; path: Path; from: number; to: number }
type Parts = { main: Piece; strip: Piece; portions: Portion[] }

/** The piece cut through on an upright line; undefined when that is not one cut from side to side. */
function partsOf(piece: Piece, stripId: string, at: number, allowances: typeof FELLED): Parts | undefined {
  const ring = piece.edges.filter(({ on }) => on === 'outline').flatMap((edge) => portionsOf(edge, at))
  const begins = ring.findIndex(({ main }, i) => main && !ring[(i + ring.length - 1) % ring.length]!.main)
  if (begins < 0) return undefined
  const turned = [...ring.slice(begins), ...ring.slice(0, begins)]
  const mains = turned.findIndex(({ main }) => !main)
  if (mains < 0 || turned.slice(mains).some(({ main }) => main)) return undefined
  const sides = (portions: readonly Portion[], id: string, allowance: number): Side[] => {
    const [start, end] = [portions[0]!.path[0]!.from, portions.at(-1)!.path.at(-1)!.to]
    return [
      ...portions.map(({ edge, path }) => ({
        ...{ id: edge.id, path },
        ...{ allowance: edge.allowance, turned: edge.turned },
      })),
      { id, path: [line(end, start)], allowance },
    ]
  }
  const part = (portions: readonly Portion[], main: boolean, allowance: number): Piece => {
    const mine = ({ x }: Point) => x < at === main
    const { outline: _, cut: __, edges, openings, slits, ...rest } = piece
    const own = main ? rest : stripNames(rest, stripId)
    const kept = openings.filter(({ finished }) => mine(finished[0]!.from))
    return makePiece(own, {
      sides: sides(portions, joinOf(stripId), allowance),
      openings: kept.map(({ id }) => ({ id, sides: edges.filter(({ on }) => on === id) })),
      slits: slits.filter(({ open }) => mine(open)),
    })
  }
  return {
    main: part(turned.slice(0, mains), true, allowances.main),
    strip: part(turned.slice(mains), false, allowances.strip),
    portions: turned,
  }
}

/** A strip goes by the name of its piece; its sizes are not among those a maker writes down. */
const stripNames = <T extends Pick<Piece, 'id' | 'name' | 'copies' | 'sizes'>>(rest: T, id: string): T => ({
  ...rest,
  id,
  name: phrase('draft.piece.strip', { piece: rest.name }),
  copies: rest.copies.map((copy) => ({ ...copy, name: phrase('draft.piece.strip', { piece: copy.name }) })),
  sizes: [],
})
/** A piece may be given a strip more than once. */
function stripOf({ pieces }: Draft, { id }: Piece): string {
  const taken = (strip: string) => pieces.some((piece) => piece.id === strip)
  let strip = `${id}-strip`
  for (let n = 2; taken(strip); n++) strip = `${id}-strip-${n}`
  return strip
}
/** The edge of a join, on both parts. */
const joinOf = (strip: string): string => `join-${strip}`

/** An edge in its runs on either side of the line, with where they lie along it. */
function portionsOf(edge: Edge, at: number): Portion[] {
  const out: Portion[] = []
  let along = 0
  for (const s of edge.path.flatMap((one) => cutAt(one, at))) {
    const main = pointAt(s, 0.5).x < at
    const length = pathLength([s])
    const last = out.at(-1)
    if (last?.main === main) {
      last.path = [...last.path, s]
      last.to += length
    } else out.push({ edge, main, path: [s], from: along, to: along + length })
    along += length
  }
  return out
}

/** A segment whole, or in parts where it passes the line; an arc may do so twice. */
function cutAt(s: Segment, at: number): Segment[] {
  const parts = s.kind === 'arc' ? splitAtSides(s) : [s]
  const cut = parts.flatMap((part) => cutOnce(part, at))
  return cut.length === parts.length ? [s] : cut
}

/** An arc in parts that go only one way across the cloth. */
function splitAtSides(s: Arc): Arc[] {
  const start = Math.atan2(s.from.y - s.centre.y, s.from.x - s.centre.x)
  const marks = [-2, -1, 0, 1, 2]
    .map((half) => (half * Math.PI - start) / s.sweep)
    .filter((t) => t > 1e-9 && t < 1 - 1e-9)
    .sort((a, b) => a - b)
  const ends = [0, ...marks, 1]
  return ends.slice(1).map((end, i) => {
    const from = i === 0 ? s.from : pointAt(s, ends[i]!)
    const part = arc(from, s.centre, s.sweep * (end - ends[i]!))
    return end === 1 ? { ...part, to: s.to } : part
  })
}

/** A segment that passes the line at most once. */
function cutOnce(s: Segment, at: number): Segment[] {
  const [from, to] = [s.from.x - at, s.to.x - at]
  if (from * to >= 0) return [s]
  if (s.kind === 'line') {
    const middle = { ...pointAt(s, from / (from - to)), x: at }
    return [line(s.from, middle), line(middle, s.to)]
  }
  let [low, high] = [0, 1]
  for (let i = 0; i < 60; i++) {
    const t = (low + high) / 2
    if ((pointAt(s, t).x - at) * from > 0) low = t
    else high = t
  }
  const first = arc(s.from, s.centre, s.sweep * low)
  return [first, { ...arc(first.to, s.centre, s.sweep * (1 - low)), to: s.to }]
}

function withParts(draft: Draft, piece: Piece, { main, strip, portions }: Parts): Draft {
  const pieces = draft.pieces.flatMap((one) => (one === piece ? [main, strip] : [one]))
  const moved = (spans: readonly Span[]): Span[] =>
    spans.flatMap((span) => (span.piece === piece.id ? onParts(span, portions, strip) : [span]))
  const joins = piece.copies.map(
    (copy): Seam =>
      seam({
        ...{ id: `${strip.id}-${copy.id}`, kind: 'piecing', finish: finishOf(draft, piece) },
        name: phrase('draft.seam.piecing', { piece: copy.name }),
        a: [wholeEdge(pieces, main.id, copy.id, joinOf(strip.id))],
        b: [wholeEdge(pieces, strip.id, copy.id, joinOf(strip.id))],
      }),
  )
  const seams = [...joins, ...draft.seams.map((one) => ({ ...one, a: moved(one.a), b: moved(one.b) }))]
  const hems = draft.hems.map((one) => ({ ...one, spans: moved(one.spans) }))
  const added = joins.reduce((sum, { length }) => sum + length, 0)
  const caution = phrase('draft.caution.pieced', { piece: piece.name, seam: { mm: Math.round(added) } })
  return {
    ...{ ...draft, pieces, seams, hems },
    steps: withStep(
      draft.steps,
      joins.map(({ id }) => id),
      added,
    ),
    cautions: [...draft.cautions, caution],
    totals: totalsOf(pieces, seams, hems),
  }
}

const finishOf = ({ seams }: Draft, piece: Piece): Seam['finish'] => {
  const first = seams.find(({ a, b }) => [...a, ...b].some((span) => span.piece === piece.id))
  return first === undefined || first.finish === 'felled' ? 'felled' : 'open'
}

/** A span of the whole piece, on the parts it now lies on. */
function onParts(span: Span, portions: readonly Portion[], strip: Piece): Span[] {
  const own = portions.filter(({ edge }) => edge.id === span.edge)
  // The edge of an opening or a slit, which lies wholly on one part.
  if (own.length === 0)
    return [strip.edges.some(({ id }) => id === span.edge) ? { ...span, piece: strip.id } : span]
  return own
    .map(({ main, from, to }) => ({
      main,
      start: from,
      from: Math.max(span.from, from),
      to: Math.min(span.to, to),
    }))
    .filter(({ from, to }) => to - from > 1e-9)
    .sort((a, b) => a.from - b.from)
    .map(({ main, start, from, to }) => ({
      ...span,
      piece: main ? span.piece : strip.id,
      from: from - start,
      to: to - start,
    }))
}

/** Each strip is one piece more to lay out, and each join is cut twice. */
const more =
  (strips: number, join: number) =>
  (work: Step['operations'][number]): Step['operations'][number] => {
    const by = { layOut: strips, cutPiece: strips, cutOut: (2 * join) / 1000 } as Partial<
      Record<typeof work.operation, number>
    >
    return { ...work, quantity: work.quantity + (by[work.operation] ?? 0) }
  }

/** The joins are one step, the first of the sewing. */
function withStep(before: readonly Step[], joins: string[], added: number): Step[] {
  const steps = before.map((step) => ({
    ...step,
    operations: step.operations.map(more(joins.length, added)),
  }))
  const known = steps.find(({ id }) => id === 'piecing')
  if (known !== undefined)
    return steps.map((step) => (step === known ? { ...step, seams: [...step.seams, ...joins] } : step))
  const step: Step = {
    ...{ id: 'piecing', stage: 'sew', name: phrase('draft.step.piecing'), seams: joins },
    ...{ hems: [], operations: [], cautions: [] },
  }
  const first = steps.findIndex(({ stage }) => stage === 'sew')
  return [...steps.slice(0, first), step, ...steps.slice(first)]
}
