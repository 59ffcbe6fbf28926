import type { Body } from '../measure/body.ts'
import type { MeasureId } from '../measure/vocabulary.ts'
import { type Phrase, type PhraseCode, phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import type { FinishPlanId } from '../words/stitches.ts'
import type { LengthUnit } from '../words/units.ts'
import type { Asked, Choices } from './choices.ts'
import type { Draft } from './types.ts'

/**
 * A way of building a garment from pieces: data, and one pure function. Its name, period and every label
 * stand in the catalogue under `draft.construction.<id>`, `draft.choice.<id>`, `draft.help.<id>` and
 * `draft.value.<value>`.
 */
export type Construction = {
  id: string
  /** Words of its own in the place of the catalogue's, for a construction that a maker wrote. */
  title?: Phrase
  summary?: Phrase
  period?: Phrase
  /** Books and finds the cut is known from, as one would cite them. */
  sources: readonly string[]
  /** Without these no draft: of each group one is enough. */
  required: readonly (readonly MeasureId[])[]
  /** These make more of the fit report checkable and defaults better. */
  useful: readonly MeasureId[]
  choices: Choices
  /** Ids of the choices a maker sets most often, for the head of a form. */
  often: readonly string[]
  /** What it is usually made of, where one of the two prevails (common practice). */
  usualFibre?: 'linen' | 'wool'
  /** How it is sewn unless the maker says otherwise. */
  finishPlan: FinishPlanId
  /** Never cut from the good cloth before a toile of it has been fitted. */
  toile?: true
  /** @throws Refusal when body and choices make no garment */
  draft(body: Body, asked: Asked, unit: LengthUnit): Draft
  /** The garment in plain words for the client, one phrase a sentence. */
  describe(draft: Draft): Phrase[]
}

/** What a construction is called. */
export const titleOf = ({ id, title }: Pick<Construction, 'id' | 'title'>): Phrase =>
  title ?? phrase(`draft.construction.${id}` as PhraseCode)

/** The measures a body still lacks for a construction: of each group of alternatives, the first. */
export function missingMeasures(construction: Pick<Construction, 'required'>, body: Body): MeasureId[] {
  return construction.required
    .filter((group) => group.every((id) => body.measures[id] === undefined))
    .map(([id]) => id!)
}

/** The estimates a draft rests on: of each group of alternatives none where one was taken. */
export function estimatesIn(
  { required, useful }: Pick<Construction, 'required' | 'useful'>,
  body: Body,
): MeasureId[] {
  const guessed = (id: MeasureId) => body.measures[id]?.source === 'estimated'
  const known = (id: MeasureId) => body.measures[id] !== undefined && !guessed(id)
  return [...required.filter((group) => !group.some(known)).flat(), ...useful].filter(guessed)
}

/** @throws Refusal naming the first measure that is missing */
export function refuseMissing(construction: Pick<Construction, 'required'>, body: Body): void {
  const [first] = missingMeasures(construction, body)
  if (first !== undefined) {
    throw new Refusal(phrase('refusal.draft.missing', { measure: phrase(`measure.name.${first}`) }), first)
  }
}
