import { useCallback, useEffect, useRef } from 'react'
import { ariaKey, askedBy, type KeyName, OF_THE_WINDOW, printKey } from '../../core/words/keys.ts'
import { useTell } from '../workroom.tsx'

const mac = /mac/i.test(navigator.platform)

/** What shows a key to the reader, and what tells it to whoever hears the screen. */
export function useKeyNames() {
  const tell = useTell()
  return useCallback(
    (name: KeyName): string =>
      printKey(name, {
        ...{ mod: tell(mac ? 'keys.held.command' : 'keys.held.control'), shift: tell('keys.held.shift') },
        alt: tell(mac ? 'keys.held.option' : 'keys.held.alt'),
      }),
    [tell],
  )
}
/** Tells the key of a link or field to whoever hears the screen. */
export const heardKey = (name: KeyName) => ({ 'aria-keyshortcuts': ariaKey(name, mac) })

/** What keys do here; one without a deed is left to the browser. */
export type Deeds = Partial<Record<KeyName, () => void>>

/** Hears the keys of the planner wherever she is, and does what stands for them. */
export function useKeys(deeds: Deeds): void {
  const now = useRef(deeds)
  useEffect(() => {
    now.current = deeds
  })
  useEffect(() => {
    const hear = (event: KeyboardEvent) => {
      const { key, code, ctrlKey, metaKey, altKey, shiftKey } = event
      const at = event.target instanceof Element ? event.target : document.body
      const name = askedBy(
        {
          ...{ key, code, ctrlKey, metaKey, altKey, shiftKey },
          altGraph: event.getModifierState('AltGraph'),
          typing: isTyping(at),
        },
        mac,
      )
      // What lies open over the page has to be answered before anything else is done.
      if (name === undefined || OF_THE_WINDOW.includes(name) || at.closest('[role=dialog]') !== null) return
      const deed = now.current[name]
      if (deed === undefined) return
      event.preventDefault()
      deed()
    }
    addEventListener('keydown', hear)
    return () => removeEventListener('keydown', hear)
  }, [])
}

const NOT_TYPED = ['checkbox', 'radio', 'button', 'submit', 'file', 'range', 'color']
const isTyping = (at: Element): boolean =>
  at.closest('textarea, select, [contenteditable]') !== null ||
  (at instanceof HTMLInputElement && !NOT_TYPED.includes(at.type))

/** A key on what it does the same as: for eyes alone, so it is drawn there; who hears the screen has the sheet of keys. */
export function ShownKey({ name }: { name: KeyName }) {
  const shown = useKeyNames()
  return <span className="key" data-shown={shown(name)} aria-hidden="true" />
}

/** Presses the button of this screen that a key stands for, wherever it is. @returns whether there was one */
export function pressed(name: KeyName): boolean {
  const button = document.querySelector<HTMLElement>(`[data-key="${name}"]:not(:disabled)`)
  button?.click()
  return button !== null
}

/** Keeps what is being filled in, or does what this screen is most likely left by. @returns whether there was anything */
export function keepHere(): boolean {
  const form = document.activeElement?.closest('form') ?? null
  const button =
    form?.querySelector<HTMLElement>('[type=submit]:not(:disabled)') ??
    document.querySelector<HTMLElement>('main button.main:not(:disabled)')
  button?.click()
  return button !== null && button !== undefined
}
