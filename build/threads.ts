import { buildThreads } from './bundles.ts'

// Before anything that runs from its sources: its threads run from this.
await buildThreads()
