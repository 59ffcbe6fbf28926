import { threadCode } from '../../electron/thread-code.ts'

// The store's thread on a day that a test names: its clock stands at TEST_NOW when it starts, and goes on from there.

const named = Date.parse(process.env.TEST_NOW!)
const begun = Date.now()

const Today = Date
globalThis.Date = class extends Today {
  constructor(...given: [] | [string | number]) {
    super(...((given.length === 0 ? [Today.now() - begun + named] : given) as [number]))
  }
  static override now(): number {
    return Today.now() - begun + named
  }
} as DateConstructor

await import(threadCode('store-thread').href)
