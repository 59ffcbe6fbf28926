import { describe, expect, test } from 'vitest'
import {
  ariaKey,
  askedBy,
  KEYS,
  type KeyName,
  menuKey,
  type Pressed,
  printKey,
} from '../../core/words/keys.ts'
import { PLACES, SCREENS, whereIs } from '../../core/words/places.ts'

const key = (of: string, more: Partial<Pressed> = {}): Pressed => ({
  ...{ key: of, code: '', ctrlKey: false, metaKey: false, altKey: false, shiftKey: false },
  ...{ altGraph: false, typing: false, ...more },
})
const ctrl = { ctrlKey: true }

describe('a key', () => {
  test('is heard by what is written on it: z is another place on a German keyboard', () => {
    expect(askedBy(key('z', { ...ctrl, code: 'KeyY' }), false)).toBe('undo')
    expect(askedBy(key('y', { ...ctrl, code: 'KeyZ' }), false)).toBeUndefined()
  })

  test('that writes a sign is heard however the keyboard writes it', () => {
    expect(askedBy(key('?', { code: 'Minus', shiftKey: true }), false)).toBe('help')
    expect(askedBy(key('/', { code: 'Digit7', shiftKey: true }), false)).toBe('find')
    expect(askedBy(key('/', { code: 'Slash' }), false)).toBe('find')
    // Digits are the shifted signs of a French keyboard.
    expect(askedBy(key('&', { ...ctrl, code: 'Digit1' }), false)).toBe('place1')
  })

  test('with AltGr writes signs, and nothing else', () => {
    expect(askedBy(key('k', { ...ctrl, altKey: true, altGraph: true }), false)).toBeUndefined()
    expect(askedBy(key('n', { altKey: true, altGraph: true }), false)).toBeUndefined()
  })

  test('of a single sign is not heard while something is typed, nor is undo', () => {
    const typing = { typing: true }
    expect(askedBy(key('?', typing), false)).toBeUndefined()
    expect(askedBy(key('/', typing), false)).toBeUndefined()
    expect(askedBy(key('z', { ...typing, ...ctrl }), false)).toBeUndefined()
    expect(askedBy(key('k', { ...typing, ...ctrl }), false)).toBe('command')
  })

  test('never is a bare letter or digit', () => {
    for (const sign of 'abcdefghijklmnopqrstuvwxyz0123456789')
      expect(askedBy(key(sign, { code: `Key${sign.toUpperCase()}` }), false), sign).toBeUndefined()
  })

  test('on a Mac is held with the command key, and with Alt known by its place', () => {
    expect(askedBy(key('k', { metaKey: true }), true)).toBe('command')
    expect(askedBy(key('k', ctrl), true)).toBeUndefined()
    expect(askedBy(key('†', { altKey: true, code: 'KeyT' }), true)).toBe('timer')
  })

  test('stands for one thing only, and each can be pressed', () => {
    const held = { mod: 'Ctrl', alt: 'Alt', shift: 'Shift' }
    const names = Object.keys(KEYS) as KeyName[]
    expect(new Set(names.map((name) => printKey(name, held))).size).toBe(names.length)
    expect(printKey('back', held)).toBe('Alt+←')
    expect(menuKey('savePaper')).toBe('CmdOrCtrl+Shift+S')
    expect(ariaKey('command', true)).toBe('Meta+K')
    for (const name of names) {
      const {
        key: of,
        mod = false,
        alt = false,
        shift = false,
      } = KEYS[name] as (typeof KEYS)['savePaper'] & {
        alt?: true
      }
      expect(askedBy(key(of, { ctrlKey: mod, altKey: alt, shiftKey: shift }), false)).toBe(name)
    }
  })
})

describe('the places', () => {
  test('are not more than six, with a key each', () => {
    expect(PLACES.length).toBeLessThanOrEqual(6)
    expect(PLACES.every((_, i) => `place${i + 1}` in KEYS)).toBe(true)
  })

  test('have screens that no other place has, and know what is within them', () => {
    const all = PLACES.flatMap((place) => SCREENS[place].map(({ at }) => at))
    expect(new Set(all).size).toBe(all.length)
    expect(whereIs('quotes/0198')).toEqual({ place: 'commissions', screen: 'quotes', exact: false })
    expect(whereIs('commissions/plan')).toEqual({
      ...{ place: 'commissions', screen: 'commissions/plan', exact: true },
    })
    expect(whereIs('own/abc')).toEqual({ place: 'desk', screen: 'own', exact: false })
    expect(whereIs('nowhere')).toEqual({ place: 'desk', screen: 'desk', exact: true })
  })
})
