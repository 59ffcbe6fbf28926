/**
 * The keys of the planner: here alone. The page that hears them, its help, its labels and the menu of the window read
 * this list.
 */
export type Key = {
  /** What is written on it: a letter or sign, a digit, or an arrow. */
  key: string
  /** Held with it: Ctrl, on a Mac the command key. */
  mod?: true
  alt?: true
  shift?: true
  /** Not heard while something is being typed, where it means something else. */
  outsideFields?: true
}

/** What each key does; a place of the head goes by its number. */
export const KEYS = {
  command: { key: 'k', mod: true },
  find: { key: '/', outsideFields: true },
  help: { key: '?', outsideFields: true },
  place1: { key: '1', mod: true },
  place2: { key: '2', mod: true },
  place3: { key: '3', mod: true },
  place4: { key: '4', mod: true },
  place5: { key: '5', mod: true },
  place6: { key: '6', mod: true },
  back: { key: 'ArrowLeft', alt: true },
  new: { key: 'n', alt: true },
  keep: { key: 's', mod: true },
  print: { key: 'p', mod: true },
  timer: { key: 't', alt: true },
  undo: { key: 'z', mod: true, outsideFields: true },
  savePaper: { key: 's', mod: true, shift: true },
} as const satisfies Record<string, Key>
export type KeyName = keyof typeof KEYS

/** Keys that only the planner's own window hears: its menu does what they say. */
export const OF_THE_WINDOW: readonly KeyName[] = ['savePaper']

/** The key of a place by its number in the head, from nought. */
export const keyOfPlace = (index: number): KeyName => `place${index + 1}` as KeyName

/** A pressed key, as the page is told of it. */
export type Pressed = {
  key: string
  code: string
  ctrlKey: boolean
  metaKey: boolean
  altKey: boolean
  shiftKey: boolean
  /** Whether AltGr is held, by which German and other keyboards write their signs. */
  altGraph: boolean
  /** Whether it goes into a field. */
  typing: boolean
}

/** What a pressed key asks for, or nothing. @param mac whether the command key takes the place of Ctrl */
export function askedBy(pressed: Pressed, mac: boolean): KeyName | undefined {
  if (pressed.altGraph) return undefined
  return (Object.keys(KEYS) as KeyName[]).find((name) => isPressed(KEYS[name], pressed, mac))
}

function isPressed(wanted: Key, pressed: Pressed, mac: boolean): boolean {
  if (pressed.typing && wanted.outsideFields === true) return false
  const [mod, other] = mac ? [pressed.metaKey, pressed.ctrlKey] : [pressed.ctrlKey, pressed.metaKey]
  if (other || mod !== (wanted.mod ?? false) || pressed.altKey !== (wanted.alt ?? false)) return false
  // Where a sign stands on a keyboard, and whether Shift writes it, is the keyboard's own affair.
  const sign = !/^(\p{L}|\d|Arrow\w+)$/u.test(wanted.key)
  if (!sign && pressed.shiftKey !== (wanted.shift ?? false)) return false
  if (pressed.key.toLowerCase() === wanted.key.toLowerCase()) return true
  // Digits share their key with signs, and a Mac writes other letters with Alt: then the key's place tells.
  if (/^\d$/.test(wanted.key)) return pressed.code === `Digit${wanted.key}`
  return wanted.alt === true && pressed.code === `Key${wanted.key.toUpperCase()}`
}

const ARROWS: Record<string, string> = { ArrowLeft: '←' }
/** What is written on the keys to hold, as the reader's language calls them. */
export type HeldNames = { mod: string; alt: string; shift: string }

/** A key as it is shown: `Ctrl+K`, `Alt+←`. */
export function printKey(name: KeyName, held: HeldNames): string {
  const { key, mod, alt, shift }: Key = KEYS[name]
  const letter = ARROWS[key] ?? key.toUpperCase()
  return [mod && held.mod, alt && held.alt, shift && held.shift, letter]
    .filter((part) => part !== undefined)
    .join('+')
}

/** The same in the manner of `aria-keyshortcuts`. */
export function ariaKey(name: KeyName, mac: boolean): string {
  const { key } = KEYS[name]
  return printKey(name, { mod: mac ? 'Meta' : 'Control', alt: 'Alt', shift: 'Shift' }).replace('←', key)
}

/** The same in the manner of the window's menu. */
export const menuKey = (name: KeyName): string =>
  printKey(name, { mod: 'CmdOrCtrl', alt: 'Alt', shift: 'Shift' }).replace('←', 'Left')
