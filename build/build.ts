import { buildScreen, buildShell } from './bundles.ts'

// `npm run build`: everything the planner runs from, into `dist/`.
await buildScreen()
await buildShell()
