import type { OwnConstruction, OwnEdge } from '../../core/draft/own/definition.ts'

const edge = (piece: string, copy: number, name: string): OwnEdge => ({ piece, copy, edge: name })

/** A bodice of two widths with tapered sleeves and a gathered skirt, as a maker might write it. */
export const FROCK: OwnConstruction = {
  ...{ format: 'ellwand-construction/1', name: 'Field frock', summary: 'A short frock on a gathered skirt.' },
  finish: 'open',
  pieces: [
    {
      ...{
        id: 'body',
        name: 'body',
        shape: 'rectangle',
        count: 2,
        pairs: false,
        grain: 'straight',
        cloth: 'main',
      },
      dimensions: { width: { measure: 'bustGirth', factor: 0.5, ease: 60 }, length: { fixed: 400 } },
      marks: [
        { edge: 'right', at: { fixed: 400 - 200 } },
        { edge: 'left', at: { fixed: 200 } },
      ],
    },
    {
      ...{ id: 'sleeve', name: 'sleeve', shape: 'taperedPanel', count: 2, pairs: true, grain: 'straight' },
      ...{ cloth: 'main', marks: [] },
      dimensions: {
        topWidth: { edge: 'right-2', of: 'body', factor: 2 },
        bottomWidth: { measure: 'handGirth', factor: 1, ease: 60 },
        length: { measure: 'armLength', factor: 0.5, ease: 0 },
      },
    },
    {
      ...{ id: 'skirt', name: 'skirt', shape: 'rectangle', count: 1, pairs: false, grain: 'straight' },
      ...{ cloth: 'main', marks: [] },
      dimensions: { width: { edge: 'bottom', of: 'body', factor: 3 }, length: { fixed: 500 } },
    },
  ],
  seams: [
    ...(['left', 'right'] as const).map((side, i) => ({
      ...{ id: `side-${side}`, name: `side, ${side}`, gathered: false },
      a: [edge('body', 1, side === 'right' ? 'right-1' : 'left-2')],
      b: [edge('body', 2, i === 0 ? 'right-1' : 'left-2')],
    })),
    ...[1, 2].flatMap((copy) => [
      {
        ...{ id: `armhole-${copy}`, name: 'sleeve to body', gathered: false },
        a: [edge('sleeve', copy, 'top')],
        b: [
          edge('body', 1, copy === 1 ? 'right-2' : 'left-1'),
          edge('body', 2, copy === 1 ? 'left-1' : 'right-2'),
        ],
      },
      {
        ...{ id: `under-${copy}`, name: 'sleeve seam', gathered: false },
        ...{ a: [edge('sleeve', copy, 'left')], b: [edge('sleeve', copy, 'right')] },
      },
    ]),
    {
      ...{ id: 'waist', name: 'skirt to body', gathered: true, a: [edge('skirt', 1, 'top')] },
      b: [edge('body', 1, 'bottom'), edge('body', 2, 'bottom')],
    },
    {
      id: 'back',
      name: 'skirt, closed',
      gathered: false,
      a: [edge('skirt', 1, 'left')],
      b: [edge('skirt', 1, 'right')],
    },
  ],
  hems: [
    {
      id: 'neck',
      name: 'neck',
      edges: [edge('body', 1, 'top'), edge('body', 2, 'top')],
      depth: 6,
      seen: true,
    },
    {
      id: 'wrists',
      name: 'wrists',
      edges: [1, 2].map((copy) => edge('sleeve', copy, 'bottom')),
      depth: 15,
      seen: true,
    },
    { id: 'hem', name: 'hem', edges: [edge('skirt', 1, 'bottom')], depth: 30, seen: true },
  ],
  fit: [
    {
      name: 'Chest',
      measure: 'bustGirth',
      ease: 80,
      edges: [edge('body', 1, 'top'), edge('body', 2, 'top')],
    },
  ],
}
