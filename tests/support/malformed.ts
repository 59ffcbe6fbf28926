import fc from 'fast-check'

/** What a JSON Schema says of a value, as far as it is drawn from here. */
export type Schema = {
  type?: string
  properties?: Record<string, Schema>
  additionalProperties?: Schema | boolean
  required?: string[]
  items?: Schema
  anyOf?: Schema[]
  oneOf?: Schema[]
  allOf?: Schema[]
  enum?: unknown[]
  const?: unknown
  minimum?: number
  maximum?: number
  exclusiveMinimum?: number
  pattern?: string
  description?: string
  minItems?: number
  $ref?: string
  $defs?: Record<string, Schema>
}

/** Names that every object has without being given them. */
const INHERITED = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'valueOf']

const deep = (levels: number, end: unknown): unknown => {
  let nested = end
  for (let i = 0; i < levels; i++) nested = i % 2 === 0 ? [nested] : { a: nested }
  return nested
}
const own = (name: string, value: unknown): unknown => JSON.parse(`{"${name}":${JSON.stringify(value)}}`)

const TEXTS = [
  ...[
    '',
    ' ',
    '\u0000',
    '\ud800',
    '\udfff\ud800',
    '\u202eabc',
    'e\u0301'.repeat(50),
    '🧵👩🏽‍🎨',
    'אבא',
    '\u2028\u2029',
    '\ufeff',
  ],
  ...[
    "'; DROP TABLE client; --",
    '%',
    '_%',
    '<b onload=alert(1)>',
    '=1+1',
    '../../etc/passwd',
    'C:\\con',
    '"',
    '{}',
    '[]',
  ],
  ...[
    'NaN',
    '1e999',
    '-0',
    '١٢',
    '½',
    '12 ells',
    '1/0',
    '2026-02-30',
    '0000-00-00',
    '9999-12-31',
    '2026-3-1',
    'x'.repeat(100_000),
  ],
  ...INHERITED,
]
const NUMBERS = [
  ...[
    0,
    -0,
    -1,
    1,
    0.1,
    1.5,
    -1e-9,
    1e-300,
    1e308,
    -1e308,
    2 ** 31,
    2 ** 53,
    2 ** 53 + 2,
    -(2 ** 63),
    1e15,
    1e21,
  ],
  ...[Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
]

export const oddText = fc.oneof(fc.constantFrom(...TEXTS), fc.string({ unit: 'binary', maxLength: 60 }))

/** Values that hardly any field is meant for. */
export const odd: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    undefined,
    true,
    false,
    [],
    {},
    [[]],
    [null],
    10n,
    new Date(0),
    new Map([['a', 1]]),
  ),
  oddText,
  fc.constantFrom(...NUMBERS),
  fc.constantFrom(...INHERITED.map((name) => own(name, { polluted: true }))),
  fc.constantFrom(
    deep(50, 1),
    deep(3000, 'x'),
    Array.from({ length: 5000 }, (_, i) => i),
  ),
  fc.double(),
  fc.jsonValue({ maxDepth: 3 }),
)

/** A value as a schema wants it, or nearly: `ids` are those of things that there are. */
export function fitting(
  schema: Schema,
  ids: readonly string[],
  root: Schema = schema,
): fc.Arbitrary<unknown> {
  const inner = (one: Schema) => fitting(one, ids, root)
  if (schema.$ref !== undefined) {
    const name = schema.$ref.split('/').at(-1)!
    const named = schema.$ref === '#' ? root : root.$defs?.[name]
    return named === undefined || name.startsWith('__') ? fc.jsonValue({ maxDepth: 1 }) : inner(named)
  }
  if (schema.const !== undefined) return fc.constant(schema.const)
  if (schema.enum !== undefined) return fc.constantFrom(...schema.enum)
  const several = schema.anyOf ?? schema.oneOf
  if (several !== undefined) return fc.oneof(...several.map(inner))
  if (schema.allOf !== undefined) return inner(schema.allOf[0]!)
  switch (schema.type) {
    case 'object':
      return object(schema, inner)
    case 'array':
      return fc.array(inner(schema.items ?? {}), {
        minLength: Math.min(schema.minItems ?? 0, 3),
        maxLength: 3,
      })
    case 'integer':
    case 'number':
      return number(schema)
    case 'boolean':
      return fc.boolean()
    case 'null':
      return fc.constant(null)
    case 'string':
      return text(schema, ids)
    default:
      return fc.jsonValue({ maxDepth: 2 })
  }
}

