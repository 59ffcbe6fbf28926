import { readLength } from '../words/length.ts'
import { type PhraseCode, phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import type { LengthUnit } from '../words/units.ts'
import type { ChoiceValue } from './types.ts'

/** A length in mm. Without a default the construction works one out from the body. */
export type LengthChoice = { kind: 'length'; range: readonly [least: number, most: number]; default?: number }
/** One of several ways of making. Without a default the construction decides. */
export type OptionChoice = { kind: 'option'; options: readonly string[]; default?: string }
/** How many, one of a few numbers. */
export type CountChoice = { kind: 'count'; options: readonly number[]; default: number }
export type YesNoChoice = { kind: 'yesNo'; default: boolean }
export type Choice = LengthChoice | OptionChoice | CountChoice | YesNoChoice

/** What a construction lets the maker set, by id, as data: forms and checks are made from it. */
export type Choices = Readonly<Record<string, Choice>>

type Value<C extends Choice> = C extends LengthChoice
  ? number
  : C extends { kind: 'option'; options: readonly (infer O)[] }
    ? O
    : C extends { kind: 'count'; options: readonly (infer N)[] }
      ? N
      : boolean

/** Every choice after reading: what was asked, else the fixed default, else undefined. */
export type Chosen<C extends Choices> = {
  [K in keyof C]: Value<C[K]> | (C[K] extends { default: unknown } ? never : undefined)
}

/** Choices as the maker gives them: lengths as mm or as text in her unit. */
export type Asked = Readonly<Record<string, ChoiceValue>>

/**
 * Reads what was asked for against a construction's choices.
 *
 * @throws Refusal at a choice the construction does not have or whose value it does not allow
 */
export function readChoices<const C extends Choices>(choices: C, asked: Asked, unit: LengthUnit): Chosen<C> {
  for (const id of Object.keys(asked)) {
    if (!Object.hasOwn(choices, id)) {
      throw new Refusal(
        phrase('refusal.draft.unknownChoice', { id, known: Object.keys(choices).join(', ') }),
        id,
      )
    }
  }
  const entries = Object.entries(choices).map(([id, choice]) => {
    const value = asked[id]
    return [
      id,
      value === undefined ? choice.default : refusingAt(id, () => readChoice(id, choice, value, unit)),
    ]
  })
  return Object.fromEntries(entries) as Chosen<C>
}

function readChoice(id: string, choice: Choice, value: ChoiceValue, unit: LengthUnit): ChoiceValue {
  const name = phrase(`draft.choice.${id}` as PhraseCode)
  if (choice.kind === 'length') {
    const [least, most] = choice.range
    const mm =
      value === 0 && least === 0 ? 0 : readLength(typeof value === 'boolean' ? String(value) : value, unit)
    if (mm >= least && mm <= most) return mm
    const params = { choice: name, given: { mm }, least: { mm: least }, most: { mm: most } }
    throw new Refusal(phrase('refusal.draft.choiceRange', params))
  }
  const allowed: readonly ChoiceValue[] = choice.kind === 'yesNo' ? [true, false] : choice.options
  if (allowed.includes(value)) return value
  throw new Refusal(
    phrase('refusal.draft.choiceValue', { choice: name, given: String(value), allowed: allowed.join(', ') }),
  )
}

/** Choices with the values used; what was left open and decides nothing is left out. */
export const settled = (
  values: Readonly<Record<string, ChoiceValue | undefined>>,
): Record<string, ChoiceValue> =>
  Object.fromEntries(
    Object.entries(values).flatMap(([id, value]) => (value === undefined ? [] : [[id, value]])),
  )

/** Refuses two choices that say the same thing in two ways. @throws Refusal at the second when both were given */
export function refuseBoth(asked: Asked, one: string, other: string): void {
  if (asked[one] === undefined || asked[other] === undefined) return
  const params = {
    one: phrase(`draft.choice.${one}` as PhraseCode),
    other: phrase(`draft.choice.${other}` as PhraseCode),
  }
  throw new Refusal(phrase('refusal.draft.choiceTwice', params), other)
}
