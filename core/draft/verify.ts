import { isClosed, signedArea } from '../geometry/path.ts'
import { pointAt } from '../geometry/segment.ts'
import { SEAM_WALK } from '../geometry/tolerance.ts'
import type { Path, Point } from '../geometry/types.ts'
import { chainLength } from './seams.ts'
import type { Draft, Piece, Span } from './types.ts'

/**
 * What is wrong with a draft, in words for its programmer; nothing when it can be sewn. No draft leaves the
 * room without this: outlines are closed, anticlockwise and do not cross themselves; the two sides of every
 * seam agree within `SEAM_WALK` after their ratio; every part of every edge of every copy is sewn exactly
 * once; and every seam and hem belongs to exactly one step.
 */
export function faultsOf(draft: Draft): string[] {
  return [
    ...draft.pieces.flatMap(outlineFaults),
    ...draft.seams.flatMap(({ id, a, b, ratio }) => {
      const difference = Math.abs(chainLength(a) - chainLength(b) * ratio)
      return difference <= SEAM_WALK ? [] : [`seam ${id} does not walk: ${difference.toFixed(3)} mm`]
    }),
    ...coverFaults(draft),
    ...stepFaults(draft),
  ]
}

/** @throws Error naming the faults: a fault of the construction, never of the maker */
export function assertSewable(draft: Draft): Draft {
  const faults = faultsOf(draft)
  if (faults.length > 0) throw new Error(`${draft.construction} cannot be sewn: ${faults.join('; ')}`)
  return draft
}

function outlineFaults({ id, outline, cut, openings }: Piece): string[] {
  const paths: [name: string, path: Path, sense: 1 | -1][] = [
    [`${id} outline`, outline, 1],
    [`${id} cut`, cut, 1],
    ...openings.flatMap((o): [string, Path, 1 | -1][] => [
      [`${id} opening ${o.id}`, o.finished, -1],
      [`${id} opening ${o.id} cut`, o.cut, -1],
    ]),
  ]
  return paths.flatMap(([name, path, sense]) => {
    if (!isClosed(path)) return [`${name} is not closed`]
    if (signedArea(path) * sense <= 0) return [`${name} turns the wrong way`]
    return crossesItself(path) ? [`${name} crosses itself`] : []
  })
}

/** Chords per arc: enough to see a crossing, which at these sizes is never finer than a few millimetres. */
const CHORDS = 8

function crossesItself(path: Path): boolean {
  const points = path.flatMap((s) =>
    s.kind === 'line' ? [s.from] : Array.from({ length: CHORDS }, (_, i) => pointAt(s, i / CHORDS)),
  )
  const n = points.length
  for (let i = 0; i < n; i++) {
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue
      if (cross(points[i]!, points[i + 1]!, points[j]!, points[(j + 1) % n]!)) return true
    }
  }
  return false
}

function cross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) =>
    Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x))
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
}

/** Rounding dust between two marks on an edge, mm. */
const MARK = 1e-6

function coverFaults({ pieces, seams, hems }: Draft): string[] {
  const spans = [...seams.flatMap(({ a, b }) => [...a, ...b]), ...hems.flatMap((h) => h.spans)]
  const byEdge = new Map<string, Span[]>()
  for (const span of spans) {
    const key = `${span.piece}/${span.copy}/${span.edge}`
    byEdge.set(key, [...(byEdge.get(key) ?? []), span])
  }
  const faults: string[] = []
  for (const piece of pieces) {
    for (const copy of piece.copies) {
      for (const edge of piece.edges) {
        const key = `${piece.id}/${copy.id}/${edge.id}`
        const used = (byEdge.get(key) ?? [])
          .filter(({ from, to }) => to - from > MARK)
          .sort((a, b) => a.from - b.from)
        byEdge.delete(key)
        let reached = 0
        for (const { from, to } of used) {
          if (Math.abs(from - reached) > MARK)
            faults.push(`${key} from ${reached} to ${from} is sewn twice or not at all`)
          reached = to
        }
        if (Math.abs(edge.length - reached) > MARK)
          faults.push(`${key} from ${reached} to ${edge.length} is not sewn`)
      }
    }
  }
  return [...faults, ...[...byEdge.keys()].map((key) => `${key} is no edge of the draft`)]
}

function stepFaults({ seams, hems, steps }: Draft): string[] {
  const times = new Map<string, number>()
  for (const id of steps.flatMap((step) => [...step.seams, ...step.hems]))
    times.set(id, (times.get(id) ?? 0) + 1)
  return [...seams, ...hems].flatMap(({ id }) =>
    (times.get(id) ?? 0) === 1 ? [] : [`${id} is sewn in ${times.get(id) ?? 0} steps`],
  )
}
