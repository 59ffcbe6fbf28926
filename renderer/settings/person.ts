import { readMinutes } from '../../core/words/time.ts'
import type { InputOf, OutputOf } from '../../core/workroom.ts'

/** Who works here, minutes a day; days off; a person as she is sent; and a kind of work somebody may do. */
export type Person = OutputOf<'people.list'>['people'][number]
export type Absence = OutputOf<'people.list'>['away'][number]
export type Given = Required<InputOf<'person.add'>>
export type Skill = Given['skills'][number]

/** The kinds of work somebody may do. */
export const SKILLS = [
  'handSewing',
  'machineSewing',
  'cutting',
  'pressing',
  'fitting',
  'attending',
] as const satisfies readonly Skill[]

/** Nobody has been entered yet: the maker stands in the list by herself, and has no revision. */
export const isUnentered = ({ revision }: Pick<Person, 'revision'>): boolean => revision === 0

/** A person as typed: hours in words, for each day of the week. */
export type TypedPerson = { name: string; skills: readonly Skill[]; week: readonly string[]; handCap: string }

/** Minutes as hours in a field: 450 is 7:30. */
export function writtenHours(minutes: number): string {
  if (minutes === 0) return ''
  const whole = Math.round(minutes)
  const rest = whole % 60
  return rest === 0 ? `${whole / 60}` : `${Math.floor(whole / 60)}:${String(rest).padStart(2, '0')}`
}

/**
 * Minutes of hours as typed: a bare number is hours here, not minutes. Nothing typed is none.
 * @throws Refusal when it cannot be read
 */
export function readHours(text: string): number {
  const plain = text.trim().replace(',', '.')
  if (plain === '' || Number(plain) === 0) return 0
  return /^\d*\.?\d+$/.test(plain) ? 60 * Number(plain) : readMinutes(plain)
}
