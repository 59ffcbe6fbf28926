import type { MeasureId } from '../../measure/vocabulary.ts'

/** Version of the format that constructions of the maker's own are written and exchanged in. */
export const OWN_FORMAT = 'ellwand-construction/1'

/** The shapes her pieces may have. */
export const OWN_SHAPES = ['rectangle', 'taperedPanel', 'gore', 'gusset', 'sector', 'band'] as const
export type OwnShape = (typeof OWN_SHAPES)[number]

/**
 * How long a dimension is: so many mm; a measure of the body times a factor and some mm of ease; or as long as an
 * edge of another piece, times a factor.
 */
export type OwnLength =
  | { fixed: number }
  | { measure: MeasureId; factor: number; ease: number }
  | { edge: string; of: string; factor: number }

/** A piece of hers, cut `count` times. */
export type OwnPiece = {
  id: string
  name: string
  shape: OwnShape
  /** By the shape's own dimensions. */
  dimensions: Record<string, OwnLength>
  count: number
  /** Whether every second copy is the mirror image. */
  pairs: boolean
  /** Marks on straight edges, from where each begins: the parts between are edges of their own, `right-1`, `right-2`. */
  marks: { edge: string; at: OwnLength }[]
  grain: 'straight' | 'bias'
  cloth: 'main' | 'facing' | 'lining' | 'interlining'
}

/** One edge of one copy; copies are numbered from 1. */
export type OwnEdge = { piece: string; copy: number; edge: string }

/** Two chains of edges sewn together. What is longer on side a is gathered, if that is meant. */
export type OwnSeam = { id: string; name: string; a: OwnEdge[]; b: OwnEdge[]; gathered: boolean }

/** Edges turned and sewn, this deep when finished, mm. */
export type OwnHem = { id: string; name: string; edges: OwnEdge[]; depth: number; seen: boolean }

/** A level of the body that the garment must go round: these edges together, against a measure and ease. */
export type OwnFit = { name: string; measure: MeasureId; ease: number; edges: OwnEdge[] }

/** A construction as the maker wrote it: plain data, the same in the store and in a file. */
export type OwnConstruction = {
  format: typeof OWN_FORMAT
  name: string
  summary: string
  finish: 'felled' | 'open'
  pieces: OwnPiece[]
  seams: OwnSeam[]
  hems: OwnHem[]
  fit: OwnFit[]
}
