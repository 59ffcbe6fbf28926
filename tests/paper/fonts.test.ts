import { describe, expect, it } from 'vitest'
import { plainText, runsOf } from '../../core/paper/fonts.ts'
import { breakLines } from '../../core/paper/lines.ts'
import { FACES } from '../../core/paper/page.ts'
import { LOOKS } from '../../core/paper/style.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { say } from '../../core/words/say.ts'

const refusalOf = (work: () => unknown): Refusal => {
  try {
    work()
  } catch (error) {
    if (error instanceof Refusal) return error
    throw error
  }
  throw new Error('it was not refused')
}

describe('names on paper', () => {
  const names = [
    'Þórunn',
    'Łucja',
    'Ἑλένη',
    'Мария',
    'Ðorđe Ñúñez',
    'ᾠδή',
    'Ștefan',
    'Żółć',
    'שרה לוי',
    'ليلى',
  ]
  it.each(names)('%s is set in every face, none of its letters lost', (name) => {
    for (const face of FACES) {
      expect(
        runsOf(name, face)
          .map((run) => run.text)
          .join(''),
      ).toBe(name)
    }
  })

  it('are set in the face asked for, without borrowing, where EB Garamond has the letters', () => {
    for (const name of ['Þórunn', 'Łucja', 'Ἑλένη', 'Мария']) {
      expect(runsOf(name, 'serif')).toEqual([{ text: name, face: 'serif' }])
    }
  })

  it('borrow a character from the fallback face and go back', () => {
    // EB Garamond has no ballot box (U+2610); Source Sans 3 has one.
    expect(runsOf('a ☐ b', 'serif')).toEqual([
      { text: 'a ', face: 'serif' },
      { text: '☐', face: 'sans' },
      { text: ' b', face: 'serif' },
    ])
  })

  it('keep an accent with its letter: decomposed text is joined (Unicode NFC)', () => {
    expect(plainText('E\u0313\u0301\u0061\u0301')).toBe('E\u0313\u0301\u0061\u0301'.normalize('NFC'))
    expect(plainText('Zoe\u0308')).toBe('Zoë')
  })

  it('lose what cannot be seen, and keep the spaces that hold figures together', () => {
    expect(plainText('A\u200b\u00adnna\t\n B')).toBe('Anna B')
    expect(plainText('1\u202f000 €')).toBe('1\u00a0000 €')
  })

  it.each([
    ['ნინო', 'ნ', 'U+10DC'],
    ['Anna 🧵', '🧵', 'U+1F9F5'],
    ['山田', '山', 'U+5C71'],
  ])('“%s” is refused, naming the character, its code and the text', (text, character, code) => {
    const refusal = refusalOf(() => runsOf(text, 'serif'))
    expect(refusal.phrase).toEqual({ code: 'refusal.paper.character', params: { character, code, text } })
    expect(say(refusal.phrase)).toContain(character)
    expect(say(refusal.phrase)).toContain(text)
  })
})

describe('lines', () => {
  const look = LOOKS.prose
  const text = 'White linen, cut straight with four gores, and well-set gussets under both of the arms.'

  it('are never wider than their column, and lose no word', () => {
    for (const width of [30, 47, 80, 150]) {
      const lines = breakLines(text, look, width)
      for (const line of lines) expect(line.width).toBeLessThanOrEqual(width)
      expect(lines.map((line) => line.runs.map((run) => run.text).join('')).join('')).toBe(text)
    }
  })

  it('are broken between words; inside a word only when it is wider than the column', () => {
    const lines = breakLines('Donaudampfschifffahrtsgesellschaft on Tuesday', look, 25)
    for (const line of lines) expect(line.width).toBeLessThanOrEqual(25)
    expect(lines.length).toBeGreaterThan(2)
    expect(breakLines('one two', look, 200)).toHaveLength(1)
  })

  it('keep a figure and its no-break space together', () => {
    const lines = breakLines('corner at 1187\u00a0/\u00a0584 here', look, 25)
    expect(
      lines.some((line) =>
        line.runs
          .map((run) => run.text)
          .join('')
          .includes('1187\u00a0/\u00a0584'),
      ),
    ).toBe(true)
  })

  it('keep a figure and its unit together', () => {
    for (let width = 20; width < 60; width++) {
      for (const { runs } of breakLines('It should be 56 cm wide and take 3 h 20 to sew', look, width)) {
        const line = runs
          .map((run) => run.text)
          .join('')
          .trim()
        expect(line).not.toMatch(/ 56$|^cm|[ ]3$|^h|h$|^20/)
      }
    }
  })

  it('begin anew at a line feed', () => {
    expect(breakLines('one\ntwo', look, 200)).toHaveLength(2)
  })
})
