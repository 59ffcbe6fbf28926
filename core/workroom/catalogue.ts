import { z } from 'zod'
import type { Choice } from '../draft/choices.ts'
import { type Construction, refuseMissing, titleOf } from '../draft/construction.ts'
import { readBody } from '../measure/read-body.ts'
import { SURVEY } from '../measure/survey.ts'
import { MEASURE_IDS, MEASURES, type MeasureId } from '../measure/vocabulary.ts'
import { FINISH_PLANS } from '../sew/finish-plans.ts'
import { type PhraseCode, phrase } from '../words/phrase.ts'
import { refusingAt } from '../words/refusal.ts'
import { type Reader, say } from '../words/say.ts'
import { FINISH_PLAN_IDS } from '../words/stitches.ts'
import { allConstructions, constructionFor } from './constructions.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'
import { readerOf, settingsOf } from './settings.ts'

/** What the planner knows before anyone has entered anything: measures, constructions, finish plans. */
export const catalogueRequests = [
  request({
    name: 'measures.list',
    kind: 'query',
    about: 'The body dimensions the planner knows, with how to take each and what is accepted.',
    input: z.strictObject({}),
    run: (_, context) => {
      const reader = readerOf(context)
      return {
        measures: MEASURE_IDS.map((id) => ({
          id,
          name: say(phrase(`measure.name.${id}`), reader),
          how: say(phrase(`measure.how.${id}`), reader),
          also: say(phrase(`measure.also.${id}`), reader),
          group: MEASURES[id].group,
          ...caveatOf(id, reader),
          least: MEASURES[id].range[0],
          most: MEASURES[id].range[1],
        })),
      }
    },
  }),
  request({
    name: 'constructions.list',
    kind: 'query',
    about: 'The garments the planner can draft.',
    input: z.strictObject({}),
    run: (_, context) => ({
      constructions: allConstructions(context).map((one) => outline(one, readerOf(context))),
    }),
  }),
  request({
    name: 'construction.describe',
    kind: 'query',
    about:
      'A construction with its measures and choices; with measures given, what each choice works out to.',
    input: z.strictObject({ id: z.string(), measures: inputs.measures.optional(), choices: inputs.choices }),
    run: ({ id, measures, choices }, context) => {
      const reader = readerOf(context)
      const { unit } = settingsOf(context).letterhead
      const construction = constructionFor(id, context, 'id')
      const body = measures === undefined ? undefined : refusingAt('measures', () => readBody(measures, unit))
      if (body !== undefined) refusingAt('measures', () => refuseMissing(construction, body))
      const used = body === undefined ? {} : construction.draft(body, choices, unit).choices
      return {
        ...outline(construction, reader),
        id,
        required: construction.required,
        useful: construction.useful,
        sources: construction.sources,
        often: construction.often,
        usualFibre: construction.usualFibre ?? null,
        finishPlan: construction.finishPlan,
        toile: construction.toile ?? false,
        choices: Object.entries(construction.choices).map(([choice, data]) => ({
          id: choice,
          label: say(phrase(`draft.choice.${choice}` as PhraseCode), reader),
          help: say(phrase(`draft.help.${choice}` as PhraseCode), reader),
          ...data,
          ...valuesOf(data, reader),
          ...(used[choice] === undefined ? {} : { worksOutTo: used[choice] }),
        })),
      }
    },
  }),
  request({
    name: 'finishPlans.list',
    kind: 'query',
    about: 'The ways a garment can be sewn throughout.',
    input: z.strictObject({}),
    run: (_, context) => ({
      finishPlans: FINISH_PLAN_IDS.map((id) => ({
        id,
        name: say(phrase(`sew.finishPlan.${id}`), readerOf(context)),
        short: say(phrase(`sew.finishPlan.${id}.short`), readerOf(context)),
        help: say(phrase(`sew.finishPlan.${id}.help`), readerOf(context)),
        plan: FINISH_PLANS[id],
      })),
    }),
  }),
]

/** How the survey that estimates rest on took it otherwise. */
function caveatOf(id: MeasureId, reader: Reader): { caveat?: string } {
  const caveat = SURVEY[id]?.caveat
  return caveat === undefined ? {} : { caveat: say(phrase(`measure.caveat.${caveat}`), reader) }
}

const outline = (construction: Construction, reader: Reader) => ({
  id: construction.id,
  name: say(titleOf(construction), reader),
  period: say(construction.period ?? phrase(`draft.period.${construction.id}` as PhraseCode), reader),
  summary: say(construction.summary ?? phrase(`draft.summary.${construction.id}` as PhraseCode), reader),
})

/** Names of the options of a choice, where it has options. */
const valuesOf = (choice: Choice, reader: Reader) =>
  choice.kind === 'option'
    ? {
        labels: Object.fromEntries(
          choice.options.map((value) => [value, say(phrase(`draft.value.${value}` as PhraseCode), reader)]),
        ),
      }
    : {}
