import { z } from 'zod'
import { ownId, tryOwn } from '../draft/own/construct.ts'
import { OWN_FORMAT, OWN_SHAPES, type OwnConstruction } from '../draft/own/definition.ts'
import { SHAPES } from '../draft/own/shapes.ts'
import { CLOTH_ROLES } from '../draft/types.ts'
import { MEASURE_IDS, type MeasureId } from '../measure/vocabulary.ts'
import { getOwn, insertOwn, listOwn, type OwnRow } from '../store/own-constructions.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { say } from '../words/say.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { readerOf } from './settings.ts'
import { bodyFor } from './wanted.ts'

const id = z
  .string()
  .regex(/^[a-z0-9][a-z0-9-]{0,39}$/)
  .describe('a short name within this construction: small letters, figures, hyphens')
const name = inputs.line(80)
const measure = z.enum(MEASURE_IDS as [MeasureId, ...MeasureId[]])
const length = z.union([
  z.strictObject({ fixed: z.number().describe('mm') }),
  z.strictObject({ measure, factor: z.number(), ease: z.number().describe('mm') }),
  z.strictObject({ edge: inputs.line(40), of: id.describe('id of a piece'), factor: z.number() }),
])
const edge = z.strictObject({ piece: id, copy: z.int().min(1).max(12), edge: inputs.line(40) })
const edges = z.array(edge).max(60)

/** The published schema of a construction of one's own, in the store and in a file. */
export const ownConstruction = z
  .strictObject({
    format: z.literal(OWN_FORMAT),
    name: inputs.named.max(80),
    summary: inputs.line(400),
    finish: z.enum(['felled', 'open']),
    pieces: z
      .array(
        z.strictObject({
          id,
          name,
          shape: z.enum(OWN_SHAPES),
          dimensions: z.record(z.string(), length),
          count: z.int().min(1).max(12),
          pairs: z.boolean().describe('every second copy is the mirror image'),
          marks: z.array(z.strictObject({ edge: inputs.line(40), at: length })).max(12),
          grain: z.enum(['straight', 'bias']),
          cloth: z.enum(CLOTH_ROLES),
        }),
      )
      .max(40),
    seams: z.array(z.strictObject({ id, name, a: edges, b: edges, gathered: z.boolean() })).max(120),
    hems: z
      .array(z.strictObject({ id, name, edges, depth: z.number().min(2).max(150), seen: z.boolean() }))
      .max(60),
    fit: z.array(z.strictObject({ name, measure, ease: z.number(), edges })).max(20),
  })
  .refine(({ pieces }) => distinct(pieces), 'two pieces have the same id')
  .refine(({ seams, hems }) => distinct([...seams, ...hems]), 'two seams or hems have the same id')

const distinct = (all: readonly { id: string }[]): boolean =>
  new Set(all.map((one) => one.id)).size === all.length

/** Constructions of the maker's own. */
export const ownConstructionRequests = [
  request({
    name: 'ownConstruction.try',
    kind: 'query',
    about:
      'Tries a construction of one’s own on a body: its pieces, what is wrong, and the garment when nothing is.',
    input: z.strictObject({
      definition: ownConstruction,
      measures: inputs.measures.optional(),
      measurementSetId: inputs.id.optional(),
      unit: inputs.unit.optional(),
    }),
    run: ({ definition, ...body }, context) => {
      const { faults, draft, pieces } = tryOwn(definition, ownId('new'), bodyFor(body, context))
      const reader = readerOf(context)
      return {
        faults: faults.map((fault) => say(fault, reader)),
        pieces,
        ...(draft === undefined ? {} : { draft }),
      }
    },
  }),
  request({
    name: 'ownConstruction.shapes',
    kind: 'query',
    about: 'The shapes that pieces of one’s own may have, with their dimensions and edges.',
    input: z.strictObject({}),
    run: () => ({
      shapes: OWN_SHAPES.map((shape) => {
        const { dimensions, edges: sides } = SHAPES[shape]
        return { id: shape, dimensions: [...dimensions], edges: [...sides] }
      }),
    }),
  }),
  request({
    name: 'ownConstructions.list',
    kind: 'query',
    about: 'Constructions of one’s own, the latest version of each.',
    input: z.strictObject({}),
    run: (_, { store }) => ({
      constructions: listOwn(store.db).map(({ family, version, name: called, createdAt }) => ({
        ...{ id: ownId(family), family, version, name: called, createdAt },
      })),
    }),
  }),
  request({
    name: 'ownConstruction.get',
    kind: 'query',
    about: 'One construction of one’s own, in its latest version or the one named.',
    input: z.strictObject({ family: inputs.id, version: z.int().min(1).optional() }),
    run: ({ family, version }, { store }) => ({ construction: getOwn(store.db, family, version, 'family') }),
  }),
  request({
    name: 'ownConstruction.save',
    kind: 'command',
    about: 'Saves a construction of one’s own: a new one, or the next version of one that is there.',
    input: z.strictObject({ definition: ownConstruction, family: inputs.id.optional() }),
    run: ({ definition, family }, context) => ({ construction: keep(definition, family, context) }),
  }),
  request({
    name: 'ownConstruction.write',
    kind: 'query',
    about: 'A construction of one’s own as the text of a file, to keep or to give away.',
    input: z.strictObject({ family: inputs.id, version: z.int().min(1).optional() }),
    run: ({ family, version }, { store }) => {
      const { definition, name: called } = getOwn(store.db, family, version, 'family')
      return { name: `${fileName(called)}.json`, text: `${JSON.stringify(definition, null, 2)}\n` }
    },
  }),
  request({
    name: 'ownConstruction.read',
    kind: 'command',
    about: 'Takes in a construction from the text of a file, as a new one.',
    input: z.strictObject({ text: z.string().max(2_000_000) }),
    run: ({ text }, context) => ({ construction: keep(parsed(text), undefined, context) }),
  }),
]

function keep(definition: OwnConstruction, family: string | undefined, context: Context): OwnRow {
  const { db } = context.store
  const before = family === undefined ? undefined : getOwn(db, family, undefined, 'family')
  const row = insertOwn(db, {
    ...{
      id: context.newId(),
      family: before?.family ?? context.newId(),
      version: (before?.version ?? 0) + 1,
    },
    ...{ name: definition.name, definition, createdAt: context.now() },
  })
  const told = ({ name: called, version }: OwnRow) => ({ name: called, version })
  recorded(context, 'ownConstruction.save', 'ownConstruction', row.family, before && told(before), told(row))
  return row
}

/** @throws Refusal when the text is no construction, saying where it goes wrong */
function parsed(text: string): OwnConstruction {
  let given: unknown
  try {
    given = JSON.parse(text)
  } catch {
    throw new Refusal(phrase('refusal.own.noJson'), 'text')
  }
  const read = ownConstruction.safeParse(given)
  if (read.success) return read.data
  const [first] = read.error.issues
  const at = first?.path.join('.') ?? ''
  throw new Refusal(
    phrase('refusal.own.notOne', { at: at === '' ? '–' : at, why: first?.message ?? '' }),
    'text',
  )
}

const fileName = (called: string): string =>
  called
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '') || 'construction'
