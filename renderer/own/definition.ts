import type { InputOf, OutputOf } from '../../core/workroom.ts'

/** A construction of the maker's own as it crosses the bridge. */
export type Definition = InputOf<'ownConstruction.try'>['definition']
export type Piece = Definition['pieces'][number]
export type Length = Piece['dimensions'][string]
export type Edge = Definition['hems'][number]['edges'][number]
export type Tried = OutputOf<'ownConstruction.try'>
export type Shapes = OutputOf<'ownConstruction.shapes'>['shapes']

/** Whether two edges are the same one of the same copy. */
export const sameEdge = (a: Edge, b: Edge): boolean =>
  a.piece === b.piece && a.copy === b.copy && a.edge === b.edge

/** A new construction: nothing in it yet but what it is called. */
export const blank = (name: string): Definition => ({
  ...{ format: 'ellwand-construction/1', name, summary: '', finish: 'felled' },
  ...{ pieces: [], seams: [], hems: [], fit: [] },
})

/** An id that is not taken yet: `piece-3`. */
export function freeId(stem: string, taken: readonly { id: string }[]): string {
  for (let n = taken.length + 1; ; n++) {
    const id = `${stem}-${n}`
    if (!taken.some((one) => one.id === id)) return id
  }
}

/** The definition without one piece, and without whatever was sewn to it. */
export function withoutPiece(definition: Definition, id: string): Definition {
  const other = (edges: Edge[]) => edges.filter(({ piece }) => piece !== id)
  return {
    ...definition,
    pieces: definition.pieces.filter((piece) => piece.id !== id),
    seams: definition.seams
      .map((seam) => ({ ...seam, a: other(seam.a), b: other(seam.b) }))
      .filter(({ a, b }) => a.length > 0 && b.length > 0),
    hems: definition.hems
      .map((hem) => ({ ...hem, edges: other(hem.edges) }))
      .filter(({ edges }) => edges.length > 0),
    fit: definition.fit
      .map((fit) => ({ ...fit, edges: other(fit.edges) }))
      .filter(({ edges }) => edges.length > 0),
  }
}