function object(schema: Schema, inner: (one: Schema) => fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  const { properties = {}, required = [], additionalProperties } = schema
  if (Object.keys(properties).length === 0 && typeof additionalProperties === 'object')
    return fc.dictionary(
      fc.constantFrom('bustGirth', 'waistGirth', 'a', ...INHERITED),
      inner(additionalProperties),
      {
        maxKeys: 4,
      },
    )
  const fields = Object.fromEntries(Object.entries(properties).map(([name, one]) => [name, inner(one)]))
  return fc.record(fields, { requiredKeys: required.filter((name) => name in fields) })
}

function number({ type, minimum, exclusiveMinimum, maximum }: Schema): fc.Arbitrary<number> {
  const least = minimum ?? exclusiveMinimum ?? -10
  const from = Math.max(-1e6, least)
  const to = Math.max(from, Math.min(maximum ?? 3000, 3000))
  const whole = fc.integer({ min: Math.ceil(from), max: Math.max(Math.ceil(from), Math.floor(to)) })
  return type === 'integer' ? whole : fc.oneof(whole, fc.double({ min: from, max: to, noNaN: true }))
}

function text({ description = '', pattern = '' }: Schema, ids: readonly string[]): fc.Arbitrary<string> {
  if (pattern === '^[A-Z]{3}$') return fc.constantFrom('GBP', 'EUR', 'JPY', 'XXX')
  const usual = fc.constantFrom('Ada', 'madder', '38 1/2 in', '1 h 20', '150 cm', '2026-03-02', 'linen')
  if (/\bid\b|ids/.test(description))
    return fc.oneof({ weight: 6, arbitrary: fc.constantFrom(...ids) }, usual)
  return fc.oneof(usual, fc.constantFrom(...ids), fc.constantFrom(...TEXTS))
}

type Box = Record<string, unknown> | unknown[]
const isBox = (value: unknown): value is Box =>
  Array.isArray(value) || (value !== null && Object.prototype.toString.call(value) === '[object Object]')

/** A place within a value, and what is to be put there. */
type Spoil = { turns: number[]; how: 'replace' | 'drop' | 'add'; name: string; value: unknown }

const spoil: fc.Arbitrary<Spoil> = fc.record({
  turns: fc.array(fc.nat(50), { minLength: 1, maxLength: 5 }),
  how: fc.constantFrom('replace', 'replace', 'drop', 'add'),
  name: fc.constantFrom('extra', 'id', '', ...INHERITED),
  value: odd,
})

/** The value with something wrong in it, somewhere. */
function spoilt(value: unknown, { turns, how, name, value: other }: Spoil): unknown {
  const [turn = 0, ...rest] = turns
  if (!isBox(value)) return other
  const copy = structuredCloneOf(value)
  const keys = Object.keys(copy)
  const key = keys[turn % Math.max(1, keys.length)]
  if (how === 'add' && (rest.length === 0 || key === undefined)) {
    Object.defineProperty(copy, name, { value: other, enumerable: true, configurable: true, writable: true })
    return copy
  }
  if (key === undefined) return other
  const box = copy as Record<string, unknown>
  if (rest.length > 0 && isBox(box[key]))
    box[key] = spoilt(box[key], { turns: rest, how, name, value: other })
  else if (how === 'drop') delete box[key]
  else Object.defineProperty(box, key, { value: other, enumerable: true, configurable: true, writable: true })
  return copy
}

const structuredCloneOf = (value: Box): Box =>
  Array.isArray(value) ? [...value] : Object.defineProperties({}, Object.getOwnPropertyDescriptors(value))

/** Payloads for a request: something like what it wants with something wrong in it, or nothing like it at all. */
export const malformed = (schema: Schema, ids: readonly string[]): fc.Arbitrary<unknown> =>
  fc.oneof(
    { weight: 5, arbitrary: fc.tuple(fitting(schema, ids), spoil).map(([value, one]) => spoilt(value, one)) },
    { weight: 3, arbitrary: fitting(schema, ids) },
    { weight: 1, arbitrary: odd },
  )
