import { describe, expect, it } from 'vitest'
import type { Hem, SeamFinish } from '../../core/draft/types.ts'
import type { PathMark } from '../../core/paper/page.ts'
import type { GarmentSheet } from '../../core/paper/sheet.ts'
import { RULES } from '../../core/paper/style.ts'
import { workOrder } from '../../core/paper/work-order.ts'
import { FINISH_PLANS } from '../../core/sew/finish-plans.ts'
import { UNKNOWN_PACE } from '../../core/sew/pace/pace.ts'
import { hemRows, seamRows } from '../../core/sew/rows.ts'
import { type PhraseCode, phrase } from '../../core/words/phrase.ts'
import { sheetOf, textsOf } from './sheet-of.ts'

const isToWriteOn = ({ stroke }: PathMark): boolean =>
  stroke?.dye === RULES.write.dye && stroke.weight === RULES.write.weight

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

describe('what is noted on the work order', () => {
  const measured = (more: Partial<GarmentSheet['line']['measurementSet']>) => {
    const sheet = sheetOf({}, { noted: { wearer: 'wool itches', order: '' } })
    return { ...sheet, line: { ...sheet.line, measurementSet: { ...sheet.line.measurementSet, ...more } } }
  }

  it('is never in the red of a caution: that belongs to what can hurt somebody', () => {
    const red = (sheet: GarmentSheet) =>
      workOrder(sheet).pages.flatMap((page) =>
        page.marks.filter((mark) => mark.kind === 'path' && mark.fill === 'madder'),
      ).length
    const plain = red(sheetOf())
    expect(plain).toBeGreaterThan(0)
    expect(red(measured({ told: ['left shoulder lower'], over: 'shift' }))).toBe(plain)
  })

  it('has what was worn under the tape beside the measures, and what was said of the body before the cloth', () => {
    const sheet = measured({ told: ['left shoulder lower'], over: 'shift' })
    const texts = textsOf(workOrder(sheet))
    expect(texts.indexOf('Said when measuring: left shoulder lower')).toBeLessThan(texts.indexOf('Cloth'))
    expect(texts.findIndex((text) => text.startsWith('Measured over: shift · '))).toBe(
      texts.findIndex((text) => text.startsWith('Measures of')) + 1,
    )
    expect(textsOf(workOrder(measured({}))).join(' ')).not.toContain('Measured over')
  })
})

describe('the measures of the work order', () => {
  it('say once that they were taken, and only of the others how they are known', () => {
    const sheet = sheetOf()
    const texts = textsOf(workOrder(sheet))
    expect(texts.join(' ')).toContain('Where nothing stands beside it, a measure was taken with the tape.')
    expect(texts).not.toContain('taken')
    const measures = Object.fromEntries(
      Object.entries(sheet.line.body.measures).filter(([, { source }]) => source === 'taken'),
    )
    const all = textsOf(workOrder({ ...sheet, line: { ...sheet.line, body: { measures } } }))
    expect(all).toContain('All were taken with the tape.')
    expect(all).not.toContain('How known')
  })
})

describe('the choices of the work order', () => {
  it('name the allowance of open seams only where seams lie open', () => {
    const { line, ...sheet } = sheetOf()
    const said = (seamFinish: string) => {
      const choices = { ...line.estimate.draft.choices, seamFinish, seamAllowance: 12 }
      const estimate = { ...line.estimate, draft: { ...line.estimate.draft, choices } }
      return textsOf(workOrder({ ...sheet, line: { ...line, estimate } }))
    }
    expect(said('open')).toContain('Seam allowance')
    expect(said('felled')).not.toContain('Seam allowance')
  })
})

