/** A point or vector in millimetres. In a piece, y runs up along the straight grain (the warp). */
export type Point = { x: number; y: number }

/** A straight segment. */
export type Line = { kind: 'line'; from: Point; to: Point }

/** A circular arc. `sweep` is the signed angle in radians, positive anticlockwise, never beyond a full turn. */
export type Arc = { kind: 'arc'; from: Point; to: Point; centre: Point; sweep: number }

/** One stretch of a path, exact as it is: arcs are flattened only where something needs corners. */
export type Segment = Line | Arc

/** Segments end to end. Closed outlines run anticlockwise; openings cut in them run clockwise. */
export type Path = readonly Segment[]

/** An axis-parallel rectangle in millimetres. */
export type Rectangle = { x: number; y: number; width: number; height: number }
