import { SEAM_WALK } from '../../geometry/tolerance.ts'
import type { Body } from '../../measure/body.ts'
import type { MeasureId } from '../../measure/vocabulary.ts'
import { edgeWord } from '../../words/own-edges.ts'
import { type Phrase, phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { Construction } from '../construction.ts'
import { fitCheck } from '../fit.ts'
import { makingOf, work, worthDoing } from '../making.ts'
import { makePiece } from '../pieces.ts'
import { allowancesFor, hemmed } from '../practice.ts'
import { chainLength, seam, takenUpSeam, totalsOf, turnedHem, wholeEdge } from '../seams.ts'
import type { Draft, Hem, Piece, Seam } from '../types.ts'
import { assertSewable } from '../verify.ts'
import type { OwnConstruction, OwnEdge, OwnLength } from './definition.ts'
import { measured, type SizedPiece, sizedPieces, standsFor } from './lengths.ts'
import { unfolded } from './unfolded.ts'

/** A maker's own words, as they stand. */
export const ownWords = (text: string): Phrase => phrase('draft.own.words', { text })

/** Ids of constructions of her own begin so, before the family they are a version of. */
const OWN = 'own:'
/** The id of a construction of her own; without a version, that of whichever is the latest. */
export const ownId = (family: string, version?: number): string =>
  `${OWN}${family}${version === undefined ? '' : `@${version}`}`

/** The family, and the version if one is meant; undefined for a construction of the planner's. */
export function ownOf(id: string): { family: string; version?: number } | undefined {
  if (!id.startsWith(OWN)) return undefined
  const [family = '', version] = id.slice(OWN.length).split('@')
  return version === undefined ? { family } : { family, version: Number(version) }
}

/** Rows of gathering thread in her gathered seams (common practice). */
const ROWS = 2

/** What is wrong with a construction on a body, a sentence each; then the garment, when nothing is. */
export type Tried = { faults: Phrase[]; draft?: Draft; pieces: Piece[] }

/**
 * Tries a construction on a body: sizes, then every seam against its other side and every edge for being sewn once.
 */
export function tryOwn(own: OwnConstruction, id: string, body: Body): Tried {
  let sized: SizedPiece[]
  let pieces: Piece[]
  try {
    sized = sizedPieces(own, body)
    pieces = sized.map((one) => pieceOf(one, own))
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return { faults: [error.phrase], pieces: [] }
  }
  const faults = [...edgeFaults(own, pieces), ...walkFaults(own, pieces)]
  if (pieces.length === 0) faults.push(phrase('own.fault.empty'))
  if (faults.length > 0) return { faults, pieces }
  return { faults, pieces, draft: draftOf(own, id, body, pieces) }
}

/**
 * A construction of her own as the rest of the planner takes one.
 * @throws Refusal, from `draft`, with the first of its faults on that body
 */
export function constructionFrom(own: OwnConstruction, id: string): Construction {
  const required = measuresIn(own).map(standsFor)
  return {
    ...{ id, title: ownWords(own.name), summary: ownWords(own.summary), period: phrase('draft.own.period') },
    ...{ sources: [], required, useful: [], choices: {}, often: [], finishPlan: 'machineWhereHidden' },
    draft: (body) => {
      const { draft, faults } = tryOwn(own, id, body)
      if (draft !== undefined) return draft
      const [first] = faults
      throw new Refusal(first!)
    },
    describe: () => [ownWords(own.summary === '' ? `${own.name}.` : own.summary)],
  }
}

/** Every measure it is drafted to, in the order in which they are first named. */
export function measuresIn({ pieces, fit }: OwnConstruction): MeasureId[] {
  const lengths: OwnLength[] = pieces.flatMap(({ dimensions, marks }) => [
    ...Object.values(dimensions),
    ...marks.map(({ at }) => at),
  ])
  return [
    ...new Set([
      ...lengths.flatMap((length) => ('measure' in length ? [length.measure] : [])),
      ...fit.map(({ measure }) => measure),
    ]),
  ]
}

const edgeName = ({ piece, copy, edge }: OwnEdge): string => `${piece}/${copy}/${edge}`

function pieceOf({ piece, sides, dimensions }: SizedPiece, own: OwnConstruction): Piece {
  const { wide } = allowancesFor(own.finish)
  const hems = new Map(
    own.hems.flatMap(({ depth, edges }) =>
      edges.filter((one) => one.piece === piece.id).map(({ edge }) => [edge, depth] as const),
    ),
  )
  const copies = Array.from({ length: piece.count }, (_, i) => ({
    id: String(i + 1),
    name:
      piece.count === 1
        ? ownWords(piece.name)
        : phrase('draft.own.copy', { piece: piece.name, number: i + 1 }),
    mirrored: piece.pairs && i % 2 === 1,
  }))
  return makePiece(
    {
      ...{ id: piece.id, name: ownWords(piece.name), copies, grain: piece.grain, cloth: piece.cloth },
      turn: piece.shape === 'gusset' ? [0, 90, 180, 270] : [0, 180],
      ...(piece.shape === 'sector' ? { joinsFreely: true as const } : {}),
      sizes: Object.entries(dimensions).map(([id, mm]) => ({
        name: phrase(`own.dimension.${id}` as 'own.dimension.width'),
        mm,
      })),
    },
    {
      sides: sides.map(({ id, path }) => {
        const depth = hems.get(id)
        return { id, path, ...(depth === undefined ? { allowance: wide } : hemmed(depth)) }
      }),
    },
  )
}

/** Edges that are not there, that are sewn twice, and that are not sewn at all. */
function edgeFaults(own: OwnConstruction, pieces: readonly Piece[]): Phrase[] {
  const used = [...own.seams.flatMap(({ a, b }) => [...a, ...b]), ...own.hems.flatMap(({ edges }) => edges)]
  const times = new Map<string, number>()
  for (const one of used) times.set(edgeName(one), (times.get(edgeName(one)) ?? 0) + 1)
  const faults: Phrase[] = []
  for (const piece of pieces) {
    for (const copy of piece.copies) {
      for (const { id: edge } of piece.edges) {
        const key = edgeName({ piece: piece.id, copy: Number(copy.id), edge })
        const count = times.get(key) ?? 0
        times.delete(key)
        const params = { piece: copy.name, edge: edgeWord(edge) }
        if (count === 0) faults.push(phrase('own.fault.unsewn', params))
        if (count > 1) faults.push(phrase('own.fault.twice', params))
      }
    }
  }
  return [...faults, ...[...times.keys()].map((key) => phrase('own.fault.noEdge', { edge: key }))]
}

/** Seams whose two sides differ, and are not meant to be gathered; or are to be, and are shorter there. */
function walkFaults(own: OwnConstruction, pieces: readonly Piece[]): Phrase[] {
  const length = (edges: readonly OwnEdge[]) =>
    edges.reduce((sum, edge) => sum + (edgeLength(pieces, edge) ?? 0), 0)
  return own.seams.flatMap(({ name, a, b, gathered }) => {
    const [one, other] = [length(a), length(b)]
    const params = { seam: name, one: { mm: one }, other: { mm: other } }
    if (one === 0 || other === 0) return [phrase('own.fault.oneSided', { seam: name })]
    if (gathered) return one >= other - SEAM_WALK ? [] : [phrase('own.fault.gathersShort', params)]
    return Math.abs(one - other) <= SEAM_WALK ? [] : [phrase('own.fault.walk', params)]
  })
}

const edgeLength = (pieces: readonly Piece[], { piece, edge }: OwnEdge): number | undefined =>
  pieces.find(({ id }) => id === piece)?.edges.find(({ id }) => id === edge)?.length

function draftOf(own: OwnConstruction, id: string, body: Body, pieces: Piece[]): Draft {
  const spans = (edges: readonly OwnEdge[]) =>
    edges.map(({ piece, copy, edge }) => wholeEdge(pieces, piece, String(copy), edge))
  const seams = own.seams.map((one): Seam => {
    const parts = { id: one.id, kind: 'side' as const, name: ownWords(one.name), finish: own.finish }
    const [a, b] = [spans(one.a), spans(one.b)]
    const full = Math.abs(chainLength(a) - chainLength(b)) > SEAM_WALK
    return full ? takenUpSeam({ ...parts, a, b }, { gathers: ROWS }) : seam({ ...parts, a, b })
  })
  const hems = own.hems.map(
    (one): Hem =>
      turnedHem({
        ...{
          id: one.id,
          kind: one.seen ? 'bottom' : 'edge',
          name: ownWords(one.name),
          spans: spans(one.edges),
        },
        ...{ depth: one.depth, seen: one.seen },
      }),
  )
  const { step, sewing, hemming, before, pressSeams, after } = makingOf(pieces, seams, hems)
  const metres = seams.reduce(
    (sum, { gathers, length }) => sum + (gathers === undefined ? 0 : length / 1000),
    0,
  )
  return assertSewable({
    ...{ construction: id, title: ownWords(own.name), choices: {}, pieces, seams, hems },
    steps: worthDoing([
      ...before,
      step(
        'ownSeams',
        'sew',
        metres > 0 ? [work('setGathers', metres)] : [],
        sewing(() => true),
      ),
      ...(seams.length > 0 ? [pressSeams] : []),
      step('tryOn', 'fit', [work('tryOn', 1)], { seams: [], hems: [] }, ['pins']),
      step(
        'ownHems',
        'hem',
        [],
        hemming(() => true),
      ),
      ...after,
    ]),
    fit: own.fit.map(({ name, measure, ease, edges }) => ({
      ...fitCheck(body, {
        ...{
          id: 'own',
          from: measured(body, measure) === undefined ? [measure] : [],
          bound: 'least',
          mend: phrase('draft.own.mend', { name }),
        },
        garment: () => chainLength(spans(edges)),
        needs: () => measured(body, measure)! + ease,
      }),
      name: ownWords(name),
    })),
    cautions: [phrase('draft.own.caution'), phrase('draft.caution.flame')],
    notions: [],
    flat: unfolded(pieces, seams),
    sizes: [],
    totals: totalsOf(pieces, seams, hems),
  })
}
