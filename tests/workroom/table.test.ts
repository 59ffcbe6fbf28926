import { expect, test } from 'vitest'
import { cuttingSheet } from '../../core/paper/cutting-sheet.ts'
import { workOrder } from '../../core/paper/work-order.ts'
import { say } from '../../core/words/say.ts'
import { sheetFor } from '../../core/workroom/garment-papers.ts'
import { agreedWork } from '../support/agreed-work.ts'

type Corner = { fromSelvedge: number; fromCutEnd: number; arc: number | null }
type Piece = {
  id: string
  alike: boolean
  piece: { copies: unknown[] }
  cutSize: { width: number; height: number }
  laid: { number: number; corners: Corner[] }[]
}
type AtTable = {
  pieces: Piece[]
  numbered: number
  steps: {
    id: string
    number: number | null
    cautions: { code: string }[]
    sewn: { id: string; length: number }[]
  }[]
}

const plain = (text: string): string => text.replaceAll('.', '\\.')
const wordsOf = (document: unknown): string => JSON.stringify(document).replaceAll('\u00a0', ' ')

test('the table has every copy of every piece with the chalk figures of the cutting sheet', async () => {
  const room = await agreedWork()
  const { garments } = await room.accepted()
  const [{ id, steps }] = garments as [(typeof garments)[number]]
  const table = await room.done<AtTable>('garment.table', { garmentId: id })
  const { sheet } = sheetFor('cuttingSheet', id, room.context)
  const { draft, lay, sewing } = sheet.line.estimate
  const printed = wordsOf(cuttingSheet(sheet).pages)
  expect(table.pieces.map((one) => one.id)).toEqual(draft.pieces.map((one) => one.id))
  const laid = table.pieces.flatMap((one) => one.laid)
  expect(laid).toHaveLength(lay.placements.length)
  expect(laid.map(({ number }) => number).sort((a, b) => a - b)).toEqual(lay.placements.map((_, i) => i + 1))
  for (const { piece, laid: copies, cutSize } of table.pieces) {
    expect(copies).toHaveLength(piece.copies.length)
    for (const { corners } of copies) {
      // In one order here and there, so that one can be ticked off against the other.
      const inOrder = corners.map((one) => `${one.fromSelvedge / 10} / ${one.fromCutEnd / 10}`)
      expect(printed).toMatch(new RegExp(inOrder.map(plain).join('[^]{0,1200}?')))
      for (const { fromSelvedge, fromCutEnd } of corners)
        expect(printed).toContain(`${fromSelvedge / 10} / ${fromCutEnd / 10}`)
      const across = corners.map(({ fromSelvedge }) => fromSelvedge)
      // Chalk figures are rounded outward by less than a millimetre at either side; an arc may bulge further.
      if (corners.every(({ arc }) => arc === null))
        expect(Math.abs(Math.max(...across) - Math.min(...across) - cutSize.width)).toBeLessThan(2)
    }
  }
  expect(table.steps.map((one) => one.id)).toEqual(steps.map((one) => one.id))
  const sewn = table.steps.flatMap((one) => one.sewn.map((row) => row.id))
  expect(new Set(sewn)).toEqual(new Set(sewing.rows.map(({ of }) => of)))
})

test('it says of a piece in two hands that they may lie alike, where the cloth has no right side', async () => {
  for (const rightSide of [true, false]) {
    const room = await agreedWork({ rightSide })
    const { garments } = await room.accepted()
    const { pieces } = await room.done<AtTable>('garment.table', { garmentId: garments[0]!.id })
    const alike = pieces.filter((one) => one.alike).map(({ id }) => id)
    expect(alike).toEqual(rightSide ? [] : expect.arrayContaining(['gore', 'sleeve']))
    expect(alike).not.toContain('gusset')
  }
})

test('it says what to mind wherever there is a blade or an iron', async () => {
  const room = await agreedWork()
  const { garments } = await room.accepted()
  const [{ id, steps }] = garments as [(typeof garments)[number]]
  const table = await room.done<AtTable>('garment.table', { garmentId: id })
  const at = (key: string) =>
    table.steps
      .find((one) => one.id === steps.find((step) => step.key === key)!.id)!
      .cautions.map(({ code }) => code)
  expect(at('cut')).toEqual(['draft.caution.blades', 'draft.caution.pinsInLine'])
  expect(at('wash')).toEqual(['draft.caution.dust', 'draft.caution.iron'])
  expect(at('pressSeams')).toEqual(['draft.caution.iron'])
  expect(at('finish')).toEqual(['draft.caution.iron', 'draft.caution.needles'])
  expect(at('shoulders')).toEqual([])
})

test('its steps have the numbers of the work order', async () => {
  const room = await agreedWork()
  const { garments } = await room.accepted()
  const [{ id, steps }] = garments as [(typeof garments)[number]]
  const table = await room.done<AtTable>('garment.table', { garmentId: id })
  const { sheet } = sheetFor('workOrder', id, room.context)
  const printed = workOrder(sheet).pages.flatMap((page) =>
    page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text.replaceAll('\u00a0', ' ').trim()] : [])),
  )
  expect(table.numbered).toBe(steps.length)
  for (const [i, { number }] of table.steps.entries()) {
    const name = say(sheet.line.estimate.draft.steps.find((one) => one.id === steps[i]!.key)!.name)
    expect(printed).toContain(`${number}. ${name}`)
  }
})