describe('the thread of the work order', () => {
  it('adds up in every line as it is printed', () => {
    const { line, ...sheet } = sheetOf()
    for (const [sewn, all] of [
      [34.24, 40.08],
      [24.55, 30.4],
      [0.04, 0.09],
    ] as const) {
      const threads = [{ work: 'hand' as const, sewn, wasted: all - sewn, metres: all }]
      const sewing = { ...line.estimate.sewing, threads }
      const made = { ...line, estimate: { ...line.estimate, sewing } }
      const words = between({ ...sheet, line: made }, 'Thread and stitches', 'Take care')
      const [printed, waste, total] = words.slice(words.indexOf('Hand sewing') + 1).map(Number)
      expect(total).toBe(Math.round(all * 10) / 10)
      expect(printed! + waste!).toBeCloseTo(total!, 9)
    }
  })
})

describe('the cloth of the work order', () => {
  it('is told without its selvedges only where they are not cut into pieces', () => {
    const { line, ...sheet } = sheetOf()
    const said = (selvedge: number) =>
      textsOf(workOrder({ ...sheet, line: { ...line, cloth: { ...line.cloth, selvedge } } })).join(' ')
    expect(said(10)).toContain('Washed and without its selvedges it should be')
    expect(said(10)).not.toContain('from edge to edge')
    expect(said(0)).toMatch(
      /Washed it should be .* wide from edge to edge; the selvedges are cut with the pieces\./,
    )
    expect(said(0)).not.toContain('without its selvedges')
  })
})

describe('the cautions of the work order', () => {
  const cautions = (fibre: string, codes: PhraseCode[]) => {
    const { line, ...sheet } = sheetOf()
    const draft = { ...line.estimate.draft, cautions: codes.map((code) => phrase(code)) }
    const made = { ...line, cloth: { ...line.cloth, fibre }, estimate: { ...line.estimate, draft } }
    return between({ ...sheet, line: made }, 'Take care', 'Making').join(' ')
  }

  it('are of the fibres this garment is cut from', () => {
    const said = cautions('wool', ['draft.caution.flame'])
    expect(said).toContain('Wool is slow to catch fire')
    expect(said).not.toMatch(/linen|cotton|silk/i)
    expect(cautions('linen', ['draft.caution.flame'])).toContain('Linen burns fast.')
  })

  it('leave it to local rules and licensed practice once, whatever there is to be minded', () => {
    const said = cautions('linen', [
      ...(['draft.caution.flame', 'draft.caution.cordEnds', 'draft.caution.cordsChild'] as const),
      ...(['draft.caution.cordsSmall', 'draft.caution.cloakTies'] as const),
    ])
    expect(said.match(/local rules/gi)).toHaveLength(1)
    expect(said.match(/licensed practice/gi)).toHaveLength(1)
  })
})

describe('the steps of the work order', () => {
  it('say of a hem how deep it is in words, and what is turned in under the allowance', () => {
    const texts = between(sheetOf(), 'Making', 'Pieces')
    const at = texts.indexOf('Bottom hem, 1.8 cm deep')
    // Length, stitch, stitches per cm, then the 25 mm left beyond the line.
    expect(texts.slice(at + 1, at + 5)).toEqual(['207.2', 'hem stitch', '4', '2.5'])
    expect(texts.filter((text) => /^[\d./ ]+\(/.test(text))).toEqual([])
    expect(texts.join(' ')).toContain('of a hem all that is turned in')
  })

  it('explain the two edges of a felled seam only where a seam is felled', () => {
    const said = 'In a felled seam one edge is trimmed narrow'
    expect(between(sewn('felled'), 'Making', 'Pieces').join(' ')).toContain(said)
    expect(between(sewn('open'), 'Making', 'Pieces').join(' ')).not.toContain(said)
  })

  it('have one line to write on for each step, as time is logged by the step', () => {
    const sheet = sheetOf()
    const lines = workOrder(sheet).pages.flatMap((page) =>
      page.marks.filter((mark) => mark.kind === 'path' && isToWriteOn(mark)),
    )
    expect(lines).toHaveLength(sheet.line.estimate.draft.steps.length)
  })
})
