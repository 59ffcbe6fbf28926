import { phrase } from '../../../words/phrase.ts'
import { Refusal } from '../../../words/refusal.ts'
import { named } from '../../names.ts'
import type { Assembly } from '../../parts/assembly.ts'
import { HANDS, PARTS, QUARTERS } from '../../places.ts'
import { edgesOn, part, partFromEnd, seam, turnedHem } from '../../seams.ts'
import type { Hem, Seam, Span } from '../../types.ts'
import type { Figures } from './figures.ts'
import { sideGoreEdges } from './gores.ts'

/** Left open: at the wrist end of the sleeve seams, and at the hem end of the side seams between the gores. mm. */
export type Openings = { forearm: number; side: number }

/** A tunic with its sleeve and side seams open at their lower ends, those edges hemmed. */
export function opened({ pieces, seams, hems }: Assembly, f: Figures, { forearm, side }: Openings): Assembly {
  const edge = edgesOn(pieces)
  const allowance = f.allowances.narrow
  const slit = (id: string, code: string, place: string, spans: Span[]): Hem =>
    turnedHem({ id, kind: 'slit', name: named('hem', code, place), spans, depth: allowance / 2, allowance })
  /** Both sides of a seam without the first or last `open` mm. */
  const shortened = (one: Seam, a: Span, b: Span): Seam => seam({ ...one, a: [a], b: [b] })
  const sleeveEdges = (hand: 'left' | 'right') =>
    [edge('sleeve', 'front', hand), edge('sleeve', 'back', hand)] as const
  const goreEdges = (hand: 'left' | 'right') =>
    PARTS.map((which) => {
      const { id } = QUARTERS.find((quarter) => quarter.hand === hand && quarter.part === which)!
      return edge('gore', sideGoreEdges(f, id).outer, id)
    })
  /** The end at the hem of a gore’s long edge: the right one begins there, the left one ends there. */
  const atHem = (span: Span, open: number) =>
    span.edge === 'right' ? part(span, 0, open) : partFromEnd(span, 0, open)
  const above = (span: Span, open: number) =>
    span.edge === 'right' ? part(span, open, span.to) : partFromEnd(span, open, span.to)
  const gored = side > 0 && f.skirt.gores > 2
  return {
    pieces,
    seams: seams.map((one) => {
      const hand = HANDS.find((at) => one.id === `underarm-${at}` || one.id === `gore-to-gore-${at}`)
      if (hand === undefined) return one
      if (one.id.startsWith('underarm') && forearm > 0) {
        const [a, b] = [one.a[0]!, one.b[0]!]
        refuseLonger(forearm, a.to - a.from, 'forearmOpening')
        return shortened(one, { ...a, from: a.from + forearm }, { ...b, to: b.to - forearm })
      }
      if (one.id.startsWith('gore-to-gore') && gored) {
        const [front, back] = goreEdges(hand)
        refuseLonger(side, back!.to, 'sideSlit')
        return shortened(one, above(back!, side), above(front!, side))
      }
      return one
    }),
    hems: [
      ...hems,
      ...(forearm > 0
        ? HANDS.map((hand) => {
            const [front, back] = sleeveEdges(hand)
            const spans = [part(front, 0, forearm), partFromEnd(back, 0, forearm)]
            return slit(`forearm-${hand}`, 'forearmOpening', hand, spans)
          })
        : []),
      ...(gored
        ? HANDS.map((hand) =>
            slit(
              `side-slit-${hand}`,
              'sideSlit',
              hand,
              goreEdges(hand).map((span) => atHem(span, side)),
            ),
          )
        : []),
    ],
  }
}

/** Of a seam that is left open at its end, so much at least is sewn, mm. */
const LEAST_SEWN = 20

function refuseLonger(opening: number, seam: number, choice: string): void {
  if (opening <= seam - LEAST_SEWN) return
  const params = { opening: { mm: opening }, most: { mm: Math.max(0, Math.floor(seam - LEAST_SEWN)) } }
  throw new Refusal(phrase('refusal.draft.openingTooLong', params), choice)
}
