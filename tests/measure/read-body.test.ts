import { describe, expect, test } from 'vitest'
import { readBody, type WrittenMeasure } from '../../core/measure/read-body.ts'
import { MEASURE_IDS, MEASURES } from '../../core/measure/vocabulary.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { say } from '../../core/words/say.ts'

const refusal = (written: Record<string, WrittenMeasure>): string => {
  try {
    readBody(written, 'cm')
  } catch (error) {
    if (error instanceof Refusal) return `${error.field}: ${say(error.phrase)}`
    throw error
  }
  throw new Error('nothing was refused')
}

describe('reading a body', () => {
  test('takes numbers as millimetres and texts in the unit of the set', () => {
    const { measures } = readBody({ bustGirth: 952, waistGirth: '78,2', hipGirth: '39 7/8 in' }, 'cm')
    expect(measures).toEqual({
      bustGirth: { mm: 952, source: 'taken' },
      waistGirth: { mm: 782, source: 'taken' },
      hipGirth: { mm: 1012.825, source: 'taken' },
    })
  })

  test('keeps where a measure comes from, and how sure it is', () => {
    const { measures } = readBody(
      {
        kneeHeight: { length: '45', source: 'estimated', sd: '1.5' },
        stature: { length: 1650, source: 'carried' },
      },
      'cm',
    )
    expect(measures.kneeHeight).toEqual({ mm: 450, source: 'estimated', sd: 15 })
    expect(measures.stature).toEqual({ mm: 1650, source: 'carried' })
  })

  test.each<[Record<string, WrittenMeasure>, string]>([
    [{ bustGirth: 0 }, 'bustGirth: A length of zero cannot be used. Leave it empty if it is not known.'],
    [{ bustGirth: -950 }, 'bustGirth: “-950” is less than nothing. A length must be greater than zero.'],
    [
      { bustGirth: Number.NaN },
      'bustGirth: “NaN” cannot be read as a length. Write it like 97.8 cm, 38 1/2 in or 1 yd 4 nl.',
    ],
    [{ bustGirth: 1e9 }, 'bustGirth: “1000000000 mm” is far too long. Check the number and its unit.'],
    [
      { bustGirth: 'wide' },
      'bustGirth: “wide” cannot be read as a length. Write it like 97.8 cm, 38 1/2 in or 1 yd 4 nl.',
    ],
    [
      { bustGirth: '38 mm' },
      'bustGirth: A bust girth of 3.8 cm is on no body: between 30 cm and 240 cm is expected. Check the number and its unit.',
    ],
    [
      { waistHeight: '120', hipHeight: '130' },
      'hipHeight: The hip height (130 cm) should be less than the waist height (120 cm). Measure both again.',
    ],
  ])('%o is refused in a sentence', (written, sentence) => {
    expect(refusal(written)).toBe(sentence)
  })

  test('a measure it does not know is refused with those it does', () => {
    expect(refusal({ bosom: 950 })).toContain('“bosom” is not a measure the planner knows')
  })

  test('every measure has a name and a line on how to take it', () => {
    for (const id of MEASURE_IDS) {
      expect(say({ code: `measure.name.${id}` })).not.toContain('measure.')
      expect(say({ code: `measure.how.${id}` })).toMatch(/\.$/)
      expect(MEASURES[id].range[0]).toBeLessThan(MEASURES[id].range[1])
    }
  })
})
