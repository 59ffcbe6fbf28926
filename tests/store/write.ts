import { writeSync } from 'node:fs'
import { insertClient } from '../../core/store/clients.ts'
import { openStore } from '../../core/store/open.ts'

// Writes clients one by one, and says each only when the store has acknowledged it.
const store = openStore(process.argv[2]!, { now: new Date().toISOString() })
for (let i = 0; i < 100_000; i++) {
  const row = {
    id: `client-${i}`,
    name: 'Ada',
    address: [],
    email: '',
    phone: '',
    note: '',
    createdAt: 'now',
  }
  store.transaction(() => insertClient(store.db, row))
  writeSync(1, `${row.id}\n`)
}
