import { describe, expect, it } from 'vitest'
import type { Hem, SeamFinish } from '../../core/draft/types.ts'
import type { GarmentSheet } from '../../core/paper/sheet.ts'
import { workOrder } from '../../core/paper/work-order.ts'
import { FINISH_PLANS } from '../../core/sew/finish-plans.ts'
import { UNKNOWN_PACE } from '../../core/sew/pace/pace.ts'
import { hemRows, seamRows } from '../../core/sew/rows.ts'
import { sheetOf, textsOf } from './sheet-of.ts'

/** The words between two headings of the work order. */
function between(sheet: GarmentSheet, from: string, to: string): string[] {
  const texts = textsOf(workOrder(sheet))
  return texts.slice(texts.indexOf(from) + 1, texts.indexOf(to))
}

/** The same garment with its seams finished in one way and its hems of one kind, sewn by hand throughout. */
function sewn(finish: SeamFinish, kind?: Hem['kind']): GarmentSheet {
  const sheet = sheetOf()
  const { estimate } = sheet.line
  const plan = FINISH_PLANS.allByHand
  const ways = { pace: UNKNOWN_PACE, density: {}, minutes: {} }
  const seams = estimate.draft.seams.map((seam) => ({ ...seam, finish }))
  const hems = estimate.draft.hems.map((hem) => ({ ...hem, kind: kind ?? hem.kind }))
  const rows = [
    ...seams.flatMap((seam) => seamRows('sides', seam, plan, { thickness: 0.4, ways })),
    ...hems.flatMap((hem) => hemRows('bottom', hem, plan, { thickness: 0.4, ways })),
  ].map(({ row }) => row)
  const draft = { ...estimate.draft, seams, hems }
  const sewing = { ...estimate.sewing, rows }
  return { ...sheet, line: { ...sheet.line, estimate: { ...estimate, draft, sewing, finishPlan: plan } } }
}

describe('the stitches of the work order', () => {
  const stitches = (sheet: GarmentSheet) => {
    const words = between(sheet, 'Thread and stitches', 'Take care')
    return words.slice(words.indexOf('Stitch') + 1)
  }

  it('are those of this garment: what is left open is not felled, and what is felled has no raw edge', () => {
    expect(stitches(sewn('open'))).toEqual([
      ...['Seams, joined', 'half back stitch', 'Raw edges of seams', 'overcast'],
      ...['Neck and slits', 'hem stitch', 'Hems that are seen', 'hem stitch'],
    ])
    expect(stitches(sewn('felled'))).toEqual([
      ...['Seams, joined', 'half back stitch', 'Seams, felled', 'felling stitch'],
      ...['Neck and slits', 'hem stitch', 'Hems that are seen', 'hem stitch'],
    ])
  })

  it('say of a lining what it is felled to, though no seam is felled', () => {
    expect(stitches(sewn('open', 'lining'))).toEqual([
      ...['Seams, joined', 'half back stitch', 'Raw edges of seams', 'overcast'],
      ...['Felled to another cloth', 'felling stitch'],
    ])
  })

  it('say that the edges of open seams are left raw where the plan leaves them', () => {
    const { line, ...sheet } = sewn('open')
    const estimate = { ...line.estimate, finishPlan: { ...line.estimate.finishPlan, edges: null } }
    estimate.sewing = {
      ...estimate.sewing,
      rows: estimate.sewing.rows.filter(({ purpose }) => purpose !== 'edge'),
    }
    expect(stitches({ ...sheet, line: { ...line, estimate } }).slice(-2)).toEqual([
      'Raw edges of seams',
      'left raw',
    ])
  })
})
