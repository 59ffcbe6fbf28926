import type { Hem, Piece, Seam } from '../types.ts'

/** Part of a garment: what is cut for it, and how it is sewn. */
export type Assembly = { pieces: Piece[]; seams: Seam[]; hems: Hem[] }

/** Parts of one garment, in the order of the sewing. */
export const assembled = (parts: readonly Partial<Assembly>[]): Assembly => ({
  pieces: parts.flatMap(({ pieces = [] }) => pieces),
  seams: parts.flatMap(({ seams = [] }) => seams),
  hems: parts.flatMap(({ hems = [] }) => hems),
})
