import { openStore } from '../../core/store/open.ts'

// Holds a store open until it is killed.
const store = openStore(process.argv[2]!, { now: new Date().toISOString() })
process.stdout.write('open\n')
setInterval(() => store.path, 1000)
