import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { CONSTRUCTIONS } from '../../core/draft/constructions.ts'
import { patternSheets } from '../../core/paper/pattern.ts'
import { printPdf } from '../../core/paper/pdf.ts'
import { quoteSheet } from '../../core/paper/quote-sheet.ts'
import type { QuoteSnapshot } from '../../core/quote/types.ts'
import { answer, openStore, readerOf, requests } from '../../core/workroom.ts'
import { shellContext } from '../../electron/context.ts'
import { middlingBody } from './bodies.ts'
import { runsOf, summedUp, type Timing } from './timing.ts'

const RUNS = runsOf(20)
const OPTIONS = { title: 'bench', language: 'en-GB', createdAt: '2026-01-05T09:00:00Z' }

type Made = { quotes: { id: string }[] }
type Commissions = { commissions: { garments: { id: string }[] }[] }

/** Times the papers of the sample workroom, and a pattern of very many sheets with the memory it takes. */
export async function paperTimings(): Promise<Timing[]> {
  const folder = mkdtempSync(join(tmpdir(), 'ellwand-papers-'))
  const store = openStore(join(folder, 'workroom.ellwand'), { now: new Date().toISOString() })
  try {
    const context = shellContext(store, () => {})
    const ask = async <T>(name: string, payload: object = {}): Promise<T> => {
      const answered = await answer(requests, name, payload, context, readerOf(context))
      if (!answered.ok) throw new Error(`${name}: ${answered.error.message}`)
      return answered.result as T
    }
    await ask('workroom.sample')
    const { quotes } = await ask<Made>('quotes.list')
    const { quote } = await ask<{ quote: { snapshot: QuoteSnapshot } }>('quote.get', { id: quotes[0]!.id })
    const { commissions } = await ask<Commissions>('commissions.list')
    const garmentId = commissions[0]!.garments[0]!.id
    const bench = async () => {
      await ask('workOrder.print', { garmentId })
      await ask('cuttingSheet.print', { garmentId })
    }
    return [
      await timedAsync('quote, laid out and printed', () => printPdf(quoteSheet(quote.snapshot), OPTIONS)),
      await timedAsync('work order and cutting sheet, printed and kept', bench),
      ...(await manySheets(quote.snapshot)),
    ]
  } finally {
    store.close()
    rmSync(folder, { recursive: true, force: true })
  }
}

async function timedAsync(name: string, work: () => Promise<unknown>): Promise<Timing> {
  for (let i = 0; i < 3; i++) await work()
  const times: number[] = []
  for (let i = 0; i < RUNS; i++) {
    const started = performance.now()
    await work()
    times.push(performance.now() - started)
  }
  return summedUp(name, times)
}

/** Garments with many curves, put together into one pattern of more than sixty sheets. */
const CURVED = [
  'sidelessOvergown',
  'lacedKirtle',
  'hose',
  'circleCloak',
  'goredUndertunic',
  'smock',
  'shift',
  'hose',
  'overtunic',
]
const MB = 1_048_576

// What is held counts, not what merely was not swept up yet.
setFlagsFromString('--expose-gc')
const collect = runInNewContext('gc') as () => void

async function manySheets(snapshot: QuoteSnapshot): Promise<Timing[]> {
  const pieces = CURVED.flatMap(
    (id) => CONSTRUCTIONS.find((one) => one.id === id)!.draft(middlingBody, {}, 'mm').pieces,
  )
  const [line] = snapshot.lines
  const made = { ...line!, estimate: { ...line!.estimate, draft: { ...line!.estimate.draft, pieces } } }
  const sheet = { snapshot, line: made, commissionNumber: 'C-1', copy: 1, day: '2026-01-05', stepsDone: {} }
  const heap: number[] = []
  const document = patternSheets(sheet, 'A4')
  await printPdf(document, {
    ...OPTIONS,
    onPage: async () => {
      collect()
      heap.push(process.memoryUsage().heapUsed / MB)
    },
  })
  const pages = document.pages.length
  const more = Math.max(...heap.slice(-10)) - Math.max(...heap.slice(0, 10))
  return [
    await timedAsync(`pattern of ${pages} pages, laid out and printed`, () =>
      printPdf(patternSheets(sheet, 'A4'), OPTIONS),
    ),
    summedUp(`pattern of ${pages} pages: MB of heap more in its last ten pages than in its first`, [more]),
  ]
}
