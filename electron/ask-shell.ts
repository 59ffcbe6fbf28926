import { createInterface } from 'node:readline'
import { parseArgs } from 'node:util'
import { z } from 'zod'
import { phrase } from '../core/words/phrase.ts'
import { Refusal } from '../core/words/refusal.ts'
import { say } from '../core/words/say.ts'
import {
  type Answer,
  answer,
  documentPath,
  openStore,
  readerOf,
  requests,
  type Store,
} from '../core/workroom.ts'
import { shellContext } from './context.ts'

type Out = { write(text: string): unknown }

/**
 * The thinnest shell: one request a line comes in, one answer a line goes out. Progress of jobs goes to
 * `err`. A document in an answer is given the path of its file.
 *
 * @returns the exit code: 0 when the store could be opened, whatever the answers were
 */
export async function ask(args: string[], input: NodeJS.ReadableStream, out: Out, err: Out): Promise<number> {
  const options = optionsOf(args)
  if (options === undefined) {
    err.write(`${say(phrase('ask.usage'))}\n`)
    return 2
  }
  if (options.list) {
    for (const line of listing()) out.write(`${line}\n`)
    return 0
  }
  let store: Store
  try {
    store = openStore(options.store, { now: new Date().toISOString() })
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    out.write(`${JSON.stringify(refused(error))}\n`)
    return 1
  }
  try {
    const context = shellContext(store, ({ done, doing }) =>
      err.write(`${Math.round(done * 100)} % ${doing}\n`),
    )
    for await (const line of createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })) {
      if (line.trim() === '') continue
      const answered = await answerLine(line, context)
      out.write(`${JSON.stringify(withPath(answered, context))}\n`)
    }
  } finally {
    store.close()
  }
  return 0
}

function optionsOf(args: string[]): { list: true } | { list: false; store: string } | undefined {
  try {
    const { values } = parseArgs({ args, options: { list: { type: 'boolean' }, store: { type: 'string' } } })
    if (values.list === true) return { list: true }
    return values.store === undefined ? undefined : { list: false, store: values.store }
  } catch {
    return undefined
  }
}

/** Every request with what it does and the JSON Schema of its input, one JSON object a line. */
export const listing = (): string[] =>
  requests.map(({ name, kind, about, input }) =>
    JSON.stringify({ request: name, kind, about, payload: z.toJSONSchema(input, { io: 'input' }) }),
  )

const envelope = z.strictObject({ request: z.string(), payload: z.unknown().optional() })

async function answerLine(line: string, context: ReturnType<typeof shellContext>): Promise<Answer> {
  let asked: z.output<typeof envelope>
  try {
    asked = envelope.parse(JSON.parse(line))
  } catch {
    return refused(new Refusal(phrase('refusal.request.unreadable'), 'request'))
  }
  return answer(requests, asked.request, asked.payload ?? {}, context, readerOf(context))
}

function refused({ phrase: sentence, field }: Refusal): Answer {
  return {
    ok: false,
    error: { code: sentence.code, message: say(sentence), ...(field === undefined ? {} : { field }) },
  }
}

function withPath(answered: Answer, context: ReturnType<typeof shellContext>): Answer {
  if (!answered.ok) return answered
  const { document } = answered.result as { document?: { hash: string; kind: string } }
  if (document === undefined) return answered
  return {
    ok: true,
    result: {
      ...(answered.result as object),
      document: { ...document, path: documentPath(context, document.hash, document.kind) },
    },
  }
}
