/** So long a key that was pressed before the field was there is still meant for it, ms. */
const MEANT = 5000

let pressedAt: number | undefined
const hear = (event: KeyboardEvent) => {
  const { key, ctrlKey, metaKey, altKey, shiftKey } = event
  if (key.toLowerCase() !== 'k' || ctrlKey === metaKey || altKey || shiftKey) return
  event.preventDefault()
  pressedAt = performance.now()
}
addEventListener('keydown', hear)

/** Whether the field was asked for while the page was still opening. From then on the page hears its keys itself. */
export function askedEarly(): boolean {
  removeEventListener('keydown', hear)
  const asked = pressedAt !== undefined && performance.now() - pressedAt < MEANT
  pressedAt = undefined
  return asked
}
