import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { answer, type Context, openStore, readerOf, requests } from '../../core/workroom.ts'
import { shellContext } from '../../electron/context.ts'
import { STORE_FILES } from '../../electron/store-host.ts'
import { runsOf, summedUp, type Timing } from './timing.ts'

/** Years of work: so many commissions, of four garments each, of which so many are open. */
const COMMISSIONS = 5000
const OPEN = 20
const GARMENTS = 4
const STEPS = 15
const TIMES = 200_000
const RUNS = runsOf(40)

/** A store of many years in a folder of its own, and what is in it. */
export type Years = { folder: string; file: string; made: Made }

/** Has a store of many years for as long as some work takes. */
export async function withYears<T>(work: (years: Years) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'ellwand-years-'))
  const file = join(folder, STORE_FILES.own)
  try {
    return await work({ folder, file, made: await fillStore(file) })
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Times every screen's request, and the opening itself, on a store of many years. */
export async function scaleTimings({ file, made }: Years): Promise<Timing[]> {
  const opened = performance.now()
  const store = openStore(file, { now: new Date().toISOString() })
  const opening = performance.now() - opened
  const ask = asker(shellContext(store, () => {}))
  const timings = [summedUp('opening a store of 5000 commissions', [opening])]
  for (const [name, payload] of asked(made)) {
    // Once without the clock, as the planner has run for a while when a screen opens.
    await ask(name, payload)
    const times: number[] = []
    for (let i = 0; i < RUNS; i++) {
      const started = performance.now()
      await ask(name, payload)
      times.push(performance.now() - started)
    }
    timings.push(summedUp(`5000 commissions: ${name}`, times))
  }
  store.close()
  return timings
}

/** Makes a store of many years: the sample, and thousands of commissions like its own. */
async function fillStore(file: string): Promise<Made> {
  const store = openStore(file, { now: new Date().toISOString() })
  const made = await asker(shellContext(store, () => {}))<Made>('workroom.sample')
  fill(store.db.$client, made)
  store.close()
  return made
}

/** Ids of what the sample has, for asking after some of them. */
export type Made = {
  clients: string[]
  cloths: string[]
  quotes: string[]
  measurementSets: string[]
  commission: string
}
type Sqlite = ReturnType<typeof openStore>['db']['$client']

/** What each screen asks for when it opens. */
const asked = ({ clients, cloths, measurementSets, commission }: Made): [string, object][] => [
  ['today.show', {}],
  ['plan.show', {}],
  ['clients.list', {}],
  ['client.get', { id: clients[0] }],
  ['quotes.list', {}],
  ['commissions.list', {}],
  ['commissions.list', { state: 'open' }],
  ['commission.get', { id: commission }],
  ['commission.account', { id: commission }],
  ['times.list', { commissionId: commission }],
  ['notes.list', { commissionId: commission }],
  ['money.of', { commissionId: commission }],
  ['rates.list', {}],
  ['accounts.list', {}],
  ['stock.list', {}],
  ['shopping.list', {}],
  ['search.find', { text: 'orme tun' }],
  ['bin.list', {}],
  ['recent.list', {}],
  [
    'garment.estimate',
    {
      ...{ construction: 'apron', clothId: cloths[0] },
      measurementSetId: measurementSets[0],
    },
  ],
]

function asker(context: Context) {
  return async <T>(name: string, payload: object = {}): Promise<T> => {
    const answered = await answer(requests, name, payload, context, readerOf(context))
    if (!answered.ok) throw new Error(`${name}: ${answered.error.message}`)
    return answered.result as T
  }
}

/** Fills a store with copies of the sample's open commission, most of them delivered, each garment with its steps and times. */
function fill(db: Sqlite, { commission }: Made): void {
  const one = <T>(sql: string, ...of: string[]) => db.prepare(sql).get(...of) as T
  const template = one<{ quote_id: string; customer_id: string }>(
    'SELECT * FROM commission WHERE id = ?',
    commission,
  )
  const garment = one<{ id: string; quote_garment_id: string }>(
    'SELECT * FROM garment WHERE commission_id = ?',
    commission,
  )
  const steps = db.prepare('SELECT * FROM step WHERE garment_id = ? ORDER BY position').all(garment.id) as {
    key: string
    stage: string
    name: string
    minutes: string
    work: string
  }[]
  const put = {
    client: db.prepare(
      "INSERT INTO client (id, name, address, email, phone, note, created_at) VALUES (?, ?, '[]', '', '', '', ?)",
    ),
    quote: db.prepare(
      'INSERT INTO quote SELECT ?, ?, customer_id, day, snapshot, snapshot_version, NULL, created_at FROM quote WHERE id = ?',
    ),
    state: db.prepare(
      'INSERT INTO quote_state (quote_id, state, at, short) SELECT ?, state, at, short FROM quote_state WHERE quote_id = ?',
    ),
    line: db.prepare(
      'INSERT INTO quote_garment SELECT ?, ?, position, wearer_id, measurement_set_id, cloth_id, construction, quantity FROM quote_garment WHERE id = ?',
    ),
    commission: db.prepare(
      "INSERT INTO commission (id, number, quote_id, customer_id, day, state, note, created_at, delivered_day, agreed_minor, schedule) SELECT ?, ?, ?, ?, '2024-01-01', ?, '', ?, ?, agreed_minor, schedule FROM commission WHERE id = ?",
    ),
    garment: db.prepare(
      'INSERT INTO garment (id, commission_id, quote_garment_id, copy, position, title, wearer, cloth_name) SELECT ?, ?, ?, ?, ?, title, wearer, cloth_name FROM garment WHERE id = ?',
    ),
    step: db.prepare(
      'INSERT INTO step (id, garment_id, key, stage, position, name, minutes, done_at, work) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)',
    ),
    time: db.prepare(
      "INSERT INTO time_entry (id, commission_id, day, minutes, note, created_at) VALUES (?, ?, ?, ?, '', ?)",
    ),
    on: db.prepare('INSERT INTO time_entry_step (time_entry_id, step_id) VALUES (?, ?)'),
    account: db.prepare(
      "INSERT INTO garment_account (garment_id, commission_id, customer_id, construction, delivered_day, account, net_minor, quoted_minutes, actual_minutes, quoted_left_minor, actual_left_minor, quoted_cloth, actual_cloth) VALUES (?, ?, ?, 'goredUndertunic', '2024-02-01', '{}', 40000, 700, 750, 25000, 24000, 3000, NULL)",
    ),
    found: db.prepare("INSERT INTO found (kind, entity_id, title, words) VALUES ('commission', ?, ?, ?)"),
    change: db.prepare(
      "INSERT INTO change (at, actor, request, entity, entity_id) VALUES (?, 'maker', 'time.log', 'timeEntry', ?)",
    ),
  }
  const at = '2024-01-01T00:00:00.000Z'
  const number = (i: number) => String(i).padStart(6, '0')
  // The line of the quote that every copy's garments stand under is given another id in the copy's snapshot.
  const perStep = Math.ceil(TIMES / (COMMISSIONS * GARMENTS * STEPS))
  let times = 0
  db.transaction(() => {
    for (let i = 0; i < COMMISSIONS; i++) {
      const id = `0000${number(i)}`
      const open = i >= COMMISSIONS - OPEN
      // After those of the sample, whose measures are known.
      put.client.run(`client-${id}`, `Ὠρίων Orme ${number(i)}`, at)
      put.quote.run(`quote-${id}`, `Q-${number(i)}`, template.quote_id)
      put.state.run(`quote-${id}`, template.quote_id)
      put.line.run(`line-${id}`, `quote-${id}`, garment.quote_garment_id)
      put.commission.run(
        ...[`com-${id}`, `C-${number(i)}`, `quote-${id}`, `client-${id}`, open ? 'open' : 'delivered'],
        ...[at, open ? null : '2024-02-01', commission],
      )
      put.found.run(`com-${id}`, `C-${number(i)} Orme`, `C-${number(i)} Orme gored undertunic white linen`)
      for (let copy = 0; copy < GARMENTS; copy++) {
        const own = `garment-${id}-${copy}`
        put.garment.run(own, `com-${id}`, `line-${id}`, copy + 1, copy + 1, garment.id)
        if (!open) put.account.run(own, `com-${id}`, `client-${id}`)
        for (let position = 0; position < STEPS; position++) {
          const { key, stage, name, minutes, work } = steps[position % steps.length]!
          const step = `step-${id}-${copy}-${number(position)}`
          const done = open && position > 6 ? null : at
          put.step.run(step, own, `${key}-${position}`, stage, position + 1, name, minutes, done, work)
          for (let n = 0; n < perStep && times < TIMES && done !== null; n++, times++) {
            const entry = `time-${number(times)}`
            put.time.run(
              entry,
              `com-${id}`,
              `20${20 + (i % 6)}-0${1 + (copy % 9)}-11`,
              20 + ((7 * times) % 60),
              at,
            )
            put.on.run(entry, step)
            put.change.run(at, entry)
          }
        }
      }
    }
    // Its garments stand under the line that the snapshot names.
    db.exec('DROP TRIGGER quote_kept')
    db.prepare(
      "UPDATE quote SET snapshot = json_set(snapshot, '$.lines[0].id', 'line-' || substr(id, 7)) WHERE id LIKE 'quote-%'",
    ).run()
    db.exec(
      "CREATE TRIGGER quote_kept BEFORE UPDATE ON quote BEGIN SELECT RAISE(ABORT, 'frozen: quote'); END",
    )
    db.exec('INSERT OR IGNORE INTO search_entry (entity_id, row) SELECT entity_id, rowid FROM found')
  })()
}
