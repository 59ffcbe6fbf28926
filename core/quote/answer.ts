import { addDays, type Day } from '../words/dates.ts'

/** Days within which a client has to say yes for a promised day to stand (common practice). */
const TO_ANSWER = 7

/** The last day on which a yes keeps the day that a quote promises: it cannot be later than the quote stands. */
export function answerBy(day: Day, validUntil: Day): Day {
  const last = addDays(day, TO_ANSWER)
  return last < validUntil ? last : validUntil
}
