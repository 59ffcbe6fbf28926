import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { formOf, type Named, readForm } from '../../core/measure/form.ts'
import { MEASURE_IDS } from '../../core/measure/vocabulary.ts'
import { phrase } from '../../core/words/phrase.ts'
import { say } from '../../core/words/say.ts'

const known: Named[] = MEASURE_IDS.map((id) => ({
  id,
  name: say(phrase(`measure.name.${id}`)),
  also: say(phrase(`measure.also.${id}`)),
  how: say(phrase(`measure.how.${id}`)),
}))
const heads = { name: 'Measure', size: 'Size, cm', how: 'How, in words' }

/** The form with sizes filled in, as a spreadsheet would write it with that separator. */
function filled(sizes: Record<string, string>, separator: string): string {
  return formOf(known, heads)
    .split('\r\n')
    .map((line) => {
      const id = line.slice(0, line.indexOf(','))
      const cells = line
        .match(/"(?:[^"]|"")*"|[^,]*(?=,|$)/g)!
        .filter((_, i, all) => i === 0 || all[i] !== '')
      return sizes[id] === undefined
        ? line.replaceAll(',', separator === ',' ? ',' : separator)
        : [id, cells[1], sizes[id], cells.at(-1)].join(separator)
    })
    .join('\n')
}

describe('a measuring form', () => {
  test('has a line for each measure, and reads back as nothing when nothing was filled in', () => {
    const form = formOf(known, heads)
    expect(form.split('\r\n')).toHaveLength(MEASURE_IDS.length + 2)
    expect(readForm(form, known)).toEqual({ measures: {}, unread: [] })
  })

  test('reads every measure by its name as people write it, also where a word of the name begins with l or r', () => {
    const lines = known.flatMap(({ name }) => [`${name}: 12.2`, `${name} 12.2`, `${name} L 58 R 59`])
    for (const line of lines) expect(readForm(line, known).unread, line).toEqual([])
    expect(readForm('shoulder length: 12.2\narm length L 58 R 59', known).measures).toEqual({
      ...{ shoulderLength: '12.2', armLength: 'L 58 R 59' },
    })
  })

  test('gives back what was filled in, whatever separates its cells', () => {
    const sizes = { stature: '165', waistGirth: '78,5', hipGirth: '40 1/2 in', armLength: 'L 58 R 59' }
    for (const separator of [';', '\t'])
      expect(readForm(filled(sizes, separator), known).measures).toEqual(sizes)
    const marked = `\uFEFF${formOf(known, heads).replace('stature,stature,,', 'stature,stature,165,')}`
    expect(readForm(marked, known)).toEqual({ measures: { stature: '165' }, unread: [] })
    const plain =
      'measure,Measure,Size,How\nstature,stature,165,"Barefoot, upright"\nhipGirth,hip girth,"40 ½"" in",x'
    expect(readForm(plain, known).measures).toEqual({ stature: '165', hipGirth: '40 ½" in' })
  })

  test('may be a letter: a name that people use, and the size', () => {
    const letter = 'Height: 165\nwaist = 78.5 cm\nhips 102\nbiceps: 30 1/4\nshoe colour: red\n\n'
    expect(readForm(letter, known)).toEqual({
      measures: { stature: '165', waistGirth: '78.5 cm', hipGirth: '102', upperArmGirth: '30 1/4' },
      unread: ['shoe colour: red'],
    })
  })

  test('never breaks on what it is given', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 400 }), (text) => {
        for (const id of Object.keys(readForm(text, known).measures)) expect(MEASURE_IDS).toContain(id)
      }),
    )
  })
})
