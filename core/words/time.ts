import { phrase } from './phrase.ts'
import { Refusal } from './refusal.ts'

/** Minutes as a maker says them: `45 min`, `3 h 20`. Rounded to the minute. */
export function printMinutes(minutes: number): string {
  const whole = Math.round(minutes)
  const hours = Math.floor(whole / 60)
  const rest = whole - hours * 60
  return hours === 0
    ? `${rest} min`
    : rest === 0
      ? `${hours} h`
      : `${hours} h ${String(rest).padStart(2, '0')}`
}

/**
 * Reads a time as a maker writes it: `1 h 20`, `1:20`, `1.5 h`, `90 min`, `90`, in minutes.
 * @throws Refusal when it cannot be read, or is none
 */
export function readMinutes(text: string): number {
  const plain = text.trim().toLowerCase().replace(',', '.')
  const [, hours, minutes] =
    /^(?:(\d+(?:\.\d+)?)\s*(?:h|:)\s*)?(?:(\d+(?:\.\d+)?)\s*(?:min|m)?)?$/.exec(plain) ?? []
  const read = 60 * Number(hours ?? 0) + Number(minutes ?? 0)
  if (!(read > 0)) throw new Refusal(phrase('refusal.time.unreadable', { text }))
  return read
}
