import { z } from 'zod'
import { lengthsOf } from '../measure/body.ts'
import { differences } from '../measure/differences.ts'
import { type Doubt, doubtsOf } from '../measure/doubts.ts'
import { formOf, inOrder, type Named, readForm } from '../measure/form.ts'
import { isGrown } from '../measure/grown.ts'
import { estimateMissing } from '../measure/missing.ts'
import { commonRange } from '../measure/proportions.ts'
import { readMeasures } from '../measure/read-body.ts'
import { PROPORTIONS_OF } from '../measure/survey.ts'
import { MEASURE_IDS, type MeasureId } from '../measure/vocabulary.ts'
import { getClient } from '../store/clients.ts'
import { getMeasurementSet, type MeasurementSet } from '../store/measurement-sets.ts'
import { printLength } from '../words/length.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { type Reader, say } from '../words/say.ts'
import { constructionFor } from './constructions.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { readerOf, settingsOf, today } from './settings.ts'

const asked = {
  measures: inputs.measures.optional().describe('of a body that is not saved; else measurementSetId'),
  measurementSetId: inputs.id.optional(),
  unit: inputs.unit.optional(),
  of: z
    .enum(PROPORTIONS_OF)
    .optional()
    .describe('whose proportions: women’s, men’s, or, when it is not said, those of all'),
  birthDay: inputs.day
    .nullable()
    .optional()
    .describe('of a child, whom grown people’s proportions say nothing of'),
}

/** What the measures of a body say of each other. */
export const measureRequests = [
  request({
    name: 'measures.check',
    kind: 'query',
    about:
      'Which measures of a set may be slips, why, and what they may rather be. Nothing is refused for it.',
    input: z.strictObject(asked),
    run: (input, context) => {
      const { lengths, of, unit, birthDay } = bodyAsked(input, context)
      const reader = { ...readerOf(context), unit }
      const grown = isGrown(lengths, birthDay, today(context))
      return {
        grown,
        flags: doubtsOf(lengths, grown ? of : undefined, unit).map((doubt) => ({
          ...doubt,
          sentence: say(sentenceOf(doubt), reader),
          ...(doubt.rather === undefined
            ? {}
            : { suggestion: printLength(doubt.rather, unit, reader.locale) }),
        })),
      }
    },
  }),
  request({
    name: 'measures.estimate',
    kind: 'query',
    about: 'What the measures not taken most likely are, by those that were: mm with a standard deviation.',
    input: z.strictObject({
      ...asked,
      wanted: z.array(z.enum(MEASURE_IDS)).max(MEASURE_IDS.length).optional(),
    }),
    run: (input, context) => {
      const { lengths, of, unit, birthDay } = bodyAsked(input, context)
      if (!isGrown(lengths, birthDay, today(context)))
        throw new Refusal(phrase('refusal.measure.child'), 'measures.stature')
      const reader = { ...readerOf(context), unit }
      return {
        estimates: estimateMissing(lengths, of, input.wanted).map(({ measure, mm, sd }) => ({
          ...{ measure, mm, sd, common: commonRange(measure, of) },
          text: sayEstimate(mm, sd, reader),
        })),
      }
    },
  }),
  request({
    name: 'measuringForm.write',
    kind: 'query',
    about: 'A form for measures to be filled in with any editor, as comma-separated text.',
    input: z.strictObject({ construction: z.string().optional() }),
    run: ({ construction }, context) => {
      const reader = readerOf(context)
      const heads = {
        name: say(phrase('paper.measuring.column.measure'), reader),
        size: say(phrase('paper.measuring.column.size', { unit: reader.unit }), reader),
        how: say(phrase('paper.measuring.column.how'), reader),
      }
      return {
        name: 'measures.csv',
        text: formOf(namedFor(measuresFor(construction, context), reader), heads),
      }
    },
  }),
  request({
    name: 'measuringForm.read',
    kind: 'query',
    about: 'Reads a form that came back, or plain lines such as “waist: 78.5”; what makes no sense is told.',
    input: z.strictObject({ text: z.string().max(100_000) }),
    run: ({ text }, context) => readForm(text, namedFor(MEASURE_IDS, readerOf(context))),
  }),
  request({
    name: 'measurementSets.compare',
    kind: 'query',
    about: 'What has changed from one measurement set to another, and by how much.',
    input: z.strictObject({ before: inputs.id, after: inputs.id }),
    run: (input, { store: { db } }) => ({
      differences: differences(
        getMeasurementSet(db, input.before, 'before').measures,
        getMeasurementSet(db, input.after, 'after').measures,
      ),
    }),
  }),
]

