import { z } from 'zod'
import { workCautions } from '../draft/cautions.ts'
import type { ClothRole, Draft, Step } from '../draft/types.ts'
import { type LaidCopy, laidCopies } from '../draw/laid.ts'
import { samePoint } from '../geometry/point.ts'
import { arcRadius, pathBox, pointAt } from '../geometry/segment.ts'
import type { Path, Point } from '../geometry/types.ts'
import { cutFrom } from '../lay/as-cut.ts'
import type { Lay } from '../lay/types.ts'
import type { GarmentSheet } from '../paper/sheet.ts'
import { sharedBy, sharedPieces } from '../quote/shared.ts'
import type { Sewing } from '../sew/types.ts'
import { stepsOfGarments } from '../store/commissions.ts'
import { sheetFor } from './garment-papers.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'

/** What the maker has before her at the cutting table, from the same object as the cutting sheet and the work order. */
export const tableRequests = [
  request({
    name: 'garment.table',
    kind: 'query',
    about:
      'One garment for the cutting table: every piece with its sizes and chalk figures in mm, the cloths it is cut from with all that lies on them, and what is sewn and minded at each step; `number` is that of the step on the work order, which has `numbered` in all.',
    input: z.strictObject({ garmentId: inputs.id }),
    run: ({ garmentId }, context) => {
      const { sheet } = sheetFor('cuttingSheet', garmentId, context)
      const { draft, sewing } = sheet.line.estimate
      const planned = new Map(draft.steps.map((step) => [step.id, step]))
      const lays = laysOf(sheet)
      return {
        pieces: piecesOf(sheet, lays),
        spread: lays.map(({ lay: { usableWidth, length }, copies }) => ({
          ...{ usableWidth, length, copies: copies.map(({ number, cut }) => ({ number, cut })) },
        })),
        numbered: draft.steps.length,
        steps: stepsOfGarments(context.store.db, [garmentId]).map(({ id, key, work }) => {
          const step = planned.get(key)
          const kinds = [...(step?.operations.map(({ operation }) => operation) ?? []), ...Object.keys(work)]
          return {
            ...{ id, cautions: workCautions(step?.cautions ?? [], kinds) },
            // Work that came up has no number on the work order.
            number: step === undefined ? null : draft.steps.indexOf(step) + 1,
            sewn: step === undefined ? [] : sewnAt(step, draft, sewing),
          }
        }),
      }
    },
  }),
]

type Laid = { lay: Lay; copies: LaidCopy[]; prefix: string }

/** The lays of a garment's cloths, its outer cloth's first, with what lies on them; in a shared lay pieces have a prefix. */
function laysOf({ snapshot, line }: GarmentSheet): Laid[] {
  const { draft, lay: own, others = [] } = line.estimate
  const shared = sharedBy(snapshot, line)
  const beside = snapshot.lines.filter(({ id }) => shared?.lines.includes(id) === true)
  const lays = [
    shared === undefined
      ? { lay: own, pieces: draft.pieces, prefix: '' }
      : {
          lay: shared.lay,
          pieces: sharedPieces(beside),
          prefix: `${beside.findIndex(({ id }) => id === line.id) + 1}.`,
        },
    ...others.map(({ lay }) => ({ lay, pieces: draft.pieces, prefix: '' })),
  ]
  return lays.map(({ lay, pieces, prefix }) => ({ lay, prefix, copies: laidCopies(lay, pieces) }))
}

/** Each piece once, with where each of its copies lies on its cloth. */
function piecesOf({ line }: GarmentSheet, lays: readonly Laid[]) {
  const laid = lays.flatMap(({ copies, prefix }, on) => copies.map((copy) => ({ ...copy, prefix, on })))
  return line.estimate.draft.pieces.map(
    ({ id, name, copies, outline, cut, openings, slits, edges, grain, cloth, sizes }) => ({
      piece: { name, copies, outline, cut, openings, slits, edges, grain },
      // Without a right side both hands are cut alike.
      alike: new Set(copies.map(({ mirrored }) => mirrored)).size > 1 && !clothOf(cloth, line).rightSide,
      ...{ id, sizes, cloth: cloth as ClothRole, cutSize: sizeOf(cut), finishedSize: sizeOf(outline) },
      laid: laid
        .filter((one) => one.of.piece === `${one.prefix}${id}`)
        .map((copy) => ({
          ...{ number: copy.number, name: copy.name, on: copy.on },
          ...{ angle: copy.placement.angle, flipped: copy.placement.flipped },
          firstCorner: copy.firstCorner,
          corners: copy.corners.map(({ at, fromSelvedge, fromCutEnd }) => ({
            ...{ fromSelvedge, fromCutEnd, arc: arcFrom(copy.cut, at) },
          })),
          openings: copy.openings.map((opening) => opening.cut.map(({ from }) => marked(opening.cut, from))),
          slits: copy.slits.map((slit) => [marked(slit, slit[0]!.from), marked(slit, slit.at(-1)!.to)]),
        })),
    }),
  )
}

/** The cloth that pieces of a role are cut from. */
function clothOf(role: ClothRole, { cloth, others = {} }: GarmentSheet['line']) {
  const from = cutFrom({ cloth: role }, others)
  return from === 'main' ? cloth : others[from]!
}

/** A point as it is chalked within a piece, in whole mm. */
const marked = (path: Path, at: Point) => ({
  ...{ fromSelvedge: Math.round(at.x), fromCutEnd: Math.round(at.y), arc: arcFrom(path, at) },
})

/** The arc in which the line leaves a corner: its radius and its middle, in whole mm; null where it is straight. */
function arcFrom(path: Path, at: Point) {
  const segment = path.find(({ from }) => samePoint(from, at))
  if (segment?.kind !== 'arc') return null
  const { x, y } = pointAt(segment, 0.5)
  return { radius: Math.round(arcRadius(segment)), fromSelvedge: Math.round(x), fromCutEnd: Math.round(y) }
}

/** Width across and length along, mm. */
function sizeOf(path: Path) {
  const { width, height } = pathBox(path)
  return { width, height }
}

/** The seams and hems of a step with their finished lengths, mm, and the stitches they are sewn in. */
const sewnAt = ({ seams, hems }: Step, draft: Draft, { rows }: Sewing) =>
  [...seams, ...hems].flatMap((id) => {
    const found = draft.seams.find((one) => one.id === id) ?? draft.hems.find((one) => one.id === id)
    if (found === undefined) return []
    const stitches = rows.filter((row) => row.of === id).map(({ stitch }) => stitch)
    return [{ id, name: found.name, length: found.length, stitches: [...new Set(stitches)] }]
  })
