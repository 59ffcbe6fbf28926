import { phrase } from '../../../words/phrase.ts'
import { makePiece, straightSides } from '../../pieces.ts'
import { HANDS, type Hand, type Part } from '../../places.ts'
import type { Piece, Span } from '../../types.ts'
import type { Figures } from './figures.ts'

/** Sleeves, wrist below and head above, and the square gussets under the arms. */
export function sleeves(f: Figures): Piece[] {
  const { sleeve, gusset, allowances, hems } = f
  const [w, h] = [sleeve.wrist / 2, sleeve.head / 2]
  const corners = [
    { x: -w, y: 0 },
    { x: w, y: 0 },
    { x: h, y: sleeve.length },
    { x: -h, y: sleeve.length },
  ]
  const panel = makePiece(
    {
      id: 'sleeve',
      name: phrase('draft.piece.sleeve'),
      // The two edges have unequal allowances, so the left sleeve is the right one's mirror image.
      copies: HANDS.map((hand) => ({
        id: hand,
        name: phrase(`draft.piece.sleeve.${hand}`),
        mirrored: hand === 'left',
      })),
      grain: 'straight',
      turn: [0, 180],
      cloth: 'main',
      sizes: [
        { name: phrase('draft.size.head'), mm: sleeve.head },
        { name: phrase('draft.size.wrist'), mm: sleeve.wrist },
        { name: phrase('draft.size.length'), mm: sleeve.length },
      ],
    },
    {
      sides: straightSides(corners, [
        { id: 'wrist', allowance: hems.wrist.allowance, turned: true },
        { id: 'front', allowance: allowances.wide },
        { id: 'head', allowance: allowances.wide },
        { id: 'back', allowance: allowances.narrow },
      ]),
    },
  )
  const square = [
    { x: 0, y: 0 },
    { x: gusset, y: 0 },
    { x: gusset, y: gusset },
    { x: 0, y: gusset },
  ]
  const diamond = makePiece(
    {
      id: 'gusset',
      name: phrase('draft.piece.gusset'),
      copies: HANDS.map((hand) => ({
        id: hand,
        name: phrase(`draft.piece.gusset.${hand}`),
        mirrored: false,
      })),
      grain: 'straight',
      turn: [0, 90, 180, 270],
      cloth: 'main',
      sizes: [{ name: phrase('draft.size.square'), mm: gusset }],
    },
    {
      sides: straightSides(
        square,
        ['sleeveFront', 'sleeveBack', 'bodyBack', 'bodyFront'].map((id) => ({
          id,
          allowance: allowances.wide,
        })),
      ),
    },
  )
  return [panel, diamond]
}

/** The part of a sleeve's slanting edge that its gusset takes, or the rest of it down to the wrist. */
export function sleeveSpan(
  { sleeve, gusset }: Figures,
  hand: Hand,
  part: Part,
  what: 'gusset' | 'underarm',
): Span {
  // The front edge is drawn up from the wrist, the back edge down from the head.
  const fromHead = what === 'gusset' ? [0, gusset] : [gusset, sleeve.edge]
  const [top, bottom] = [fromHead[0]!, fromHead[1]!]
  const [from, to] = part === 'front' ? [sleeve.edge - bottom, sleeve.edge - top] : [top, bottom]
  return { piece: 'sleeve', copy: hand, edge: part, from, to }
}
