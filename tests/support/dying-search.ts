import { syncBuiltinESMExports } from 'node:module'
import workers from 'node:worker_threads'
import { threadCode } from '../../electron/thread-code.ts'

// The store's thread, but every thread that it starts itself is killed in the middle of its work.

const { Worker } = workers
workers.Worker = class extends Worker {
  constructor(...given: ConstructorParameters<typeof Worker>) {
    super(...given)
    setTimeout(() => void this.terminate(), 1000)
  }
}
syncBuiltinESMExports()
await import(threadCode('store-thread').href)