/** Every measure, or those that a construction needs or can use, in the order one takes them. */
export function measuresFor(construction: string | undefined, context: Context): MeasureId[] {
  if (construction === undefined) return [...MEASURE_IDS]
  const { required, useful } = constructionFor(construction, context)
  return inOrder([...required.flat(), ...useful])
}

/** Measures as a reader of this workroom knows them. */
const namedFor = (ids: readonly MeasureId[], reader: Reader): Named[] =>
  ids.map((id) => ({
    id,
    name: say(named(id), reader),
    also: say(phrase(`measure.also.${id}`), reader),
    how: say(phrase(`measure.how.${id}`), reader),
  }))

type Asked = z.output<z.ZodObject<typeof asked>>

function bodyAsked({ measures, measurementSetId, unit: given, of, birthDay }: Asked, context: Context) {
  if (measurementSetId !== undefined) {
    const { db } = context.store
    const set = getMeasurementSet(db, measurementSetId, 'measurementSetId')
    return {
      ...{ lengths: lengthsOf(set), of: of ?? set.proportionsOf ?? 'all', unit: given ?? set.unit },
      birthDay: birthDay ?? getClient(db, set.clientId).birthDay,
    }
  }
  if (measures === undefined) throw new Refusal(phrase('refusal.request.noBody'), 'measures')
  const unit = given ?? settingsOf(context).letterhead.unit
  const body = refusingAt('measures', () => readMeasures(measures, unit))
  return { lengths: lengthsOf(body), of: of ?? ('all' as const), unit, birthDay: birthDay ?? null }
}

const named = (id: MeasureId): Phrase => phrase(`measure.name.${id}`)

function sentenceOf({ kind, measure, other, mm, rather, expected }: Doubt): Phrase {
  const about = {
    measure: named(measure),
    given: { mm },
    ...(other === undefined ? {} : { other: named(other) }),
    ...(rather === undefined ? {} : { rather: { mm: rather } }),
    ...(expected === undefined ? {} : { expected: { mm: expected.mm }, sd: { mm: expected.sd } }),
  }
  if (kind === 'unit')
    return phrase(rather! > mm ? 'measure.doubt.inches' : 'measure.doubt.centimetres', about)
  return phrase(`measure.doubt.${kind}`, about)
}

/** The sizes of a set as they are to be read: both sides, estimates with their spread, and the notes. */
export function sizesOf({ measures, notes }: Pick<MeasurementSet, 'measures' | 'notes'>, reader: Reader) {
  const length = (mm: number) => printLength(mm, reader.unit, reader.locale)
  const sizes = MEASURE_IDS.flatMap((id) => {
    const found = measures[id]
    if (found === undefined) return []
    const { mm, source, sd, sides } = found
    const size =
      source === 'estimated'
        ? say(phrase('screen.measure.estimated', { text: sayEstimate(mm, sd ?? 0, reader) }), reader)
        : sides === undefined
          ? length(mm)
          : `L ${length(sides.left)} R ${length(sides.right)}`
    return [[id, notes[id] === undefined ? size : `${size} (${notes[id]})`]]
  })
  return Object.fromEntries(sizes) as Partial<Record<MeasureId, string>>
}

/** An estimate as it is always shown: never without how far off it may be. */
export const sayEstimate = (mm: number, sd: number, { unit, locale }: Reader): string =>
  `${printLength(mm, unit, locale)} ± ${printLength(sd, unit, locale)}`
