import { join } from 'node:path'
import { takeFontsFrom } from '../core/workroom.ts'

// The store's thread of a packaged planner: the fonts lie beside it, for there are no packages to take them from.
takeFontsFrom(join(import.meta.dirname, '../../fonts'))
await import('./store-thread.ts')
