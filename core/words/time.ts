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

/** Parts of an hour as they stand on a keyboard. */
const PARTS: Record<string, string> = { '½': '.5', '¼': '.25', '¾': '.75' }

/**
 * Reads a time as a maker writes it: `1 h 20`, `1:20`, `1.5 h`, `1½ hours`, `90 min`, `90`, in minutes.
 * @throws Refusal when it cannot be read, or is none
 */
export function readMinutes(text: string): number {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(',', '.')
    .replace(/[½¼¾]/, (part) => PARTS[part]!)
    .replace(/\s*(?:hours?|stunden?|std\.?)/, ' h')
    .replace(/\s*(?:minutes?|minuten?|min\.)$/, ' min')
  const number = String.raw`(\d*\.?\d+)`
  const read = new RegExp(`^(?:${number}\\s*(?:h|:)\\s*)?(?:${number}\\s*(?:min|m)?)?$`).exec(plain)
  const minutes = 60 * Number(read?.[1] ?? 0) + Number(read?.[2] ?? 0)
  // Half a minute is never meant: whoever writes 1.5 alone means hours, or something else.
  const bare = read?.[1] === undefined && /\./.test(read?.[2] ?? '') && !/m/.test(plain)
  if (bare || !(minutes > 0)) throw new Refusal(phrase('refusal.time.unreadable', { text }))
  return minutes
}
