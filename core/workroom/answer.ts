import type { z } from 'zod'
import { refusalOfFault } from '../store/faults.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { type Reader, say } from '../words/say.ts'
import type { Context, Request } from './request.ts'

/** What a shell hands back: a result, or a refusal with its sentence. */
export type Answer<T = unknown> =
  | { ok: true; result: T }
  | { ok: false; error: { code: string; message: string; field?: string } }

/**
 * Carries out one request: checks its input against the schema, runs a command as one transaction, and
 * turns refusals into answers, those of the disk too. Faults of the program are thrown on.
 */
export async function answer(
  table: readonly Request[],
  name: string,
  payload: unknown,
  context: Context,
  reader: Reader,
): Promise<Answer> {
  try {
    const entry = table.find((one) => one.name === name)
    if (entry === undefined) throw new Refusal(phrase('refusal.request.unknown', { name }), 'request')
    if (context.store.damaged !== undefined && entry.kind !== 'query' && entry.mends !== true)
      throw new Refusal(phrase('refusal.store.lookOnly'))
    const read = entry.input.safeParse(payload)
    if (!read.success) throw refusalOf(read.error.issues[0]!, payload)
    const run = () => entry.run(read.data, context)
    return { ok: true, result: await (entry.kind === 'command' ? context.store.transaction(run) : run()) }
  } catch (error) {
    const refusal = error instanceof Refusal ? error : refusalOfFault(error)
    if (refusal === undefined) throw error
    const { phrase: refused, field } = refusal
    return {
      ok: false,
      error: { code: refused.code, message: say(refused, reader), ...(field === undefined ? {} : { field }) },
    }
  }
}

const NUMBERS: readonly string[] = ['number', 'int']

/** Whether a number that could not be read stands at a place of an input: NaN, which JSON writes as null. */
function isNoNumber(payload: unknown, path: readonly PropertyKey[]): boolean {
  const value = path.reduce<unknown>(
    (at, key) => (typeof at === 'object' && at !== null ? at[key as keyof typeof at] : undefined),
    payload,
  )
  return value === null || Number.isNaN(value)
}

/** The first thing wrong with an input, in a sentence. */
function refusalOf(issue: z.core.$ZodIssue, payload: unknown): Refusal {
  const at = (...more: PropertyKey[]) => [...issue.path, ...more].map(String).join('.')
  const said = (sentence: Phrase, field = at()) => new Refusal(sentence, field === '' ? undefined : field)
  const field = at() === '' ? 'payload' : at()
  switch (issue.code) {
    case 'unrecognized_keys':
      return said(
        phrase('refusal.request.unknownField', { fields: issue.keys.join(', ') }),
        at(issue.keys[0]!),
      )
    case 'invalid_type':
      // What a screen cannot read as a number comes as none.
      return isNoNumber(payload, issue.path) && NUMBERS.includes(issue.expected)
        ? said(phrase('refusal.number.typed', { example: 12.5 }))
        : said(phrase('refusal.request.type', { field, expected: issue.expected }))
    case 'invalid_value':
      return said(phrase('refusal.request.value', { field, values: issue.values.map(String).join(', ') }))
    case 'invalid_union': {
      const inner = issue.errors.flat().find((one) => one.path.length > 0)
      return inner === undefined
        ? said(phrase('refusal.request.kind', { field }))
        : refusalOf({ ...inner, path: [...issue.path, ...inner.path] }, payload)
    }
    default:
      return said(phrase('refusal.request.invalid', { field, detail: issue.message }))
  }
}
