import type { Day } from '../words/dates.ts'
import type { Money } from '../words/money.ts'
import { type FollowedStep, isPlanned } from './steps.ts'

/** How the cloth of a garment is off; null where it needs none of the shelf, or no shelf is kept. */
export type ClothState =
  | { at: 'here' }
  | { at: 'coming'; day: Day | null }
  /** `day`: when it is there, where it is still on its way; null for a day that nobody named. */
  | { at: 'unpromised'; day?: Day | null }
  /** `days`: from ordering it until it is there. */
  | { at: 'toBuy'; mm: number; days: number }

/** What is known of a garment besides its steps. */
export type Standing = {
  /** What is left of the payment that the terms want at acceptance. */
  deposit: Money
  cloth: ClothState | null
  /** Measures that it is drafted by and nobody took. */
  estimated: number
  /** The day of its fitting that is booked and not held, if there is one. */
  fitting: Day | null
  today: Day
}

/** What a garment waits for; `mm` of cloth are as bought, and a `day` is null where none was named. */
export type Wait =
  | { for: 'deposit'; left: Money }
  | { for: 'coming'; day: Day | null }
  /** Cloth that would do lies there, or comes, and nobody set it aside. */
  | { for: 'unpromised'; coming: boolean }
  | { for: 'toBuy'; mm: number }
  | { for: 'wash' }
  | { for: 'measures'; count: number }
  | { for: 'fitting'; day: Day }
  | { for: 'fittingNotBooked' }
  | { for: 'fittingNotWritten'; day: Day }

type Step = Pick<FollowedStep, 'key' | 'stage' | 'doneAt'>

/**
 * What has to come before a garment goes on, in the order in which one sees to it: until it is cut the money, the cloth,
 * its wash and the measures, afterwards the fitting once that is next. Nothing, and its next step can be taken.
 *
 * @param open its steps that are still to be done, in order
 * @param begun whether anything of it is cut
 */
export function waitsFor(open: readonly Step[], begun: boolean, standing: Standing): Wait[] {
  const [next] = open
  if (next === undefined) return []
  const { fitting, today } = standing
  if (next.stage === 'fit' && isPlanned(next)) {
    if (fitting === null) return [{ for: 'fittingNotBooked' }]
    return [{ for: fitting < today ? 'fittingNotWritten' : 'fitting', day: fitting }]
  }
  return begun || !open.some(({ stage }) => stage === 'cut') ? [] : beforeCutting(open, standing)
}

function beforeCutting(open: readonly Step[], { deposit, cloth, estimated }: Standing): Wait[] {
  // Cloth that is not here cannot be washed either.
  const washed = (cloth !== null && cloth.at !== 'here') || !open.some(({ key }) => key === 'wash')
  return [
    ...(deposit.minor > 0 ? [{ for: 'deposit' as const, left: deposit }] : []),
    ...(cloth === null ? [] : waitFor(cloth)),
    ...(washed ? [] : [{ for: 'wash' as const }]),
    ...(estimated > 0 ? [{ for: 'measures' as const, count: estimated }] : []),
  ]
}

function waitFor(cloth: ClothState): Wait[] {
  switch (cloth.at) {
    case 'here':
      return []
    case 'coming':
      return [{ for: 'coming', day: cloth.day }]
    case 'unpromised':
      return [{ for: 'unpromised', coming: cloth.day !== undefined }]
    case 'toBuy':
      return [{ for: 'toBuy', mm: cloth.mm }]
  }
}
